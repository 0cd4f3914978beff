import type { Figure } from '../../figure.ts';
import { cropsOf } from '../../garden/crops-of.ts';
import type { Crop, Garden, Season, Variety } from '../../garden/garden.ts';
import { ownStation } from '../../garden/own-station.ts';
import { type Kept, keptOr } from '../../kept.ts';
import { WEIGHT_KEYS } from '../../records/weights.ts';
import type { Bases } from '../bases.ts';
import { cropHeat } from '../maturity/season-maturity.ts';
import { openAccount, type SeasonAccount } from '../season-account.ts';
import { heatRecord } from '../weather/heat-record.ts';
import { fruitValues } from './fruit-values.ts';
import type { HeldOut } from './held-out.ts';
import { moundValues } from './mound-values.ts';
import type { ListEntry } from './shortlist.ts';
import { type SoundMound, soundMounds, soundShares } from './sound-share.ts';
import { ballotsOf, TASTE_QUESTIONS, type Taste, tasteOf, type VarietyTaste } from './taste.ts';
import { type Trait, traitOf } from './trait.ts';
import type { TraitNumbers, VarietyNumbers } from './trait-numbers.ts';
import type { TraitValue } from './trait-value.ts';
import {
  type FigureDesk,
  heldFigure,
  listFigures,
  soundFigure,
  summerFigure,
  tasteFigure,
  type VarietyFigures,
  varietyFigures,
} from './trial-figures.ts';
import { type TrialNumbers, trialNumbers } from './trial-numbers.ts';
import { USUAL_WEIGHTS, type Weights } from './weight.ts';
import { type Yardstick, yardstickOf } from './yardstick.ts';

/** The varieties of one crop held against each other, over all seasons. */
export interface CropTrial {
  readonly crop: Crop;
  /** Grown or not, in the alphabet's order. */
  readonly varieties: readonly Variety[];
  /** Seasons with a value, the first first. */
  readonly seasons: readonly Season[];
  /** Null before any harvest, and then nothing is compared. */
  readonly yardstick: Yardstick | null;
  /** How the grower weighs things, or the house's weights. */
  readonly weights: Weights;
  readonly own_weights: boolean;
  /** How the spots were given their varieties; null when not alike in all plantings. */
  readonly placed: 'lot' | 'chosen' | 'unknown' | null;
  readonly values: readonly TraitValue[];
  /** Traits with a value, in the order of TRAITS. */
  readonly traits: readonly TrialTrait[];
  readonly wishes: TrialNumbers['wishes'];
  /** Varieties ever harvested, in the alphabet's order; empty when no wish can be told. */
  readonly list: readonly ListRow[];
  readonly other_wishes: TrialNumbers['other_wishes'];
  /** Varieties that stand elsewhere on the list when half or twice the usual spread is expected. */
  readonly moved_by_prior: readonly Variety[];
  /** What one more spot would teach, the most first. */
  readonly next: readonly { readonly variety: Variety; readonly gain: number; readonly grown: boolean }[];
  readonly held_out: readonly HeldOutRow[];
  /** Varieties with a fruit whose condition is known, in the alphabet’s order. */
  readonly sound: readonly { readonly variety: Variety; readonly of_ten: Figure }[];
  /** By question; only those with a ballot between two varieties. */
  readonly tastes: readonly TrialTaste[];
}

export interface TrialTrait {
  readonly trait: Trait;
  readonly numbers: TraitNumbers;
  /** Varieties with a value, in the alphabet's order. */
  readonly rows: readonly TraitRow[];
  readonly summers: readonly { readonly season: Season; readonly share: Figure }[];
}

export interface TraitRow extends VarietyFigures {
  readonly variety: Variety;
  readonly numbers: VarietyNumbers;
}

export interface ListRow extends Pick<VarietyFigures, 'better' | 'best'> {
  readonly variety: Variety;
  readonly entry: ListEntry;
}

export interface HeldOutRow {
  readonly variety: Variety;
  readonly trait: Trait;
  readonly season: Season;
  readonly said: Figure;
  readonly told: HeldOut;
}

export interface TrialTaste {
  readonly taste: Taste;
  readonly rows: readonly { readonly variety: Variety; readonly told: VarietyTaste; readonly better: Figure }[];
}

/** A trial for every crop, in the order of their ids. Fits are kept by their inputs. */
export function cropTrials(garden: Garden, bases: Bases, kept: Kept): CropTrial[] {
  const accounts = garden.seasons.map((season) => openAccount(season, bases));
  return cropsOf(garden.varieties).map((crop) => cropTrial(garden, crop, accounts, bases, kept));
}

