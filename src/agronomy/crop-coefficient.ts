/**
 * How much a crop drinks against the grass of the reference, day by day: the crop coefficient. All equations are of FAO
 * Irrigation and Drainage Paper 56 (Allen et al. 1998), chapters 6 and 7. The same curve serves the single coefficient
 * Kc and the basal one Kcb.
 */

/** Whole days, 0 or more; a stage of 0 days is passed over. */
export interface StageLengths {
  readonly initial_days: number;
  readonly development_days: number;
  readonly middle_days: number;
  readonly late_days: number;
}

/** Kc or Kcb while the crop is small, while it stands full, and on the last day of its last stage. */
export interface Coefficients {
  readonly initial: number;
  readonly middle: number;
  readonly end: number;
}

/** In their order. */
export const STAGES = ['initial', 'development', 'middle', 'late'] as const;
export type Stage = (typeof STAGES)[number];

/** Days of all stages together. */
export const seasonDays = ({ initial_days, development_days, middle_days, late_days }: StageLengths): number =>
  initial_days + development_days + middle_days + late_days;

/** Means over the stage. */
export interface Climate {
  /** At 2 m above the ground. */
  readonly wind_m_s: number;
  /** The day's lowest relative humidity, of 100. */
  readonly rh_min_pct: number;
}

/** The ranges the equations were made for; what lies outside is taken as the end of the range. */
const WIND_M_S = [1, 6] as const;
const RH_MIN_PCT = [20, 80] as const;
const HEIGHT_M = [0.1, 10] as const;

/** Coefficients below this at the end of the season stay as the table has them. */
const MOIST_END = 0.45;

/**
 * The coefficient on a day of the crop's life, 1 on the day of planting: Eq. 66. It runs straight from one stage's value
 * to the next, counting i - ΣL whole days from 1, so that the last day of a stage has the next value and its first day
 * is already one step on. After the last stage the end value holds.
 * Throws RangeError for a day that is not whole from 1, a length that is not whole from 0, or a negative coefficient.
 */
export function coefficientOn(day_number: number, lengths: StageLengths, coefficients: Coefficients): number {
  const { initial, middle, end } = coefficients;
  for (const [name, value] of Object.entries({ initial, middle, end })) check(name, value, value >= 0);
  const stage = stageOn(day_number, lengths);
  const { initial_days, development_days, middle_days, late_days } = lengths;
  if (stage === 'initial') return initial;
  if (stage === 'middle') return middle;
  if (stage === 'development') return between(initial, middle, (day_number - initial_days) / development_days);
  const day_of_stage = day_number - initial_days - development_days - middle_days;
  return day_of_stage >= late_days ? end : between(middle, end, day_of_stage / late_days);
}

/** The stage a day falls in, 1 on the day of planting; 'late' also after the end. Throws as coefficientOn does. */
export function stageOn(day_number: number, lengths: StageLengths): Stage {
  check('day_number', day_number, Number.isInteger(day_number) && day_number >= 1);
  const { initial_days, development_days, middle_days, late_days } = lengths;
  for (const [name, days] of Object.entries({ initial_days, development_days, middle_days, late_days }))
    check(name, days, Number.isInteger(days) && days >= 0);
  if (day_number <= initial_days) return 'initial';
  if (day_number <= initial_days + development_days) return 'development';
  return day_number <= initial_days + development_days + middle_days ? 'middle' : 'late';
}

/**
 * A full-stage coefficient of the tables, which hold for a lowest humidity of 45 and a wind of 2 m/s, moved to another
 * climate: Kc + [0.04 (u2 - 2) - 0.004 (RHmin - 45)] (h / 3)^0.3, Eq. 62, and Eq. 70 for Kcb. Held to 1 to 6 m/s, 20 to
 * 80 of 100, and 0.1 to 10 m of height; nothing below 0.
 * Throws RangeError for a number that is not finite or is negative.
 */
export function inClimate(middle: number, { wind_m_s, rh_min_pct }: Climate, height_m: number): number {
  for (const [name, value] of Object.entries({ middle, wind_m_s, rh_min_pct, height_m }))
    check(name, value, value >= 0);
  const wind = 0.04 * (held(wind_m_s, WIND_M_S) - 2);
  const damp = 0.004 * (held(rh_min_pct, RH_MIN_PCT) - 45);
  return Math.max(middle + (wind - damp) * (held(height_m, HEIGHT_M) / 3) ** 0.3, 0);
}

/**
 * A coefficient at the end of the season moved to another climate: Eq. 65, and Eq. 70 for Kcb, where the table has 0.45
 * or more; below, the crop is left to dry and the table's value stays. Throws as inClimate does.
 */
export function endInClimate(end: number, climate: Climate, height_m: number): number {
  const moved = inClimate(end, climate, height_m);
  return end < MOIST_END ? end : moved;
}

/** A curve of the tables in another climate: the first stage as it stands, Eq. 62 or 70 and 65 for the rest. Throws as inClimate does. */
export const curveInClimate = (
  { initial, middle, end }: Coefficients,
  climate: Climate,
  height_m: number,
): Coefficients => ({
  initial,
  middle: inClimate(middle, climate, height_m),
  end: endInClimate(end, climate, height_m),
});

const between = (from: number, to: number, part: number): number => from + part * (to - from);

const held = (value: number, [least, most]: readonly [number, number]): number =>
  Math.min(Math.max(value, least), most);

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
