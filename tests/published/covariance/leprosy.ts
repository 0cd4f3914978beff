/**
 * Leprosy bacilli before and after treatment with two drugs (A, D) and a placebo (F), 10 patients each: Snedecor & Cochran
 * 1967, Statistical Methods, 6th ed., p. 422, the analysis of covariance example in the manual of SAS PROC GLM. Data and
 * printed values written from memory; R 4.2.2 gives every digit from these data (make.R).
 */
export const LEPROSY = {
  /** Before and after, each patient. */
  drugs: {
    A: [
      [11, 6],
      [8, 0],
      [5, 2],
      [14, 8],
      [19, 11],
      [6, 4],
      [10, 13],
      [6, 1],
      [11, 8],
      [3, 0],
    ],
    D: [
      [6, 0],
      [6, 2],
      [7, 3],
      [8, 1],
      [18, 18],
      [8, 4],
      [19, 14],
      [8, 9],
      [5, 1],
      [15, 9],
    ],
    F: [
      [16, 13],
      [13, 10],
      [11, 18],
      [9, 5],
      [21, 23],
      [16, 12],
      [12, 5],
      [12, 16],
      [7, 1],
      [12, 20],
    ],
  } satisfies Record<string, [number, number][]>,
  printed: {
    group: { df: 2, ss: '68.55371', f: '2.13613', p: '0.13838' },
    covariate: { df: 1, ss: '577.8974', f: '36.01447' },
    residual: { df: 26, ms: '16.04625' },
    slope: '0.987184',
    means: { A: '6.714963', D: '6.823935', F: '10.161102' },
    /** The drugs alone, before the covariate (type I). */
    unadjusted_ss: '293.6',
    r_squared: '0.676261',
    equal_slopes: { df: 2, df_residual: 24, f: '0.59296', p: '0.56058' },
  },
};