function cropTrial(
  garden: Garden,
  crop: Crop,
  accounts: readonly SeasonAccount[],
  bases: Bases,
  kept: Kept,
): CropTrial {
  const varieties = garden.varieties.filter((variety) => variety.crop.id === crop.id);
  const values = valuesOf(garden, crop, accounts);
  const yardstick = yardstickOf(varieties, values);
  const weights = garden.about.weights ? given(garden.about.weights) : USUAL_WEIGHTS;
  const seasons = garden.seasons.filter(({ slug }) => values.some(({ season }) => season === slug));
  const under = new Map(accounts.flatMap((account) => harvestKeys(account, crop)));
  const bare: CropTrial = {
    crop,
    varieties,
    seasons,
    yardstick,
    weights,
    own_weights: garden.about.weights !== null,
    placed: placedOf(seasons, crop),
    values,
    traits: [],
    wishes: [],
    list: [],
    other_wishes: [],
    moved_by_prior: [],
    next: [],
    held_out: [],
    sound: soundRows({ garden, bases, kept, crop, varieties, under }, accounts),
    tastes: [],
  };
  if (!yardstick) return bare;
  const input = { values, varieties: varieties.map(({ id }) => id), yardstick: yardstick.variety.id, weights };
  const numbers = keptOr(kept, 'fits', JSON.stringify(['variety-trial', input]), () => trialNumbers(input));
  const desk: Desk = { garden, bases, kept, crop, yardstick, values, varieties, seasons, under };
  return {
    ...bare,
    traits: numbers.traits.map((one) => trialTrait(desk, one)),
    wishes: numbers.wishes,
    list: listRows(desk, numbers),
    other_wishes: numbers.other_wishes,
    moved_by_prior: movedByPrior(desk, numbers),
    next: numbers.next.map(({ variety, gain, grown }) => ({ variety: named(desk, variety), gain, grown })),
    held_out: numbers.held_out.map((told) => heldOutRow(desk, told)),
    tastes: TASTE_QUESTIONS.flatMap((question) => trialTaste(desk, question) ?? []),
  };
}

interface CropDesk {
  readonly garden: Garden;
  readonly bases: Bases;
  readonly kept: Kept;
  readonly crop: Crop;
  readonly varieties: readonly Variety[];
  /** Keys of the records that tell what a planting gave, by its own key. */
  readonly under: ReadonlyMap<string, readonly string[]>;
}

interface Desk extends CropDesk {
  readonly yardstick: Yardstick;
  readonly values: readonly TraitValue[];
  readonly seasons: readonly Season[];
}

function valuesOf(garden: Garden, crop: Crop, accounts: readonly SeasonAccount[]): TraitValue[] {
  const station = ownStation(garden);
  const heat = station && heatRecord(station, cropHeat(garden, crop));
  return accounts.flatMap((account) => [
    ...moundValues(account, crop.id, heat),
    ...account.season.plantings
      .filter(({ variety }) => variety?.crop.id === crop.id)
      .flatMap((planting) => fruitValues(account.season, planting)),
  ]);
}

const harvestKeys = ({ season, harvestOf }: SeasonAccount, crop: Crop): (readonly [string, readonly string[]])[] =>
  season.plantings
    .filter(({ variety }) => variety?.crop.id === crop.id)
    .map((planting) => [planting.key, harvestOf(planting)?.keys ?? [planting.key]]);

/** A blank weighs nothing. */
const given = (weights: NonNullable<Garden['about']['weights']>): Weights =>
  Object.fromEntries(WEIGHT_KEYS.map((key) => [key, weights[key] ?? 0]));

function placedOf(seasons: readonly Season[], crop: Crop): CropTrial['placed'] {
  const ways = new Set(
    seasons.flatMap(({ plantings }) =>
      plantings.filter(({ variety }) => variety?.crop.id === crop.id).map(({ placed }) => placed ?? 'unknown'),
    ),
  );
  const [only] = ways;
  return ways.size === 1 && only ? only : null;
}

function deskOf({ bases, crop, under }: Desk, name: string, values: readonly TraitValue[]): FigureDesk {
  return {
    stem: `variety.${crop.id}.${name}`,
    basis: bases.of(values.flatMap(({ key }) => under.get(key) ?? [key])),
    seasons: new Set(values.map(({ season }) => season)).size,
  };
}

