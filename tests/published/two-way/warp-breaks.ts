/**
 * Breaks of warp per loom, 2 wools at 3 tensions, 9 looms each: Tippett 1950, Technological Applications of Statistics,
 * as in R's datasets::warpbreaks. The intervals are those of the example under R's ?TukeyHSD, model wool + tension, 95 %.
 * Data and printed values from memory; R 4.2.2 gives every digit from these data.
 */
export const WARP_BREAKS = {
  /** Of each tension (high, low, medium), wools A and B. */
  tensions: {
    H: [
      [36, 21, 24, 18, 10, 43, 28, 15, 26],
      [20, 21, 24, 17, 13, 15, 15, 16, 28],
    ],
    L: [
      [26, 30, 54, 25, 70, 52, 51, 26, 67],
      [27, 14, 29, 19, 29, 31, 41, 20, 44],
    ],
    M: [
      [18, 21, 29, 17, 12, 18, 35, 30, 36],
      [42, 26, 19, 16, 39, 28, 21, 39, 29],
    ],
  },
  /** The second minus the first. */
  printed: [
    { a: 'H', b: 'M', difference: '4.722222', low: '-4.6311985', high: '14.07564', p: '0.4474210' },
    { a: 'H', b: 'L', difference: '14.722222', low: '5.3688015', high: '24.07564', p: '0.0011218' },
    { a: 'M', b: 'L', difference: '10.000000', low: '0.6465793', high: '19.35342', p: '0.0336262' },
  ],
};
