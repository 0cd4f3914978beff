import type { Dated } from '../dated.ts';
import type { RecordOf } from '../reading/garden-records.ts';
import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';
import type { SeasonRecord } from '../records/season.ts';
import { orderProblem, seasonProblem, writtenProblem } from './check-order.ts';
import { checkTasting } from './check-tasting.ts';
import { dayOfEvent, EVENT_DAYS, type EventKind } from './event.ts';
import type { EventTargets } from './event-targets.ts';
import { writtenKey } from './written-key.ts';

/** How each kind's day is spoken of, and whether it has to lie within its season. */
const SPOKEN: Readonly<Record<EventKind, { readonly done: string; readonly bounded: boolean }>> = {
  sowings: { done: 'sown', bounded: false },
  mulching: { done: 'laid', bounded: true },
  feeding: { done: 'given', bounded: false },
  waterings: { done: 'watered', bounded: true },
  soil: { done: 'felt', bounded: true },
  dips: { done: 'dipped', bounded: false },
  flowering: { done: 'seen', bounded: true },
  girths: { done: 'measured', bounded: true },
  scouting: { done: 'looked', bounded: true },
  keeping: { done: 'ended', bounded: false },
  shares: { done: 'given', bounded: false },
  tastings: { done: 'tasted', bounded: false },
};

/** What one entry of the diary cannot say: more of a part than of the whole, an end before its beginning, another season. */
export function checkEvent(
  kind: EventKind,
  entry: Entry<unknown>,
  season: SeasonRecord | null,
  targets: EventTargets,
): Problem[] {
  const record = entry.record as RecordOf<EventKind>;
  const { done, bounded } = SPOKEN[kind];
  const step = { field: [EVENT_DAYS[kind]], date: dayOfEvent(kind, record), done };
  return [
    ...(bounded ? seasonProblem(entry, step, season) : []),
    ...writtenProblem(entry, [], step, record.recorded_on),
    ...OWN[kind](entry as Entry<never>, targets),
  ];
}

type Check = (entry: Entry<never>, targets: EventTargets) => Problem[];
const nothing: Check = () => [];

const OWN: Readonly<Record<EventKind, Check>> = {
  sowings: (entry: Entry<RecordOf<'sowings'>>) => {
    const { sown_on, emerged_on, seeds, emerged } = entry.record;
    return [
      ...orderProblem(
        entry,
        { field: ['sown_on'], date: sown_on, done: 'sown' },
        { field: ['emerged_on'], date: emerged_on, done: 'up' },
      ),
      ...partProblem(entry, ['emerged', emerged], ['seeds', seeds]),
    ];
  },
  mulching: nothing,
  feeding: nothing,
  waterings: (entry: Entry<RecordOf<'waterings'>>) => toldTwice(entry),
  soil: nothing,
  dips: (entry: Entry<RecordOf<'dips'>>) => tellsNothing(entry),
  flowering: (entry: Entry<RecordOf<'flowering'>>, targets) => [
    ...partProblem(entry, ['took', entry.record.took], ['flowers', entry.record.flowers]),
    ...beforePlanting(entry, entry.record.planting, entry.record.seen_on, targets),
  ],
  girths: (entry: Entry<RecordOf<'girths'>>, targets) =>
    againstPick(entry, entry.record.fruit, { field: 'measured_on', date: entry.record.measured_on }, 'after', targets),
  scouting: (entry: Entry<RecordOf<'scouting'>>) => {
    const { found, checked, affected, severity } = entry.record;
    const some = found === 'none' && ((affected ?? 0) > 0 || (severity ?? 0) > 0);
    const complaint = {
      code: 'none-yet-some',
      message: 'nothing was found, and yet plants are counted as affected',
      hint: 'write what was found, or take the count out',
    };
    return [
      ...(some ? [problemIn(entry, ['found'], complaint)] : []),
      ...partProblem(entry, ['affected', affected], ['checked', checked]),
    ];
  },
  keeping: (entry: Entry<RecordOf<'keeping'>>, targets) =>
    againstPick(entry, entry.record.fruit, { field: 'ended_on', date: entry.record.ended_on }, 'before', targets),
  shares: nothing,
  tastings: (entry: Entry<RecordOf<'tastings'>>) => checkTasting(entry),
};

/** A warning for a dip that tells neither how deep nor how much, nor that the tank ran over. */
function tellsNothing(entry: Entry<RecordOf<'dips'>>): Problem[] {
  const { depth_cm, volume_l, overflowed } = entry.record;
  if (depth_cm !== null || volume_l !== null || overflowed !== null) return [];
  const complaint = {
    severity: 'warning' as const,
    code: 'nothing-told',
    message: 'this dip tells neither a depth nor how much water',
    hint: 'write depth_cm, or volume_l, or take the entry out',
  };
  return [problemIn(entry, ['dipped_on'], complaint)];
}

/** Ways of telling how much water was given; minutes count with their flow. */
const TOLD_BY = ['cans_each', 'cans', 'volume_l', 'minutes'] as const;

/** An error when an amount is told in two ways, for nobody can say which holds. */
function toldTwice(entry: Entry<RecordOf<'waterings'>>): Problem[] {
  const told = TOLD_BY.filter((key) => entry.record[key] !== null);
  const [first, second] = told;
  if (!first || !second) return [];
  const complaint = {
    code: 'told-twice',
    message: `the amount is told as ${writtenKey(entry.record, first)} and as ${writtenKey(entry.record, second)}`,
    hint: 'keep the one you counted',
  };
  return [problemIn(entry, [writtenKey(entry.record, second)], complaint)];
}

type Counted = readonly [key: string, count: number | null];

/** An error when a part is counted larger than its whole. */
function partProblem(entry: Entry<unknown>, [key, part]: Counted, [wholeKey, whole]: Counted): Problem[] {
  if (part === null || whole === null || part <= whole) return [];
  const complaint = {
    code: 'part-over-whole',
    message: `${key} ${part} is more than ${wholeKey} ${whole}`,
    hint: 'one of the two counts is wrong',
  };
  return [problemIn(entry, [key], complaint)];
}

function beforePlanting(entry: Entry<unknown>, id: string | null, date: Dated, { planting }: EventTargets): Problem[] {
  const found = id === null ? null : planting.byId.get(id)?.record;
  if (!found) return [];
  return orderProblem(
    entry,
    { field: ['planting'], date: found.planted_on, done: 'planted' },
    { field: ['seen_on'], date, done: 'seen' },
  );
}

/** A fruit is measured while it hangs, and kept once it is picked. */
function againstPick(
  entry: Entry<unknown>,
  id: string,
  { field, date }: { readonly field: string; readonly date: Dated },
  wrong: 'after' | 'before',
  { fruit }: EventTargets,
): Problem[] {
  const gone = fruit.byId.get(id)?.record;
  const picked = { field: [field], date: gone?.pick?.picked_on ?? gone?.end?.ended_on ?? null, done: 'picked' };
  const own = { field: [field], date, done: wrong === 'after' ? 'measured' : 'ended' };
  return wrong === 'after' ? orderProblem(entry, own, picked) : orderProblem(entry, picked, own);
}