function trialTrait(desk: Desk, numbers: TraitNumbers): TrialTrait {
  const trait = traitOf(numbers.trait);
  const own = deskOf(
    desk,
    trait.id,
    desk.values.filter((value) => value.trait === trait.id),
  );
  const yardstickSeasons =
    numbers.varieties.find(({ variety }) => variety === desk.yardstick.variety.id)?.seasons ?? [];
  return {
    trait,
    numbers,
    rows: desk.varieties.flatMap((variety) => {
      const found = numbers.varieties.find((one) => one.variety === variety.id);
      if (!found) return [];
      const shared = found.seasons.filter((season) => yardstickSeasons.includes(season)).length;
      return [{ variety, numbers: found, ...varietyFigures(own, trait, numbers, found, shared) }];
    }),
    summers: numbers.seasons.map((told) => ({
      season: seasonOf(desk, told.season),
      share: summerFigure(own, trait, told),
    })),
  };
}

function soundRows(
  { bases, kept, crop, varieties, under }: CropDesk,
  accounts: readonly SeasonAccount[],
): CropTrial['sound'] {
  const bySeason = accounts.map((account) => soundMounds(account, crop.id));
  const mounds = bySeason.flat();
  const ids = varieties.map(({ id }) => id);
  const shares = keptOr(kept, 'fits', JSON.stringify(['sound-shares', mounds, ids]), () => soundShares(mounds, ids));
  return varieties.flatMap((variety) => {
    const found = shares.find((one) => one.variety === variety.id);
    if (!found) return [];
    const isOwn = (mound: SoundMound): boolean => mound.variety === variety.id;
    const desk: FigureDesk = {
      stem: `variety.${crop.id}.sound`,
      basis: bases.of(mounds.filter(isOwn).flatMap(({ key }) => under.get(key) ?? [key])),
      seasons: bySeason.filter((own) => own.some(isOwn)).length,
    };
    return [{ variety, of_ten: soundFigure(desk, found) }];
  });
}

function listRows(desk: Desk, { list, wishes }: TrialNumbers): ListRow[] {
  const used = wishes.filter(({ weight }) => weight > 0).map(({ trait }) => trait);
  const own = deskOf(
    desk,
    'list',
    desk.values.filter(({ trait }) => used.includes(trait)),
  );
  return list.map((entry) => ({ variety: named(desk, entry.variety), entry, ...listFigures(own, entry) }));
}

function movedByPrior(desk: Desk, { list, half_pull, double_pull }: TrialNumbers): Variety[] {
  const moved = (others: readonly ListEntry[]): string[] =>
    list
      .filter(({ variety, standing }) => others.some((one) => one.variety === variety && one.standing !== standing))
      .map(({ variety }) => variety);
  const ids = new Set([...moved(half_pull), ...moved(double_pull)]);
  return desk.varieties.filter(({ id }) => ids.has(id));
}

function heldOutRow(desk: Desk, told: HeldOut): HeldOutRow {
  const trait = traitOf(told.trait);
  const others = desk.values.filter((value) => value.trait === trait.id && value.season !== told.season);
  return {
    variety: named(desk, told.variety),
    trait,
    season: seasonOf(desk, told.season),
    said: heldFigure(deskOf(desk, trait.id, others), trait, told),
    told,
  };
}

function trialTaste(desk: Desk, question: Taste['question']): TrialTaste | null {
  const { garden, bases, kept, crop, yardstick, varieties } = desk;
  const ballots = ballotsOf(garden, crop.id, question);
  const { fruits, pairs, orders } = ballots.tastings;
  const inputs = JSON.stringify(['variety-taste', question, [...fruits], pairs, orders, yardstick.variety.id]);
  const taste = keptOr(kept, 'fits', inputs, () => tasteOf(ballots, yardstick.variety.id));
  if (!taste) return null;
  const own: FigureDesk = {
    stem: `variety.${crop.id}.taste.${question}`,
    basis: bases.of(ballots.keys),
    seasons: Math.max(...taste.varieties.map((one) => one.seasons)),
  };
  return {
    taste,
    rows: varieties.flatMap((variety) => {
      const told = taste.varieties.find((one) => one.variety === variety.id);
      return told ? [{ variety, told, better: tasteFigure(own, told) }] : [];
    }),
  };
}

function named({ varieties }: Desk, id: string): Variety {
  const found = varieties.find((one) => one.id === id);
  if (!found) throw new RangeError(`invalid variety: ${id}`);
  return found;
}

function seasonOf({ seasons }: Desk, slug: string): Season {
  const found = seasons.find((one) => one.slug === slug);
  if (!found) throw new RangeError(`invalid season: ${slug}`);
  return found;
}
