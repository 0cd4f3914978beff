import type { WeightKey } from '../../records/weights.ts';
import { type HeldOut, heldOut } from './held-out.ts';
import { type NextSpot, nextSpots } from './next-spot.ts';
import { type ScorePart, scoreParts, wishedFor } from './score.ts';
import { type ListDesk, type ListEntry, shortlist } from './shortlist.ts';
import { TRAITS, type TraitId } from './trait.ts';
import { type TraitFound, type TraitNumbers, traitNumbers } from './trait-numbers.ts';
import type { TraitValue } from './trait-value.ts';
import { MOST_WEIGHT, type Weights } from './weight.ts';

/** What is reckoned from: nothing else bears on the numbers. */
export interface TrialInput {
  readonly values: readonly TraitValue[];
  /** All of the crop, grown or not, in the alphabet's order of their names. */
  readonly varieties: readonly string[];
  readonly yardstick: string;
  readonly weights: Weights;
}

/** Everything a crop's varieties are told by, as plain numbers. */
export interface TrialNumbers {
  /** Traits with a value, in the order of TRAITS. */
  readonly traits: readonly TraitNumbers[];
  /** Wishes the records can tell, and the trait each is told by. */
  readonly wishes: readonly { readonly key: WeightKey; readonly trait: TraitId; readonly weight: number }[];
  readonly list: readonly ListEntry[];
  /** What a change of one wish would bring in and put out; only changes that do. */
  readonly other_wishes: readonly OtherWish[];
  /** The same list with half and with twice the usual spread among varieties taken for likely beforehand. */
  readonly half_pull: readonly ListEntry[];
  readonly double_pull: readonly ListEntry[];
  /** The one that would teach most first. */
  readonly next: readonly NextSpot[];
  readonly held_out: readonly HeldOut[];
}

export interface OtherWish {
  readonly key: WeightKey;
  readonly change: 'more' | 'less';
  readonly comes: readonly string[];
  readonly leaves: readonly string[];
}

const DRAWS = 2000;
const FEWER_DRAWS = 1000;

/** Pure and seeded: the same input, the same numbers. */
export function trialNumbers({ values, varieties, yardstick, weights }: TrialInput): TrialNumbers {
  const ids = TRAITS.map(({ id }) => id).filter((id) => values.some(({ trait }) => trait === id));
  const by = (draws: number, pull: number, of: readonly TraitId[]): TraitFound[] =>
    of.map((id) => traitNumbers(id, values, varieties, yardstick, { draws, pull }));
  const found = by(DRAWS, 1, ids);
  const parts = scoreParts(found, values);
  const grown = varieties.filter((variety) => values.some((value) => value.variety === variety));
  const desk = (own: readonly ScorePart[]): ListDesk => ({
    parts: own,
    varieties: grown,
    yardstick,
  });
  const list = shortlist(desk(parts), weights);
  const wished = [...new Set(wishedFor(parts, weights).map(({ trait }) => trait))];
  const pulled = (pull: number): ListEntry[] => {
    const own = by(FEWER_DRAWS, pull, wished);
    return shortlist(desk(scoreParts(own, values)), weights);
  };
  const judged = list.some(({ standing }) => standing !== 'few');
  return {
    traits: found.map(({ numbers }) => numbers),
    wishes: parts.map(({ key, trait }) => ({ key, trait, weight: weights[key] ?? 0 })),
    list,
    other_wishes: judged ? otherWishes(desk(parts), weights, list) : [],
    half_pull: judged ? pulled(0.5) : [],
    double_pull: judged ? pulled(2) : [],
    next: judged ? nextSpots(parts, found, values, weights, varieties) : [],
    held_out: wished.flatMap((id) => heldOut(id, values, varieties, yardstick)),
  };
}

const listed = (list: readonly ListEntry[]): string[] =>
  list.filter(({ standing }) => standing === 'listed').map(({ variety }) => variety);

function otherWishes(desk: ListDesk, weights: Weights, list: readonly ListEntry[]): OtherWish[] {
  const now = listed(list);
  return desk.parts.flatMap(({ key }) => {
    const weight = weights[key] ?? 0;
    const tries = [
      ...(weight < MOST_WEIGHT ? [{ change: 'more' as const, to: weight + 1 }] : []),
      ...(weight > 0 ? [{ change: 'less' as const, to: weight - 1 }] : []),
    ];
    return tries.flatMap(({ change, to }) => {
      const then = listed(shortlist(desk, { ...weights, [key]: to }));
      const comes = then.filter((variety) => !now.includes(variety));
      const leaves = now.filter((variety) => !then.includes(variety));
      return comes.length + leaves.length > 0 && then.length > 0 ? [{ key, change, comes, leaves }] : [];
    });
  });
}
