/** Invented varieties that come and go over some summers, and what they would have been worth in the one after. */
import type { TraitId } from '../../src/ledger/trial/trait.ts';
import type { TraitValue } from '../../src/ledger/trial/trait-value.ts';
import { type Chance, chanceOf, wholeBetween } from '../simulated/chance.ts';
import { normal } from '../simulated/normal.ts';

/** Half-normal scales in residual SDs. */
const SCALES = { variety: 1.5, variety_season: 1, mound: 0.5, day: 0.5 };
/** How far summers lie apart, in residual SDs: what raw means over all of them mistake for the variety. */
const SUMMER_SD = 1.5;
const MIDDLE = 10;
const DAYS = 6;
const MOST_MOUNDS = 3;
const MOST_FRUITS = 4;

/** In residual SDs, which are 1: of fruits of one mound, or of mounds where a mound gives one value. */
interface TrueSpreads {
  readonly variety: number;
  /** Of varieties from season to season. */
  readonly variety_season: number;
  readonly mound: number;
  readonly day: number;
}

export interface VarietyPlan {
  readonly varieties: number;
  readonly seasons: number;
  /** Chance that a variety other than the yardstick stands in a season: below 1 they come and go. */
  readonly stands: number;
  /** What is recorded; more is better in each. */
  readonly traits: readonly ('brix' | 'sound_kg_per_plant')[];
  /** Null: drawn from the priors, one set a trait and garden. */
  readonly sd: TrueSpreads | null;
}

/** What is true of one variety in one trait, in residual SDs. */
interface TrueWorth {
  readonly variety: string;
  readonly trait: TraitId;
  /** Goes on to every summer. */
  readonly lasting: number;
  /** In each season, what it was worth in that one: lasting and the summer's own. */
  readonly in_season: readonly number[];
  /** In the season after the last. */
  readonly next: number;
}

export interface SimulatedVarietyValues {
  readonly values: readonly TraitValue[];
  /** The first is the yardstick, which stands in every season. */
  readonly varieties: readonly string[];
  readonly seasons: readonly string[];
  readonly truths: readonly TrueWorth[];
}

/** The garden of a seed. */
export function simulatedVarietyValues(plan: VarietyPlan, seed: number): SimulatedVarietyValues {
  const chance = chanceOf(seed);
  const varieties = counted(plan.varieties).map((at) => `v${at}`);
  const seasons = counted(plan.seasons).map((at) => `${2000 + at}`);
  const stands = varieties.flatMap((variety, at) => {
    const drawn = seasons.filter(() => at === 0 || chance() < plan.stands);
    const own = drawn.length > 0 ? drawn : [seasons[wholeBetween(chance, 0, seasons.length - 1)] ?? ''];
    return own.map((season) => ({ variety, season, mounds: wholeBetween(chance, 2, MOST_MOUNDS) }));
  });
  const told = plan.traits.map((trait) =>
    ofTrait(trait, plan.sd ?? fromPriors(chance), { varieties, seasons, stands }, chance),
  );
  return {
    values: told.flatMap(({ values }) => values),
    varieties,
    seasons,
    truths: told.flatMap(({ truths }) => truths),
  };
}

interface Layout {
  readonly varieties: readonly string[];
  readonly seasons: readonly string[];
  readonly stands: readonly { readonly variety: string; readonly season: string; readonly mounds: number }[];
}

function ofTrait(trait: VarietyPlan['traits'][number], sd: TrueSpreads, layout: Layout, chance: Chance) {
  const truths = layout.varieties.map((variety): TrueWorth => {
    const lasting = sd.variety * normal(chance);
    const inSeason = (): number => lasting + sd.variety_season * normal(chance);
    return { variety, trait, lasting, in_season: layout.seasons.map(inSeason), next: inSeason() };
  });
  const summers = new Map(layout.seasons.map((season) => [season, SUMMER_SD * normal(chance)]));
  const days = new Map<string, number>(
    layout.seasons.flatMap((season) =>
      counted(DAYS).map((day) => [`${season}-08-0${day}`, sd.day * normal(chance)] as const),
    ),
  );
  const values = layout.stands.flatMap(({ variety, season, mounds }) =>
    counted(mounds).flatMap((mound): TraitValue[] => {
      const place = { trait, variety, season, block: null, spot: `${variety}-${mound}` };
      const worth = truths.find((one) => one.variety === variety)?.in_season[layout.seasons.indexOf(season)] ?? 0;
      const level = MIDDLE + (summers.get(season) ?? 0) + worth;
      if (trait === 'sound_kg_per_plant')
        return [{ ...place, value: level + normal(chance), day: null, key: `${season}/${place.spot}` }];
      const own = level + sd.mound * normal(chance);
      return counted(wholeBetween(chance, 2, MOST_FRUITS)).map((fruit) => {
        const day = `${season}-08-0${wholeBetween(chance, 1, DAYS)}`;
        const value = own + (days.get(day) ?? 0) + normal(chance);
        return { ...place, value, day, key: `${season}/${place.spot}/${fruit}` };
      });
    }),
  );
  return { truths, values };
}

function fromPriors(chance: Chance): TrueSpreads {
  const half = (scale: number): number => scale * Math.abs(normal(chance));
  return {
    variety: half(SCALES.variety),
    variety_season: half(SCALES.variety_season),
    mound: half(SCALES.mound),
    day: half(SCALES.day),
  };
}

const counted = (count: number): number[] => Array.from({ length: count }, (_, at) => at + 1);
