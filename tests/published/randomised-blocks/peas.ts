/**
 * Peas under nitrogen, phosphate and potash, 6 blocks of 4 plots, lb a plot: R's datasets::npk, from Venables &
 * Ripley 2002, Modern Applied Statistics with S. The three-factor interaction is confounded with blocks, so the
 * 8 mixtures, taken as treatments, fall into two sets that never share a block. Data written from memory.
 */
export const PEAS = {
  /** Yield of each mixture, block by block. */
  blocks: {
    1: { PK: 49.5, NP: 62.8, none: 46.8, NK: 57.0 },
    2: { N: 59.8, NPK: 58.5, K: 55.5, P: 56.0 },
    3: { P: 62.8, NPK: 55.8, N: 69.5, K: 55.0 },
    4: { N: 62.0, NPK: 48.8, K: 45.5, P: 44.2 },
    5: { NP: 52.0, none: 51.5, NK: 49.8, PK: 48.8 },
    6: { NK: 57.2, NP: 59.0, PK: 53.2, none: 56.0 },
  },
  never_together: [
    ['K', 'N', 'NPK', 'P'],
    ['NK', 'NP', 'PK', 'none'],
  ],
};
