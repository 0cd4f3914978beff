/**
 * An upper bound of how deep a YAML text nests, found without parsing: the deepest stack of indents,
 * counting each "- " and "? " at a line's head, plus the most flow brackets open at once.
 * A parser recursing over a hostile text can end the process, so this runs before it.
 */
export function deepestNesting(text: string): number {
  let deepest = 0;
  let open = 0;
  const indents: number[] = [];
  for (const line of text.split(/\r\n|\n|\r/)) {
    const { heads, rest } = headsOf(line);
    if (heads.length > 0 && open === 0) {
      const column = heads[0] ?? 0;
      while (indents.length > 0 && (indents.at(-1) ?? 0) >= column) indents.pop();
      indents.push(...heads);
    }
    for (const sign of rest) {
      if (sign === '[' || sign === '{') deepest = Math.max(deepest, indents.length + ++open);
      else if ((sign === ']' || sign === '}') && open > 0) open--;
    }
    deepest = Math.max(deepest, indents.length + open);
  }
  return deepest;
}

/** Columns at which a level may begin on a line: its indent and one after each leading "- " or "? ". */
function headsOf(line: string): { heads: number[]; rest: string } {
  const content = line.search(/[^ \t]/);
  if (content < 0 || line[content] === '#') return { heads: [], rest: '' };
  const heads = [content];
  let at = content;
  while (/[-?:]/.test(line[at] ?? '') && /[ \t]/.test(line[at + 1] ?? '')) {
    at += 1;
    while (/[ \t]/.test(line[at] ?? '')) at += 1;
    heads.push(at);
  }
  return { heads, rest: line.slice(at) };
}
