/** Invented gardens whose fruits were cut some day, with what is true of fruits that still hang. */
import type { GrowingFruit } from '../../src/statistics/ripe-states/remaining-time.ts';
import { WEAK_RIPE_PRIORS } from '../../src/statistics/ripe-states/ripe-priors.ts';
import type { RipeState, SeenFruit } from '../../src/statistics/ripe-states/seen-fruit.ts';
import type { Stages } from '../../src/statistics/ripe-states/state-chance.ts';
import { between, type Chance, chanceOf } from '../simulated/chance.ts';
import { normal } from '../simulated/normal.ts';

export interface CutPlan {
  readonly varieties: number;
  /** Cut, of all varieties together. */
  readonly fruits: number;
  /** How many days the day of set is known to. */
  readonly span_days: number;
  /** Null: drawn from the priors, one set a garden. */
  readonly stages: (Stages & { readonly between: number }) | null;
  /** Log by which signs follow ripeness, and its standard deviation; fruits are cut when they show. Absent: cut on any day. */
  readonly signs?: { readonly late: number; readonly sd: number };
  /** Days before the cut at which a fruit was called not ripe; how often that is held to be wrong. */
  readonly call?: { readonly days: number; readonly wrong: number };
  /** Standard deviation of what fruits of one mound share; three mounds a variety. */
  readonly mound?: number;
  /** Fruits scatter by a t distribution of so many degrees of freedom, scaled to the same standard deviation. */
  readonly tails?: number;
  /** Days by which each set date is wrong, early or late. */
  readonly misread?: number;
}

/** A fruit that hangs unripe, and how long it yet takes. */
export interface HangingFruit {
  readonly fruit: GrowingFruit;
  readonly to_just: number;
  readonly to_over: number;
  /** Log time of what it is drawn about: the variety's truth. */
  readonly middle: number;
}

export interface CutGarden {
  readonly cut: readonly SeenFruit[];
  /** One of each variety. */
  readonly hanging: readonly HangingFruit[];
  readonly stages: Stages;
}

const MIDDLE = Math.log(40);
const MOUNDS = 3;
/** Log times between which fruits are cut by accident, and looked at again, beside the middle of all. */
const CUT = { low: -0.3, high: 0.3 };
const LOOK = { low: -0.3, high: 0.1 };
const PATIENCE = 1000;

/** The garden of a seed. */
export function cutGarden(plan: CutPlan, seed: number): CutGarden {
  const chance = chanceOf(seed);
  const stages = plan.stages ?? fromPriors(chance);
  const common = MIDDLE + 0.1 * normal(chance);
  const names = Array.from({ length: plan.varieties }, (_, at) => `v${at}`);
  const middles = names.map(() => common + stages.between * normal(chance));
  const mounds = names.map(() => Array.from({ length: MOUNDS }, () => (plan.mound ?? 0) * normal(chance)));
  const ripeTime = (variety: number): number => {
    const mound = mounds[variety]?.[Math.floor(MOUNDS * chance())] ?? 0;
    return Math.exp((middles[variety] ?? 0) + mound + stages.spread * scatter(chance, plan.tails));
  };
  const seenAge = (age: number): { from: number; to: number } => {
    const read = age + (plan.misread ?? 0) * (chance() < 0.5 ? -1 : 1);
    const from = Math.max(1, read - plan.span_days * chance());
    return { from, to: from + plan.span_days };
  };
  const cut = Array.from({ length: plan.fruits }, (_, at): SeenFruit => {
    const variety = at % plan.varieties;
    const ripe = ripeTime(variety);
    const age = plan.signs
      ? ripe * Math.exp(plan.signs.late + plan.signs.sd * normal(chance))
      : Math.exp(common + between(chance, CUT.low, CUT.high));
    const seen = { variety: names[variety] ?? '', ...seenAge(age), state: stateAt(age, ripe, stages) };
    return plan.call ? { ...seen, called_earlier: Math.min(plan.call.days, seen.from) } : seen;
  });
  const hanging = names.flatMap((name, variety): HangingFruit[] => {
    const age = Math.exp(common + between(chance, LOOK.low, LOOK.high));
    for (let tried = 0; tried < PATIENCE; tried++) {
      const ripe = ripeTime(variety);
      if (ripe <= age) continue;
      const to_over = ripe * Math.exp(stages.just + stages.prime) - age;
      const fruit = { variety: name, ...seenAge(age), call_wrong: 0 };
      return [{ fruit, to_just: ripe - age, to_over, middle: middles[variety] ?? 0 }];
    }
    return [];
  });
  return { cut, hanging, stages };
}

function fromPriors(chance: Chance): Stages & { between: number } {
  const { spread, variety, just, prime } = WEAK_RIPE_PRIORS;
  return {
    spread: spread * Math.abs(normal(chance)),
    between: variety * Math.abs(normal(chance)),
    just: just.median * Math.exp(just.log_sd * normal(chance)),
    prime: prime.median * Math.exp(prime.log_sd * normal(chance)),
  };
}

function stateAt(age: number, ripe: number, { just, prime }: Stages): RipeState {
  const since = Math.log(age / ripe);
  if (since < 0) return 'U';
  if (since < just) return 'J';
  return since < just + prime ? 'P' : 'O';
}

/** Of mean 0 and standard deviation 1: normal, or t on so many degrees of freedom, above 2. */
function scatter(chance: Chance, tails: number | undefined): number {
  if (tails === undefined) return normal(chance);
  const squares = Array.from({ length: tails }, () => normal(chance) ** 2).reduce((sum, one) => sum + one, 0);
  return normal(chance) * Math.sqrt((tails - 2) / squares);
}
