import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';
import type { PickingRecord } from '../records/picking.ts';
import type { PlantingRecord } from '../records/planting.ts';
import type { SeasonRecord } from '../records/season.ts';
import { orderProblem, seasonProblem, writtenProblem } from './check-order.ts';

/** What is impossible or unlikely about one planting. */
export function checkPlanting(entry: Entry<PlantingRecord>, season: SeasonRecord | null): Problem[] {
  const { sown_on, planted_on } = entry.record;
  const planted = { field: ['planted_on'], date: planted_on, done: 'planted' };
  return [
    ...orderProblem(entry, { field: ['sown_on'], date: sown_on, done: 'sown' }, planted),
    ...seasonProblem(entry, planted, season),
    ...moreAlive(entry),
  ];
}

function moreAlive(entry: Entry<PlantingRecord>): Problem[] {
  const { plants_set, plants_alive, entered } = entry.record;
  if (plants_alive === null || plants_alive <= plants_set || Object.keys(entered).length > 0) return [];
  const complaint = {
    code: 'more-alive-than-set',
    message: `${plants_alive} plants alive of ${plants_set} set`,
    hint: 'plants_set counts every plant put there, the dead ones too',
  };
  return [problemIn(entry, ['plants_alive'], complaint)];
}

/** A warning for each planting after the first in a spot and season: it is left out of variety means. */
export function checkReplanted(entries: readonly Entry<PlantingRecord>[]): Problem[] {
  const first = new Map<string, string>();
  return entries.flatMap((entry) => {
    const { id, spot } = entry.record;
    const earlier = first.get(spot);
    if (!earlier) {
      first.set(spot, id);
      return [];
    }
    const message = `spot ${spot} holds ${earlier} as well as ${id} this season`;
    return [
      problemIn(entry, ['spot'], {
        severity: 'warning',
        code: 'replanted-spot',
        message,
        hint: 'both count in totals; neither counts in the means of varieties',
      }),
    ];
  });
}

/** A warning for each planting without a block where others have one: blocks then count for none of them. */
export function checkBlocks(entries: readonly Entry<PlantingRecord>[]): Problem[] {
  if (entries.every(({ record }) => record.block === null)) return [];
  return entries
    .filter(({ record }) => record.block === null)
    .map((entry) =>
      problemIn(entry, [], {
        severity: 'warning',
        code: 'block-missing',
        message: `planting ${entry.record.id} has no block, while others of its season have`,
        hint: 'add block: to it; with one missing, blocks are allowed for in none of its crop',
      }),
    );
}

/** What is impossible about one picking of a planting. */
export function checkPicking(
  entry: Entry<PickingRecord>,
  planting: PlantingRecord | null,
  season: SeasonRecord | null,
): Problem[] {
  const { record } = entry;
  const picked = { field: ['picked_on'], date: record.picked_on, done: 'picked' };
  return [
    ...(planting
      ? orderProblem(entry, { field: ['planted_on'], date: planting.planted_on, done: 'planted' }, picked)
      : []),
    ...seasonProblem(entry, picked, season),
    ...writtenProblem(entry, [], picked, record.recorded_on),
    ...moreSound(entry),
  ];
}

function moreSound(entry: Entry<PickingRecord>): Problem[] {
  const { count, sound_count, mass_kg, sound_mass_kg, sound_mass_lb, entered } = entry.record;
  const problems: Problem[] = [];
  if (sound_count !== null && sound_count > count && !entered.count && !entered.sound_count) {
    const message = `${sound_count} sound of ${count} picked`;
    problems.push(
      problemIn(entry, ['sound_count'], {
        code: 'more-sound-than-picked',
        message,
        hint: 'count holds all fruits, sound_count the whole ones among them',
      }),
    );
  }
  const isReckoned = entered.mass_kg || entered.sound_mass_kg;
  if (mass_kg !== null && sound_mass_kg !== null && sound_mass_kg > mass_kg && !isReckoned) {
    const message = 'the sound fruits weigh more than all of them';
    problems.push(
      problemIn(entry, [sound_mass_lb === null ? 'sound_mass_kg' : 'sound_mass_lb'], {
        code: 'more-sound-than-picked',
        message,
        hint: 'mass holds all fruits, sound_mass the whole ones among them',
      }),
    );
  }
  return problems;
}

/** A warning for a picking entered twice: same planting, date, count and mass. */
export function checkPickingTwice(entries: readonly Entry<PickingRecord>[]): Problem[] {
  const seen = new Map<string, Entry<PickingRecord>>();
  return entries.flatMap((entry) => {
    const { planting, picked_on, count, mass_kg } = entry.record;
    const sameAs = JSON.stringify([planting, picked_on.text, count, mass_kg]);
    const first = seen.get(sameAs);
    seen.set(sameAs, first ?? entry);
    if (!first) return [];
    const { line } = first.source.locate(first.path);
    const complaint = {
      severity: 'warning' as const,
      code: 'picking-twice',
      message: `the same picking stands at line ${line}`,
      hint: 'delete one, or add a note to each if both are true',
    };
    return entry.record.note && first.record.note && entry.record.note !== first.record.note
      ? []
      : [problemIn(entry, [], complaint)];
  });
}
