/**
 * Reaction time of 4 catalysts in 4 batches of 3, a balanced incomplete block design: Montgomery 2001, Design and
 * Analysis of Experiments. Data read at merlot.stat.uconn.edu/~nalini/fcilmweb/example19.html (table 19), which
 * quotes the book; the analysis is from memory, and R 4.2.2 gives every printed digit from these data.
 */
export const CATALYSTS = {
  /** Batches 1 to 4 of each catalyst; null where it was not run. */
  batches: {
    1: [73, 74, null, 71],
    2: [null, 75, 67, 72],
    3: [73, 75, 68, null],
    4: [75, null, 72, 75],
  },
  printed: {
    treatment: { df: 3, ss: '22.75', ms: '7.58' },
    /** Adjusted for catalysts. */
    block: { df: 3, ss: '66.08' },
    residual: { df: 5, ss: '3.25', ms: '0.65' },
    means: { 1: '71.375', 2: '71.625', 3: '72.000', 4: '75.000' },
    mean_se: '0.4868',
    difference_se: '0.6982',
  },
};
