import { type Dated, isOneDay } from '../../src/dated.ts';
import { daysBetween } from '../../src/day.ts';
import type { EventOf } from '../../src/garden/event.ts';
import type { Garden, Planting, Season } from '../../src/garden/garden.ts';
import { reaches } from '../../src/garden/reaches.ts';

/** One entry of mulch laid or topped up, held against the planting out of its spots. */
export interface OwnMulch {
  readonly season: string;
  readonly laid: Dated;
  readonly topped_up: boolean;
  readonly material: string;
  /** Null for the whole garden. */
  readonly spots: readonly string[] | null;
  readonly cover_of_ten: number | null;
  readonly depth_cm: number | null;
  /** Whole weeks from planting out to laying, the fewest and the most of its plantings; before it negative. Null where a day is vague. */
  readonly weeks: { readonly low: number; readonly high: number } | null;
  readonly key: string;
}

/** Of every season, the last first, in the order they were laid. */
export const ownMulches = ({ seasons }: Garden): OwnMulch[] =>
  seasons.toReversed().flatMap((season) =>
    season.events.mulching
      .filter(({ work }) => work !== 'taken-off')
      .map((entry) => ({
        season: season.label,
        laid: entry.laid_on,
        topped_up: entry.work === 'topped-up',
        material: entry.material,
        spots: entry.spots,
        cover_of_ten: entry.cover_of_ten,
        depth_cm: entry.depth_cm,
        weeks: weeksOf(entry, season),
        key: entry.key,
      })),
  );

function weeksOf(entry: EventOf<'mulching'>, { plantings }: Season): OwnMulch['weeks'] {
  const weeks = plantings
    .filter(({ spot }) => reaches(entry, spot))
    .flatMap((planting) => weeksAfter(planting, entry.laid_on) ?? []);
  return weeks.length > 0 ? { low: Math.min(...weeks), high: Math.max(...weeks) } : null;
}

/** Rounded to the nearer week, a half upwards. */
const weeksAfter = ({ planted_on }: Planting, laid: Dated): number | null =>
  isOneDay(planted_on) && isOneDay(laid) ? Math.round(daysBetween(planted_on.first, laid.first) / 7) : null;

/** When the mulch of one season first went down, as a sentence needs it: before planting out, around it, at it or after it. */
export interface FirstLaid {
  readonly season: string;
  readonly when: 'before' | 'around' | 'at-once' | 'after';
  readonly low: number;
  readonly high: number;
}

/** Of the last season with a known day; topping up does not count, nor plastic, which is there to warm. Null without one. */
export function firstLaid(lines: readonly OwnMulch[]): FirstLaid | null {
  const dated = lines.filter(
    ({ topped_up, material, weeks }) => !topped_up && material !== 'plastic' && weeks !== null,
  );
  const season = dated[0]?.season;
  if (season === undefined) return null;
  const weeks = dated.filter((line) => line.season === season).flatMap((line) => line.weeks ?? []);
  const low = Math.min(...weeks.map((one) => one.low));
  const high = Math.max(...weeks.map((one) => one.high));
  return { season, when: whenOf(low, high), low, high };
}

function whenOf(low: number, high: number): FirstLaid['when'] {
  if (low === 0 && high === 0) return 'at-once';
  if (high < 0) return 'before';
  return low < 0 ? 'around' : 'after';
}
