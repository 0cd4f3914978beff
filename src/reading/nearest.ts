/** The word of a list nearest to what was typed, or null when none is near. */
export function nearest(typed: string, words: readonly string[]): string | null {
  const wanted = normal(typed);
  let best: string | null = null;
  // As many edits as letters would make any short word near any other.
  let fewest = Math.min(Math.max(2, Math.floor(wanted.length / 3)), wanted.length - 1) + 1;
  for (const word of [...words].sort()) {
    const edits = normal(word) === wanted ? 0 : editDistance(wanted, normal(word));
    if (edits < fewest) [best, fewest] = [word, edits];
  }
  return best;
}

/** Case, spaces, hyphens and underscores are how one word is misspelt most. */
const normal = (word: string): string => word.toLowerCase().replace(/[\s_-]+/g, '');

/** Levenshtein's distance, by rows. */
function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, change));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}

/** True when two ids differ only by case or hyphens. */
export const sameButForSpelling = (a: string, b: string): boolean => a !== b && normal(a) === normal(b);
