import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';
import type { FruitRecord } from '../records/fruit.ts';
import type { PlantingRecord } from '../records/planting.ts';
import type { SeasonRecord } from '../records/season.ts';
import { orderProblem, seasonProblem, writtenProblem } from './check-order.ts';

/** What is impossible or contradictory about one fruit of the register. */
export function checkFruit(
  entry: Entry<FruitRecord>,
  planting: PlantingRecord | null,
  season: SeasonRecord | null,
): Problem[] {
  const { set, pick, cut, end } = entry.record;
  const planted = { field: ['planted_on'], date: planting?.planted_on ?? null, done: 'planted' };
  const setOn = { field: ['set', 'set_on'], date: set?.set_on ?? null, done: 'set' };
  const seen = { field: ['set', 'first_seen_on'], date: set?.first_seen_on ?? null, done: 'first seen' };
  const picked = { field: ['pick', 'picked_on'], date: pick?.picked_on ?? null, done: 'picked' };
  const cutOn = { field: ['cut', 'cut_on'], date: cut?.cut_on ?? null, done: 'cut' };
  const ended = { field: ['end', 'ended_on'], date: end?.ended_on ?? null, done: 'ended' };
  return [
    ...[setOn, seen, picked, ended].flatMap((step) => orderProblem(entry, planted, step)),
    ...[seen, picked, ended].flatMap((step) => orderProblem(entry, setOn, step)),
    ...[picked, ended].flatMap((step) => orderProblem(entry, seen, step)),
    ...orderProblem(entry, picked, cutOn),
    ...[setOn, seen, picked, ended].flatMap((step) => seasonProblem(entry, step, season)),
    ...writtenProblem(entry, ['set'], set?.set_on ? setOn : seen, set?.recorded_on ?? null),
    ...writtenProblem(entry, ['pick'], picked, pick?.recorded_on ?? null),
    ...writtenProblem(entry, ['cut'], cutOn, cut?.recorded_on ?? null),
    ...writtenProblem(entry, ['end'], ended, end?.recorded_on ?? null),
    ...checkFate(entry),
  ];
}

/** The fate and the parts of a fruit have to tell one story. */
function checkFate(entry: Entry<FruitRecord>): Problem[] {
  const { fate, pick, end } = entry.record;
  const differs = (part: string, hint: string): Problem =>
    problemIn(entry, [part], {
      code: 'fate-differs',
      message: `the fate is "${fate}", yet there is "${part}:"`,
      hint,
      part: 'key',
    });
  const problems: Problem[] = [];
  if (pick && fate !== 'picked') problems.push(differs('pick', 'write fate: picked, or take the pick away'));
  if (end && (fate === 'picked' || fate === 'growing'))
    problems.push(differs('end', 'write fate: thinned, aborted, lost or left, or take the end away'));
  if (end?.lost_to && fate !== 'lost' && fate !== 'picked' && fate !== 'growing') {
    problems.push(
      problemIn(entry, ['end', 'lost_to'], {
        code: 'fate-differs',
        message: `the fate is "${fate}", yet it was lost to something`,
        hint: 'write fate: lost, or take lost_to away',
      }),
    );
  }
  if (fate === 'picked' && !pick) {
    problems.push(
      problemIn(entry, ['fate'], {
        severity: 'warning',
        code: 'pick-missing',
        message: 'picked, but nothing is said of the picking',
        hint: 'add pick: with picked_on (unknown is a date too)',
      }),
    );
  }
  return problems;
}
