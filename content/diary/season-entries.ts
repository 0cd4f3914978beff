import type { Facts } from '../../src/book/chapter.ts';
import { materialName } from '../../src/book/material-name.ts';
import type { Season } from '../../src/garden/garden.ts';
import { naturally } from '../../src/natural-order.ts';
import { type Entry, LANES } from './entry.ts';
import { eventEntries } from './of-events.ts';
import { plantingEntries } from './of-plantings.ts';
import { visitEntries } from './of-visits.ts';

/** All that happened in a season by day, what is of one kind and day told once; of unknown day last. */
export function seasonEntries({ garden, reference }: Pick<Facts, 'garden' | 'reference'>, season: Season): Entry[] {
  const { varieties, lots, about } = garden;
  const material = (id: string): string => materialName(reference, id, about.locale);
  const all = [
    ...plantingEntries(season),
    ...eventEntries(season, { varieties, lots, material }),
    ...visitEntries(season),
  ];
  const groups = new Map<string, Entry[]>();
  for (const one of all) {
    const alike = JSON.stringify([one.date.text, one.lane, one.code, one.word, one.more]);
    groups.set(alike, [...(groups.get(alike) ?? []), one]);
  }
  return [...groups.values()].map(together).sort(byDay);
}

/** Counts are added; where one of them is not told, none is. */
function together(alike: readonly Entry[]): Entry {
  const counts = alike.flatMap(({ count }) => count ?? []);
  return {
    ...(alike[0] as Entry),
    count: counts.length === alike.length ? counts.reduce((sum, count) => sum + count, 0) : null,
    names: [...new Set(alike.flatMap(({ names }) => names))].sort(naturally),
  };
}

const placeOf = ({ date, lane }: Entry): string =>
  `${date.first ?? '9999'} ${date.last ?? '9999'} ${date.text} ${LANES.indexOf(lane)}`;

const byDay = (a: Entry, b: Entry): number => {
  const [one, other] = [placeOf(a), placeOf(b)];
  return one < other ? -1 : one > other ? 1 : a.code < b.code ? -1 : 1;
};
