/**
 * Heinze & Schemper 2002, Statistics in Medicine 21:2409-2419, grade of endometrial cancer on neovasculisation,
 * pulsality index and endometrium height, as brglm2's help page prints the estimates and the paper the profile interval
 * of the first: from memory; brglm2 0.9 and make.R give every printed digit.
 */
export const ENDOMETRIAL: readonly { readonly estimate: string; readonly low?: string; readonly high?: string }[] = [
  { estimate: '3.77456' },
  { estimate: '2.92927', low: '0.61', high: '7.85' },
  { estimate: '-0.03475' },
  { estimate: '-2.60416' },
];

/**
 * Tables whose exact answer is half a unit added to each cell: Haldane 1955, Anscombe 1956; Firth 1993 section 3 (from
 * memory).
 */
export const FOUR_CELLS: readonly (readonly [a: number, b: number, c: number, d: number])[] = [
  [7, 356, 0, 22],
  [3, 2, 4, 1],
  [0, 5, 5, 0],
  [1, 0, 0, 1],
];
