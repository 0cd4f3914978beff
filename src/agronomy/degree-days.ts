/**
 * The heat of one day above a base temperature, by four methods that share one name and give different totals: no
 * method is a bound of another, so a total means something only beside its method, base, cap and unit.
 * Temperatures, base and cap share a unit; the heat is that unit times days.
 */

export const HEAT_METHODS = ['average', 'clipped', 'sine', 'triangle'] as const;
export type HeatMethod = (typeof HEAT_METHODS)[number];

/** The highest and the lowest temperature of a day. */
export interface DayExtremes {
  readonly tmax: number;
  readonly tmin: number;
}

export interface HeatLimits {
  /** Below it nothing counts. */
  readonly base: number;
  /** Above it a warmer hour counts no more than the cap itself; null for no cap. The average has no use for one. */
  readonly cap: number | null;
}

type Heat = (day: DayExtremes, limits: HeatLimits) => number;

const FORMULAS: Readonly<Record<HeatMethod, Heat>> = {
  average,
  clipped,
  sine: (day, limits) => cutOff(sineAbove, day, limits),
  triangle: (day, limits) => cutOff(triangleAbove, day, limits),
};

/**
 * Heat of a day between base and cap: never negative, and never above cap - base where the method uses a cap.
 * A day with an extreme missing has no heat, which is not a heat of zero: the caller leaves it out and says so.
 * Throws RangeError for a number that is not finite, tmin above tmax, or a cap that is not above the base.
 */
export function degreeDays(method: HeatMethod, day: DayExtremes, limits: HeatLimits): number {
  const { tmax, tmin } = day;
  const { base, cap } = limits;
  check('tmax', tmax, true);
  check('tmin', tmin, tmin <= tmax);
  check('base', base, true);
  if (cap !== null) check('cap', cap, cap > base);
  return FORMULAS[method](day, limits);
}

/**
 * The mean of the extremes less the base, or zero where that is negative; no cap. McMaster & Wilhelm 1997,
 * Agricultural and Forest Meteorology 87:291-300, method 1. Any temperatures; nights below the base cost heat.
 */
function average({ tmax, tmin }: DayExtremes, { base }: HeatLimits): number {
  return Math.max((tmax + tmin) / 2 - base, 0);
}

/**
 * The same mean, after each extreme has been set to the base where it lies below and to the cap where it lies above.
 * McMaster & Wilhelm 1997, method 2. Any temperatures; equals the average while both extremes lie within the limits.
 */
function clipped({ tmax, tmin }: DayExtremes, { base, cap }: HeatLimits): number {
  const within = (value: number): number => Math.min(Math.max(value, base), cap ?? Number.POSITIVE_INFINITY);
  return (within(tmax) + within(tmin)) / 2 - base;
}

/**
 * Horizontal cut-off: the heat above the base less the heat above the cap. UC IPM's glossary of degree-days names it
 * so; the formula is from memory, and numerical integration gives the same.
 */
function cutOff(above: (day: DayExtremes, limit: number) => number, day: DayExtremes, limits: HeatLimits): number {
  return above(day, limits.base) - (limits.cap === null ? 0 : above(day, limits.cap));
}

/**
 * The mean height above the limit of one sine wave between the extremes. Baskerville & Emin 1969, Ecology 50:514-517,
 * from memory; numerical integration gives the same. Any temperatures; a day without a swing is a flat line.
 */
function sineAbove({ tmax, tmin }: DayExtremes, limit: number): number {
  const mean = (tmax + tmin) / 2;
  if (limit <= tmin) return mean - limit;
  if (limit >= tmax) return 0;
  const amplitude = (tmax - tmin) / 2;
  // A limit within rounding of an extreme can leave the range of the arcsine by one bit.
  const crossing = Math.asin(Math.min(Math.max((limit - mean) / amplitude, -1), 1));
  return ((mean - limit) * (Math.PI / 2 - crossing) + amplitude * Math.cos(crossing)) / Math.PI;
}

/**
 * The mean height above the limit of straight lines from low to high and back. Zalom et al. 1983, University of
 * California Leaflet 21373, from memory; numerical integration gives the same. Any temperatures, as for the sine.
 */
function triangleAbove({ tmax, tmin }: DayExtremes, limit: number): number {
  if (limit <= tmin) return (tmax + tmin) / 2 - limit;
  if (limit >= tmax) return 0;
  return (tmax - limit) ** 2 / (2 * (tmax - tmin));
}

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
