/**
 * Clopper-Pearson intervals: k of n, level, low, high, and the source. Newcombe 1998, Statistics in Medicine
 * 17:857-872, and R's help page of binom.test (Mendel's peas, Conover 1971): from memory, every printed digit given
 * by R 4.2.2. Conover's seedlings: read at influentialpoints.com. The 90 % ones: R 4.2.2, binom.test.
 */
export const PRINTED: readonly (readonly [k: number, n: number, low: string, high: string, source: string])[] = [
  [81, 263, '0.2527', '0.3676', 'Newcombe 1998'],
  [15, 148, '0.0578', '0.1617', 'Newcombe 1998'],
  [0, 20, '0.0000', '0.1684', 'Newcombe 1998'],
  [1, 29, '0.0009', '0.1776', 'Newcombe 1998'],
  [5, 25, '0.068', '0.407', 'Conover 1999'],
  [682, 925, '0.7076683', '0.7654066', 'R help page'],
];

export const AT_90: readonly (readonly [k: number, n: number, low: number, high: number])[] = [
  [7, 10, 0.39337578389459, 0.91273556608585],
  [0, 20, 0, 0.13910834066827],
  [5, 25, 0.0822908998612464, 0.3754051351248781],
  [3, 3, 0.36840314986404, 1],
  [13, 15, 0.6365582344586, 0.97577426753146],
  [1, 29, 0.0017671710005495, 0.15339202452618],
];
