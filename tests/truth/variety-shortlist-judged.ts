import type { Interval } from '../../src/figure.ts';
import { twentieths } from '../../src/ledger/trial/claim.ts';
import { heldOut } from '../../src/ledger/trial/held-out.ts';
import { scoreParts } from '../../src/ledger/trial/score.ts';
import { type ListEntry, shortlist } from '../../src/ledger/trial/shortlist.ts';
import { traitNumbers } from '../../src/ledger/trial/trait-numbers.ts';
import type { Weights } from '../../src/ledger/trial/weight.ts';
import type { Judged } from './judged-garden.ts';
import { type SimulatedVarietyValues, simulatedVarietyValues, type VarietyPlan } from './simulated-variety-values.ts';
import { type Regret, regretOf } from './variety-shortlist-regret.ts';

const OF = 20;

/** A claim as the list prints it, of 20, turned so that it is 10 or more. */
export interface JudgedClaim {
  readonly said: number;
  /** Whether it is so: of one summer, in that summer, for more is not said; of several, for good. */
  readonly holds: boolean;
  /** Whether it is so for good. */
  readonly lasts: boolean;
  /** Shared with the yardstick. */
  readonly seasons: number;
}

export interface JudgedList {
  readonly claims: readonly JudgedClaim[];
  /** Of differences from the yardstick, one a trait and variety. */
  readonly differences: readonly Judged[];
  /** Of what a left-out season brought; its width is held against nothing. */
  readonly held_out: readonly Judged[];
  /** Whether each variety told to go is better than the yardstick after all. */
  readonly goes: readonly { readonly wrongly: boolean }[];
  /** Null when the list is empty, or holds all there is. */
  readonly regret: Regret | null;
}

/** A simulated garden's list, from its values to what is printed of them, beside the truth; seasons left out if asked. */
export function judgedList(
  plan: VarietyPlan & { readonly weights: Weights },
  seed: number,
  draws: number,
  leaving_out = true,
): JudgedList {
  const garden = simulatedVarietyValues(plan, seed);
  const { values, varieties } = garden;
  const yardstick = varieties[0] ?? '';
  const found = plan.traits.map((trait) => traitNumbers(trait, values, varieties, yardstick, { draws, pull: 1 }));
  const parts = scoreParts(found, values);
  const list = shortlist({ parts, varieties, yardstick }, plan.weights);
  const lasting = scoresOf(garden, plan, ({ lasting: own }) => own);
  const said = garden.seasons.length === 1 ? scoresOf(garden, plan, worthOf) : lasting;
  const aboveIn = (scores: ReadonlyMap<string, number>, variety: string): number =>
    (scores.get(variety) ?? 0) - (scores.get(yardstick) ?? 0);
  const above = (variety: string): number => aboveIn(lasting, variety);
  return {
    claims: list.flatMap((entry) => claimOf(entry, aboveIn(said, entry.variety), above(entry.variety))),
    differences: found.flatMap(({ numbers }) =>
      numbers.varieties.flatMap(({ variety, difference }) =>
        difference
          ? [rangeOf(variety, difference.interval, differenceOf(garden, numbers.trait, variety, yardstick))]
          : [],
      ),
    ),
    held_out: (leaving_out ? plan.traits : []).flatMap((trait) =>
      heldOut(trait, values, varieties, yardstick).map((told) => rangeOf(told.variety, told.said.interval, told.came)),
    ),
    goes: list.filter(({ standing }) => standing === 'goes').map(({ variety }) => ({ wrongly: above(variety) > 0 })),
    regret: regretOf({
      listed: list.filter(({ standing }) => standing === 'listed').map(({ variety }) => variety),
      able: list.filter(({ standing }) => standing !== 'few').map(({ variety }) => variety),
      raw: scoresOf(garden, plan, ({ trait, variety }) => rawMean(garden, trait, variety)),
      lasting,
      next: scoresOf(garden, plan, ({ next }) => next),
    }),
  };
}

function claimOf({ better, seasons }: ListEntry, above_as_said: number, above_for_good: number): JudgedClaim[] {
  if (better === null) return [];
  const said = twentieths(better, seasons);
  const isSo = (above: number): boolean => (said >= OF / 2 ? above > 0 : above < 0);
  return [{ said: Math.max(said, OF - said), holds: isSo(above_as_said), lasts: isSo(above_for_good), seasons }];
}

const rangeOf = (of: string, interval: Interval, truth: number): Judged => ({ of, interval, truth, oracle_width: 1 });

/** One summer's ranges reach to that summer; those of several to the next. */
function differenceOf({ truths }: SimulatedVarietyValues, trait: string, a: string, b: string): number {
  const worth = (variety: string): number => {
    const own = truths.find((one) => one.trait === trait && one.variety === variety);
    return own ? worthOf(own) : Number.NaN;
  };
  return worth(a) - worth(b);
}

/** What is told of a variety: of a single summer, what it was worth in that one. */
const worthOf = ({ in_season, lasting }: SimulatedVarietyValues['truths'][number]): number =>
  in_season.length === 1 ? (in_season[0] ?? Number.NaN) : lasting;

/** Over all seasons, whichever it stood in. */
function rawMean({ values }: SimulatedVarietyValues, trait: string, variety: string): number {
  const own = values.filter((one) => one.trait === trait && one.variety === variety);
  return own.reduce((sum, { value }) => sum + value, 0) / own.length;
}

/** By variety; wishes weigh alike, as the settings have it. */
function scoresOf(
  { truths, varieties }: SimulatedVarietyValues,
  { traits }: VarietyPlan,
  of: (truth: SimulatedVarietyValues['truths'][number]) => number,
): ReadonlyMap<string, number> {
  return new Map(
    varieties.map((variety) => [
      variety,
      truths.filter((one) => one.variety === variety).reduce((sum, one) => sum + of(one), 0) / traits.length,
    ]),
  );
}
