import { type StageLengths, seasonDays } from '../../agronomy/crop-coefficient.ts';
import { isOneDay } from '../../dated.ts';
import { type Day, daysBetween } from '../../day.ts';
import type { Crop, Planting, Season } from '../../garden/garden.ts';

/** How long a planting's stages of growth last, and which of their edges the records tell. */
export interface CropStages {
  readonly lengths: StageLengths;
  /** The first female flower opens: leaves are near their full reach. */
  readonly full_from: 'records' | 'sources';
  /** The first fruit is picked: leaves begin to age. */
  readonly late_from: 'records' | 'sources';
  /** All of them together. */
  readonly days: number;
  readonly last_pick: Day | null;
}

/**
 * The published row whose length comes nearest to the days from planting to the last picking, or to the season's end
 * where nothing was picked, its edges moved to what was seen; null without a row.
 */
export function cropStages(crop: Crop, season: Season, plantings: readonly Planting[]): CropStages | null {
  const planted = firstDay(plantings.map(({ planted_on }) => planted_on));
  const picks = pickDays(plantings);
  const last_pick = picks.at(-1) ?? null;
  const row = planted === null ? null : nearestRow(crop, daysBetween(planted, last_pick ?? season.ends_on) + 1);
  if (!row || planted === null) return null;
  const flower = daysAfter(planted, firstFemale(season, plantings));
  const pick = daysAfter(planted, picks[0] ?? null);
  const growing = row.initial_days + row.development_days;
  const full_after = flower ?? growing;
  const initial_days = flower === null ? row.initial_days : Math.round((flower * row.initial_days) / growing);
  const middle_days = pick === null || pick <= full_after ? row.middle_days : pick - full_after;
  const lengths = {
    initial_days,
    development_days: full_after - initial_days,
    middle_days,
    late_days: row.late_days,
  };
  return {
    lengths,
    days: seasonDays(lengths),
    last_pick,
    full_from: flower === null ? 'sources' : 'records',
    late_from: pick === null || pick <= full_after ? 'sources' : 'records',
  };
}

/** The published row whose length comes nearest to so many days in the ground; null for a crop without one. */
export function nearestRow({ water }: Crop, stood_days: number): StageLengths | null {
  const off = (row: StageLengths): number => Math.abs(seasonDays(row) - stood_days);
  const [first, ...more] = water?.stages ?? [];
  return first ? more.reduce<StageLengths>((best, row) => (off(row) < off(best) ? row : best), first) : null;
}

function firstDay(dates: readonly Planting['planted_on'][]): Day | null {
  const days = dates.flatMap((date) => (isOneDay(date) ? [date.first] : []));
  return days.sort()[0] ?? null;
}

/** Of these plantings, else of any planting of the season that shares their crop. */
function firstFemale({ events, plantings: all }: Season, plantings: readonly Planting[]): Day | null {
  const crop = plantings[0]?.variety?.crop.id;
  const alike = all.filter(({ variety }) => variety?.crop.id === crop);
  const seen = (of: readonly Planting[]): Day | null =>
    firstDay(
      events.flowering
        .filter(({ what, planting }) => what === 'first-female' && of.some(({ id }) => id === planting))
        .map(({ seen_on }) => seen_on),
    );
  return seen(plantings) ?? seen(alike);
}

/** In their order. */
const pickDays = (plantings: readonly Planting[]): Day[] =>
  plantings
    .flatMap(({ fruits, pickings }) => [
      ...fruits.flatMap(({ pick }) => pick?.picked_on ?? []),
      ...pickings.filter(({ count }) => count > 0).map(({ picked_on }) => picked_on),
    ])
    .flatMap((date) => (isOneDay(date) ? [date.first] : []))
    .sort();

/** Days from planting out to the eve of something; null where it is unknown or came first. */
function daysAfter(planted: Day, day: Day | null): number | null {
  if (day === null) return null;
  const days = daysBetween(planted, day);
  return days > 1 ? days : null;
}
