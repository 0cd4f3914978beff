/**
 * Looks for whole names in a text: case, accents and the signs between words do not count, so that
 * `jo-kettle` is found too. Returns the first name found, as it was given, or null.
 */
export function nameFinder(names: readonly string[]): (text: string) => string | null {
  const wanted = names.flatMap((name) => {
    const words = wordsOf(name);
    return words.length === 0 ? [] : [{ name, forms: [words.join(' '), words.join('')] }];
  });
  const known = new Map<string, string | null>();
  return (text) => {
    if (wanted.length === 0) return null;
    const before = known.get(text);
    if (before !== undefined) return before;
    const padded = ` ${wordsOf(text).join(' ')} `;
    const found = wanted.find(({ forms }) => forms.some((form) => padded.includes(` ${form} `)))?.name ?? null;
    known.set(text, found);
    return found;
  };
}

const wordsOf = (text: string): string[] =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);
