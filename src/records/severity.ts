/** How bad a trouble is, in steps of one look: 0 for none, 9 the worst. Words of a field screen, see `blotch-screen`. */
const SEVERITY_STEPS = [
  { low: 0, high: 0, word: 'none' },
  { low: 1, high: 2, word: 'trace' },
  { low: 3, high: 4, word: 'slight' },
  { low: 5, high: 6, word: 'moderate' },
  { low: 7, high: 8, word: 'severe' },
  { low: 9, high: 9, word: 'dead' },
] as const;

export const WORST_SEVERITY = 9;

/** The key to the scale in one line. */
export const severityKey = (): string =>
  SEVERITY_STEPS.map(
    ({ low, high, word }) => `${low === high ? low : `${low}\u00a0or\u00a0${high}`}\u00a0${word}`,
  ).join(', ');
