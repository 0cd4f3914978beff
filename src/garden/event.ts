import type { Dated } from '../dated.ts';
import type { RecordOf } from '../reading/garden-records.ts';
import type { Keyed } from './keyed.ts';

/** The kinds of entries a season's diary holds, beside plantings, fruits and visits: the key of each one's day. */
export const EVENT_DAYS = {
  sowings: 'sown_on',
  mulching: 'laid_on',
  feeding: 'given_on',
  waterings: 'watered_on',
  soil: 'felt_on',
  dips: 'dipped_on',
  flowering: 'seen_on',
  girths: 'measured_on',
  scouting: 'looked_on',
  keeping: 'ended_on',
  shares: 'shared_on',
  tastings: 'tasted_on',
} as const;

export type EventKind = keyof typeof EVENT_DAYS;
export const EVENT_KINDS = Object.keys(EVENT_DAYS) as readonly EventKind[];

export type EventOf<K extends EventKind> = Keyed<RecordOf<K>>;
export type AnyEvent = EventOf<EventKind>;

/** Everything of a season that is neither a planting nor a fruit's own: by kind, each by its day. */
export type Events = { readonly [K in EventKind]: readonly EventOf<K>[] };

/** The day an entry tells of. */
export const dayOfEvent = (kind: EventKind, record: object): Dated =>
  (record as Readonly<Record<string, unknown>>)[EVENT_DAYS[kind]] as Dated;

/** All entries of all kinds with their days, kind by kind. */
export const allEvents = (events: Events): { readonly event: AnyEvent; readonly day: Dated }[] =>
  EVENT_KINDS.flatMap((kind) => events[kind].map((event) => ({ event, day: dayOfEvent(kind, event) })));

/** The entries for which a question about one and its day is answered with yes. */
export const eventsWhere = (events: Events, holds: (event: AnyEvent, day: Dated) => boolean): Events =>
  Object.fromEntries(
    EVENT_KINDS.map((kind) => [kind, events[kind].filter((event) => holds(event, dayOfEvent(kind, event)))]),
  ) as unknown as Events;
