import { randomStream } from '../../src/statistics/random-stream.ts';

const FIRST = 100;
const LAST = 999;

/**
 * Three-figure codes that tell a taster nothing and are not mistaken for one another: no two of the same figures in
 * another order, none of one figure three times. The same text gives the same codes; at most 200 can be had, which is
 * short of the 210 sets of figures there are. Throws RangeError for more.
 */
export function blindCodes(seedText: string, howMany: number): string[] {
  if (howMany > 200) throw new RangeError(`invalid number of codes: ${howMany}`);
  const random = randomStream(seedOf(seedText));
  const codes = new Map<string, string>();
  while (codes.size < howMany) {
    const code = String(FIRST + Math.floor(random() * (LAST - FIRST + 1)));
    const figures = [...code].sort().join('');
    if (new Set(figures).size > 1 && !codes.has(figures)) codes.set(figures, code);
  }
  return [...codes.values()];
}

/** FNV-1a (Fowler, Noll, Vo), 32 bits, over UTF-16 units: near texts give far seeds. */
function seedOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return hash >>> 0;
}
