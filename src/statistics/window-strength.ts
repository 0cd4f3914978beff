/** How strongly residuals go with the covariate of the window that shows it most. For `shuffleDays`. */
import { centred, sumOfProducts } from './correlation.ts';
import { sumOfSquares } from './least-squares.ts';

/**
 * The largest |r| over the windows, 0 to 1; 0 for a window whose covariate, or residuals that, do not vary. With the
 * same observations in every window |t| = |r| sqrt((n - 2) / (1 - r^2)) rises with |r|, so this orders arrangements
 * as the largest |t| does, and with one window as |slope| does.
 */
export function largestCorrelation(windows: readonly (readonly number[])[], residuals: readonly number[]): number {
  const response = centred(residuals);
  const square = sumOfSquares(response);
  return windows.reduce((largest, window) => Math.max(largest, Math.abs(correlationWith(window, response, square))), 0);
}

/** Pearson's r with deviations whose squares' sum is known, in one pass without lists in between: it is asked for thousands of times. */
function correlationWith(values: readonly number[], response: readonly number[], square: number): number {
  const first = values[0] ?? 0;
  let sum = 0;
  for (let at = 0; at < values.length; at++) sum += (values[at] as number) - first;
  const mean = sum / values.length;
  let squares = 0;
  let products = 0;
  for (let at = 0; at < values.length; at++) {
    const deviation = (values[at] as number) - first - mean;
    squares += deviation * deviation;
    products += deviation * (response[at] as number);
  }
  const size = Math.sqrt(squares * square);
  return size === 0 ? 0 : products / size;
}

/** |slope| of the residuals on the first window's covariate, in residual units per covariate unit; 0 without variation. */
export function absoluteSlope(windows: readonly (readonly number[])[], residuals: readonly number[]): number {
  const covariate = centred(windows[0] ?? []);
  const square = sumOfSquares(covariate);
  return square === 0 ? 0 : Math.abs(sumOfProducts(covariate, centred(residuals)) / square);
}
