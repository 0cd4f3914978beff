import { daysBetween } from '../../day.ts';
import { because, type Reason } from '../../figure.ts';
import { dayPulls } from './day-pull.ts';
import { pickingDays } from './picking-day.ts';
import type { SugarReading } from './reading.ts';

/** A picking day is wet when its window had this much rain. */
export const WET_WINDOW_MM = 5;
const FEWEST_SPELLS = 3;
const FEWEST_DRY_DAYS = 3;
const FEWEST_FREE_DAYS = 6;
const MOST_OF_ONE_DAY = 0.6;
/** Wet picking days farther apart than this are of separate spells. */
const SPELL_DAYS = 3;

/** How much the picking days of some readings can tell of rain. */
export interface RainEvidence {
  readonly fruits: number;
  readonly seasons: number;
  readonly picking_days: number;
  readonly wet_spells: number;
  readonly dry_days: number;
  /** Largest share of the spread of rain within varieties and seasons that is one day's. */
  readonly one_day_share: number;
}

export function evidenceOf(readings: readonly SugarReading[]): RainEvidence {
  const days = pickingDays(readings);
  const wet = days.filter(({ rain_mm }) => rain_mm >= WET_WINDOW_MM).map(({ picked_on }) => picked_on);
  const spells = wet.filter((day, index) => {
    const before = wet[index - 1];
    return before === undefined || daysBetween(before, day) > SPELL_DAYS;
  });
  return {
    fruits: readings.length,
    seasons: new Set(readings.map(({ season }) => season)).size,
    picking_days: days.length,
    wet_spells: spells.length,
    dry_days: days.length - wet.length,
    one_day_share: dayPulls(readings)[0]?.share ?? 1,
  };
}

/** Why no number may be given, before anything is fitted; null when one may. */
export function tooLittle(evidence: RainEvidence): Reason | null {
  const { wet_spells, dry_days, picking_days, seasons, one_day_share } = evidence;
  if (wet_spells < FEWEST_SPELLS) return because('few-rains', { count: wet_spells, wanted: FEWEST_SPELLS });
  if (dry_days < FEWEST_DRY_DAYS) return because('few-dry-days', { count: dry_days, wanted: FEWEST_DRY_DAYS });
  if (picking_days - seasons < FEWEST_FREE_DAYS)
    return because('few-picking-days', { count: picking_days, wanted: FEWEST_FREE_DAYS + seasons });
  return one_day_share > MOST_OF_ONE_DAY ? because('one-day-decides') : null;
}
