import type { Dated } from '../dated.ts';
import { addDays, type Day } from '../day.ts';
import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';
import type { FeedingRecord } from '../records/event/feeding.ts';
import type { Planting } from './garden.ts';
import { isRaw, safeDayOf, waitOf } from './manure-clock.ts';
import { reaches } from './reaches.ts';

/**
 * A warning for each entry of raw manure after which fruit of its spots came off too soon, or would by the crop's usual
 * days. Vague days count for the worse: the latest it may have been given, the earliest it may have been picked.
 */
export function checkManure(
  feedings: readonly Entry<FeedingRecord>[],
  plantings: readonly Planting[],
  seasonEnds: Day | null,
): Problem[] {
  return feedings.flatMap((entry) => {
    if (!isRaw(entry.record)) return [];
    const soon = plantings
      .filter((planting) => reaches(entry.record, planting.spot))
      .flatMap((planting) => tooSoon(entry.record, planting, seasonEnds) ?? []);
    const [first, ...more] = soon.sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
    if (!first) return [];
    const others = more.length > 0 ? `; ${more.length} more plantings of its spots are too soon as well` : '';
    return [
      problemIn(entry, ['given_on'], {
        severity: 'warning',
        code: 'manure-clock',
        message: `${entry.record.material} given ${entry.record.given_on.text}: ${first.says}${others}`,
        hint: 'pick nothing there before that day; if it was composted hot, write manure-composted',
      }),
    ];
  });
}

interface TooSoon {
  readonly day: Day;
  readonly says: string;
}

/** Null where the planting waited, or where nothing can be told. */
function tooSoon(given: FeedingRecord, planting: Planting, seasonEnds: Day | null): TooSoon | null {
  const { given_on } = given;
  const safe = safeDayOf(given, planting);
  if (!given_on.first || safe === null) return null;
  const why = `before ${safe}, the first safe day (${waitOf(planting)} days)`;
  const picked = pickingDays(planting);
  if (picked.length > 0) {
    const early = picked.find(({ first, last }) => first < safe && last >= given_on.first);
    return early ? { day: early.first, says: `planting ${planting.id} was picked ${early.text}, ${why}` } : null;
  }
  const ripe = ripeFrom(planting);
  if (seasonEnds !== null && given_on.first > seasonEnds) return null;
  if (ripe !== null && ripe >= safe) return null;
  const says = `planting ${planting.id} may be ripe ${ripe === null ? '' : `from ${ripe}, `}${why}`;
  return { day: ripe ?? given_on.first, says };
}

type Known = Extract<Dated, { readonly first: Day }>;

/** The days on which something came off, the first first. */
const pickingDays = ({ fruits, pickings }: Planting): Known[] =>
  [
    ...fruits.map(({ pick }) => pick?.picked_on ?? null),
    ...pickings.filter(({ count }) => count > 0).map(({ picked_on }) => picked_on),
  ]
    .filter((date): date is Known => date !== null && date.first !== null)
    .sort((a, b) => (a.first < b.first ? -1 : a.first > b.first ? 1 : 0));

/** Where the crop's file gives no days, from planting out on; null where the day of that is not known either. */
function ripeFrom({ planted_on, variety }: Planting): Day | null {
  const days = variety?.crop.ripe_days?.planted_days_low ?? 0;
  return planted_on.first && addDays(planted_on.first, days);
}
