/** How long a seed takes to come up in soil of one warmth. */

/** What was published for one warmth of the soil. */
export interface EmergencePoint {
  readonly soil_c: number;
  /** From sowing to the seedling, above 0. */
  readonly days: number;
}

/**
 * Days from sowing to the seedling at a soil temperature, °C, not rounded. The rate, 1 / days, runs straight between
 * neighbouring points: that the rate and not the days goes with warmth is Garcia-Huidobro, Monteith & Squire 1982,
 * Journal of Experimental Botany 33:288-296, from memory. Points in any order; null colder or warmer than all of them,
 * where nothing was published, and for no points.
 * Throws RangeError for a number that is not finite, days not above 0, or two points at one temperature.
 */
export function daysToEmerge(points: readonly EmergencePoint[], soil_c: number): number | null {
  check('soil_c', soil_c, true);
  for (const point of points) {
    check('soil_c', point.soil_c, true);
    check('days', point.days, point.days > 0);
  }
  const sorted = [...points].sort((a, b) => a.soil_c - b.soil_c);
  const twice = sorted.find((point, place) => point.soil_c === sorted[place - 1]?.soil_c);
  if (twice) throw new RangeError(`invalid soil_c: ${twice.soil_c} twice`);
  const above = sorted.find((point) => point.soil_c >= soil_c);
  if (above?.soil_c === soil_c) return above.days;
  const below = sorted.findLast((point) => point.soil_c < soil_c);
  if (!above || !below) return null;
  const part = (soil_c - below.soil_c) / (above.soil_c - below.soil_c);
  return 1 / ((1 - part) / below.days + part / above.days);
}

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
