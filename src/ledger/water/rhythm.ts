import type { StageNeed, WeekNeed } from './week-need.ts';

/** So many cans every so many days: seldom and deep, in whole cans. */
export interface Rhythm {
  readonly cans: number;
  readonly days: number;
}

/** Nobody leaves a spot longer than a week without a look. */
const MOST_DAYS = 7;
/** Days between where the soil’s figures are not known: the middle of common practice, no source. */
const USUAL_DAYS = 3;

/** As long as the watered ground of a poor soil lasts, at least a day; one can at least. */
function rhythmOf({ l_per_week, bowl_days }: Pick<WeekNeed, 'l_per_week' | 'bowl_days'>, can_l: number): Rhythm {
  const cans_a_day = l_per_week / 7 / can_l;
  const lasts = bowl_days === null ? USUAL_DAYS : Math.max(1, Math.floor(bowl_days.low));
  const days = Math.min(MOST_DAYS, lasts);
  const cans = Math.round(cans_a_day * days);
  return cans >= 1 ? { cans, days } : { cans: 1, days: Math.min(MOST_DAYS, Math.round(1 / cans_a_day)) };
}

/** The rhythm of one kind of week of a stage; null for a stage nobody could reckon. */
export function rhythmIn(stage: StageNeed | undefined, kind: WeekNeed['kind'], can_l: number): Rhythm | null {
  const need = stage?.needs.find((one) => one.kind === kind);
  return need ? rhythmOf(need, can_l) : null;
}
