/** How far the rough thirst of the air, from temperature alone, is off at one place. */

/** One day by both ways, mm: from all that a station reads, and from its temperatures alone. */
export interface BothWays {
  readonly full_mm: number;
  readonly rough_mm: number;
}

/** full = a + b rough; a in mm a day. */
export interface LocalAdjustment {
  readonly a: number;
  readonly b: number;
  /** Days behind it. */
  readonly n: number;
}

/** About two months of days: fewer tell of one spell of weather. A decision of the makers. */
const FEWEST_PAIRS = 60;

/**
 * The straight line that turns the rough into the full: ETo = a + b ETo(Eq. 52), Eq. 53 of FAO Irrigation and Drainage Paper
 * 56 (Allen, Pereira, Raes & Smith 1998), by least squares. The paper leaves a and b to regression, by the month or the year.
 * Seen in a copy of the paper's words, the number of the equation from memory. Days near zero may come out below it: the
 * caller holds them there. Null under 60 pairs, or where the rough ones are all alike.
 * Throws RangeError for a number that is not finite.
 */
export function localAdjustment(pairs: readonly BothWays[]): LocalAdjustment | null {
  for (const { full_mm, rough_mm } of pairs) {
    check('full_mm', full_mm);
    check('rough_mm', rough_mm);
  }
  const n = pairs.length;
  if (n < FEWEST_PAIRS || pairs.every(({ rough_mm }) => rough_mm === pairs[0]?.rough_mm)) return null;
  const full_mean = pairs.reduce((sum, { full_mm }) => sum + full_mm, 0) / n;
  const rough_mean = pairs.reduce((sum, { rough_mm }) => sum + rough_mm, 0) / n;
  let together = 0;
  let rough_square = 0;
  for (const { full_mm, rough_mm } of pairs) {
    together += (rough_mm - rough_mean) * (full_mm - full_mean);
    rough_square += (rough_mm - rough_mean) ** 2;
  }
  const b = together / rough_square;
  return { a: full_mean - b * rough_mean, b, n };
}

function check(name: string, value: number): void {
  if (!Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
