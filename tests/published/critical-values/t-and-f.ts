/**
 * Critical values as in the NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2 (t) and 1.3.6.7.3 (F).
 * The grids were computed with R 4.2.2 to three decimals, not copied from the printed pages.
 */

/** Degrees of freedom, and the value a t variable stays below with probability 0.975. */
export const T_975: [number, string][] = [
  [1, '12.706'],
  [2, '4.303'],
  [3, '3.182'],
  [4, '2.776'],
  [5, '2.571'],
  [6, '2.447'],
  [7, '2.365'],
  [8, '2.306'],
  [9, '2.262'],
  [10, '2.228'],
  [12, '2.179'],
  [15, '2.131'],
  [20, '2.086'],
  [24, '2.064'],
  [30, '2.042'],
  [60, '2.000'],
  [120, '1.980'],
];

/** The limit of that table for many degrees of freedom: the standard normal. */
export const NORMAL_975 = '1.960';

/** Denominator degrees of freedom, and the upper 5 % points for 1 to 5 in the numerator. */
export const F_95: [number, string[]][] = [
  [5, ['6.608', '5.786', '5.409', '5.192', '5.050']],
  [10, ['4.965', '4.103', '3.708', '3.478', '3.326']],
  [12, ['4.747', '3.885', '3.490', '3.259', '3.106']],
  [15, ['4.543', '3.682', '3.287', '3.056', '2.901']],
  [20, ['4.351', '3.493', '3.098', '2.866', '2.711']],
  [30, ['4.171', '3.316', '2.922', '2.690', '2.534']],
  [60, ['4.001', '3.150', '2.758', '2.525', '2.368']],
  [120, ['3.920', '3.072', '2.680', '2.447', '2.290']],
];
