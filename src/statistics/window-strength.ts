/** How strongly residuals go with the covariate of the window that shows it most. For `shuffleDays`. */
import { centred, correlationOfCentred, sumOfProducts } from './correlation.ts';
import { sumOfSquares } from './least-squares.ts';

/**
 * The largest |r| over the windows, 0 to 1; 0 for a window whose covariate, or residuals that, do not vary. With the
 * same observations in every window |t| = |r| sqrt((n - 2) / (1 - r^2)) rises with |r|, so this orders arrangements
 * as the largest |t| does, and with one window as |slope| does.
 */
export function largestCorrelation(windows: readonly (readonly number[])[], residuals: readonly number[]): number {
  const response = centred(residuals);
  return windows.reduce(
    (largest, window) => Math.max(largest, Math.abs(correlationOfCentred(centred(window), response))),
    0,
  );
}

/** |slope| of the residuals on the first window's covariate, in residual units per covariate unit; 0 without variation. */
export function absoluteSlope(windows: readonly (readonly number[])[], residuals: readonly number[]): number {
  const covariate = centred(windows[0] ?? []);
  const square = sumOfSquares(covariate);
  return square === 0 ? 0 : Math.abs(sumOfProducts(covariate, centred(residuals)) / square);
}
