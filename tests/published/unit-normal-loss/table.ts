/**
 * The unit normal loss integral L(u) = φ(u) - u(1 - Φ(u)), what the better of two prospects u standard deviations apart
 * is expected to gain by being chosen after a look: Raiffa & Schlaifer 1961, Applied Statistical Decision Theory, table II
 * (from memory).
 */
export const UNIT_NORMAL_LOSS: readonly (readonly [u: number, loss: number])[] = [
  [0, 0.3989],
  [0.5, 0.1978],
  [1, 0.08332],
  [1.5, 0.02931],
  [2, 0.008491],
  [2.5, 0.002005],
  [3, 0.0003822],
];
