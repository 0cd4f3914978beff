/**
 * Months to deterioration after radiotherapy alone, 46 women seen at clinic visits: after one visit, at or before
 * the next; or not yet at the last visit. Finkelstein & Wolfe 1985, Biometrics 41:933-945.
 * Data and the shares, as printed by Fay & Shaw 2010, J. Stat. Softw. 36(2), from memory: the two agree, so
 * the transcription is safe.
 */
const SEEN_AFTER = [6, 0, 7, 7, 37, 0, 4, 11, 25, 26, 27, 36, 36, 17, 11, 5, 0, 5, 19, 17, 19];
const SEEN_BY = [10, 7, 16, 14, 44, 8, 11, 15, 37, 40, 34, 44, 48, 25, 18, 12, 5, 11, 35, 25, 26];
const NOT_YET = [15, 17, 18, 22, 24, 24, 32, 33, 34, 36, 36, 37, 37, 37, 38, 40, 45, 46, 46, 46, 46, 46, 46, 46, 46];

export const COSMESIS = {
  observations: [
    ...SEEN_AFTER.map((low, index) => ({ low, high: SEEN_BY[index] ?? null })),
    ...NOT_YET.map((low) => ({ low, high: null })),
  ],
  /** After, at or before, share. */
  printed: [
    [4, 5, '0.0463'],
    [6, 7, '0.0334'],
    [7, 8, '0.0887'],
    [11, 12, '0.0708'],
    [24, 25, '0.0926'],
    [33, 34, '0.0818'],
    [38, 40, '0.1209'],
    [46, 48, '0.4656'],
  ] as const,
};
