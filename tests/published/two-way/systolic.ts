/**
 * Rise of systolic blood pressure under 4 drugs in 3 diseases, 58 dogs, 3 to 6 in a cell: Afifi & Azen 1972, Statistical
 * Analysis: A Computer-Oriented Approach (Kutner 1974, American Statistician 28:98-100), the unbalanced two-way example in
 * the manual of SAS PROC GLM. Data and printed sums written from memory; R 4.2.2 gives every digit from these data.
 */
export const SYSTOLIC = {
  /** Of each drug, diseases 1 to 3. */
  drugs: {
    1: [
      [42, 44, 36, 13, 19, 22],
      [33, 26, 33, 21],
      [31, -3, 25, 25, 24],
    ],
    2: [
      [28, 23, 34, 42, 13],
      [34, 33, 31, 36],
      [3, 26, 28, 32, 4, 16],
    ],
    3: [
      [1, 29, 19],
      [11, 9, 7, 1, -6],
      [21, 1, 9, 3],
    ],
    4: [
      [24, 9, 22, -2, 15],
      [27, 12, 12, -5, 16, 15],
      [22, 7, 25, 5, 12],
    ],
  },
  printed: {
    I: { treatment: '3133.238506', block: '418.833741', interaction: '707.266259' },
    /** Disease first. */
    I_turned: { treatment: '3063.4329', block: '488.6394', interaction: '707.2663' },
    II: { treatment: '3063.432863', block: '418.833741', interaction: '707.266259' },
    III: { treatment: '2997.471860', block: '415.873046', interaction: '707.266259' },
    /** Of type III. */
    f: { treatment: '9.04603', block: '1.88259', interaction: '1.06723' },
    df: { treatment: 3, block: 2, interaction: 6, residual: 46 },
    residual_ss: '5080.816667',
    total_ss: 9340.155172,
  },
};
