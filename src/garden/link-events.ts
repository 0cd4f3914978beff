import type { Listing } from '../reading/garden-records.ts';
import type { Kind } from '../reading/kinds.ts';
import type { Problem } from '../reading/problem.ts';
import type { Entry } from '../reading/source.ts';
import type { SeasonRecord } from '../records/season.ts';
import { checkEvent } from './check-event.ts';
import { dayOfEvent, EVENT_KINDS, type EventKind, type Events } from './event.ts';
import type { EventTargets } from './event-targets.ts';
import { indexById, lookUp } from './index-by-id.ts';
import { keyByName } from './key-by-name.ts';

type Target = keyof EventTargets;

/** Keys that name another record, in whatever kind of entry they stand. */
const POINTERS: Readonly<Record<string, Target>> = {
  planting: 'planting',
  fruit: 'fruit',
  against: 'fruit',
  best_first: 'fruit',
  sweetest_first: 'fruit',
  spots: 'spot',
  variety: 'variety',
  lot: 'lot',
};

type Listings = <K extends Kind>(kind: K) => Listing<K>[];
type AnyEntry = Entry<{ readonly id: string | null }>;

/** The diary of one season, each kind by its day, and what in it points nowhere or contradicts itself. */
export function linkEvents(
  slug: string,
  season: SeasonRecord | null,
  of: Listings,
  targets: EventTargets,
): { readonly events: Events; readonly problems: readonly Problem[] } {
  const read = EVENT_KINDS.map((kind) => ({ kind, entries: of(kind).flatMap(({ entries }) => entries) as AnyEntry[] }));
  return {
    events: Object.fromEntries(
      read.map(({ kind, entries }) => [kind, keyed(kind, slug, entries)]),
    ) as unknown as Events,
    problems: read.flatMap(({ kind, entries }) => [
      ...indexById([{ entries: entries.filter(isNamed), spoilt: [] }], 'entry').problems,
      ...entries.flatMap((entry) => [...dangling(entry, targets), ...checkEvent(kind, entry, season, targets)]),
    ]),
  };
}

const isNamed = (entry: AnyEntry): entry is Entry<{ readonly id: string }> => entry.record.id !== null;

function dangling(entry: AnyEntry, targets: EventTargets): Problem[] {
  return Object.entries(POINTERS).flatMap(([key, target]) => {
    const value = (entry.record as Readonly<Record<string, unknown>>)[key];
    if (typeof value === 'string') {
      return value === 'unknown' ? [] : (lookUp<unknown>(targets[target], value, entry, [key], target).problem ?? []);
    }
    if (!Array.isArray(value)) return [];
    return value.flatMap(
      (id: string, index) => lookUp<unknown>(targets[target], id, entry, [key, index], target).problem ?? [],
    );
  });
}

/** By day, then by what they say; one without an id is named by its day, further ones of that day by a number. */
function keyed(kind: EventKind, slug: string, entries: readonly AnyEntry[]): object[] {
  const rows = entries.map(({ record }) => {
    const { text } = dayOfEvent(kind, record);
    return { record, text, order: `${text.replace('about ', '')} ${record.id ?? ''} ${JSON.stringify(record)}` };
  });
  return keyByName(
    kind,
    slug,
    rows.sort((a, b) => (a.order < b.order ? -1 : 1)).map(({ record, text }) => [record.id ?? text, record]),
  );
}
