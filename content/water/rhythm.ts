/** So many cans every so many days: seldom and deep, in whole cans. */
export interface Rhythm {
  readonly cans: number;
  readonly days: number;
}

/** Watering days at least this far apart, where a can does not last longer by itself. */
const DAYS_APART = 3;

/** One can when it lasts three days or more, else the cans of three days. */
export function rhythmOf(cans_per_day: number): Rhythm | null {
  if (!(cans_per_day > 0)) return null;
  const lasts_days = Math.round(1 / cans_per_day);
  if (lasts_days >= DAYS_APART) return { cans: 1, days: lasts_days };
  return { cans: Math.max(1, Math.round(cans_per_day * DAYS_APART)), days: DAYS_APART };
}
