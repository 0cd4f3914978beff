/** Moments of numbers about their own mean; skewness is the third over the standard deviation cubed. */
export function momentsOf(values: readonly number[]): { mean: number; sd: number; skewness: number } {
  const average = (of: (value: number) => number): number =>
    values.reduce((sum, value) => sum + of(value), 0) / values.length;
  const mean = average((value) => value);
  const sd = Math.sqrt(average((value) => (value - mean) ** 2));
  return { mean, sd, skewness: average((value) => ((value - mean) / sd) ** 3) };
}
