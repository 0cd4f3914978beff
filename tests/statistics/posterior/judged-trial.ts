import { atColumns, effectsOf } from '../../../src/statistics/posterior/level-draws.ts';
import { differences, levelIntervals } from '../../../src/statistics/posterior/level-summary.ts';
import { posterior } from '../../../src/statistics/posterior/posterior.ts';
import type { Judged } from '../../truth/judged-garden.ts';
import { simulatedTrial, type TrialPlan } from './simulated-trial.ts';

/** Truths and draws must not come from one stream. */
const OTHER_STREAM = 1_000_000;

export interface JudgedTrial {
  readonly means: readonly Judged[];
  readonly differences: readonly Judged[];
  /** Claims that one variety is above another, as made and as true, where they differ at all. */
  readonly claims: readonly { readonly share: number; readonly holds: boolean }[];
}

/**
 * Ranges of a variety's mean in the first season's conditions and of its difference from the first variety, beside the
 * truth. For a yardstick of width, those of one who knows all but the scatter of the variety's own fruits.
 */
export function judgedTrial(plan: TrialPlan, seed: number, draws: number): JudgedTrial {
  const { data, worth } = simulatedTrial(plan, seed);
  const found = posterior(data, { seed: seed + OTHER_STREAM, draws });
  if ('cannot' in found) throw new Error(`refused: ${JSON.stringify(found.cannot)}`);
  const effects = effectsOf(found, 'variety');
  const fruits = data.y.length / plan.varieties;
  const oracle_width = (2 * 1.645) / Math.sqrt(fruits);
  const from = effects[0]?.level ?? '';
  const truthOf = (level: string): number => worth.get(level) ?? Number.NaN;
  const compared = differences(effects, from);
  return {
    means: levelIntervals(atColumns(effects, found, { constant: 1 })).map(({ level, interval }) => ({
      of: level,
      interval,
      truth: truthOf(level),
      oracle_width,
    })),
    differences: compared.map(({ level, interval }) => ({
      of: level,
      interval,
      truth: truthOf(level) - truthOf(from),
      oracle_width: oracle_width * Math.SQRT2,
    })),
    claims: compared
      .filter(({ level }) => truthOf(level) !== truthOf(from))
      .map(({ level, share_above_zero: share }) => ({ share, holds: truthOf(level) > truthOf(from) })),
  };
}
