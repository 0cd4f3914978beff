import type { Facts } from '../../src/book/chapter.ts';
import { phraseOf, type StandingPhrase } from '../../src/book/standing-phrase.ts';
import type { Figure, FigureUnit } from '../../src/figure.ts';
import { sharedKind } from '../../src/garden/shared-kind.ts';
import type { CropTrial, TrialTrait } from '../../src/ledger/trial/crop-trial.ts';
import type { Standing } from '../../src/ledger/trial/shortlist.ts';
import type { WeightKey } from '../../src/records/weights.ts';
import { type AgainstModel, againstModel } from './against-model.ts';
import { type Answer, answerOf } from './answer.ts';
import { type Bet, betsOf } from './bet.ts';
import { type EntryRow, entryRows } from './entry-rows.ts';
import { type HeldModel, heldModel } from './held-model.ts';
import { mainTraits } from './main-traits.ts';
import { pathOf } from './paths.ts';
import { type TasteModel, tasteModels } from './taste-model.ts';

/** Traits whose plain means are printed. */
const PLAINLY = 2;
/** Bets a report opens with. */
const MOST_BETS = 4;

/** Everything the report on the varieties of a crop reads. */
export interface TrialModel {
  readonly names: { readonly one: string; readonly many: string };
  readonly answer: Answer;
  readonly seasons: readonly string[];
  readonly yardstick: { readonly name: string; readonly by: 'marked' | 'longest' };
  readonly placed: CropTrial['placed'];
  /** How the places the varieties stood in are spoken of. */
  readonly kind: string;
  readonly wishes: readonly Wish[];
  readonly own_weights: boolean;
  /** The boldest first. */
  readonly bets: readonly Bet[];
  /** Those the finding does not say already. */
  readonly more_bets: readonly Bet[];
  readonly list: readonly ListLine[];
  readonly standings: Readonly<Record<Standing, readonly string[]>>;
  readonly other_wishes: readonly {
    readonly key: WeightKey;
    readonly change: string;
    readonly comes: readonly string[];
    readonly leaves: readonly string[];
  }[];
  readonly moved_by_prior: readonly string[];
  /** The one or two that one more spot would teach most about; empty when nothing is to be gained. */
  readonly try_again: readonly string[];
  /** Never harvested here. */
  readonly untried: readonly string[];
  readonly columns: readonly TraitColumn[];
  readonly rows: readonly TrialRow[];
  readonly has_sound: boolean;
  readonly against: readonly AgainstModel[];
  readonly summers: readonly SummerRow[];
  readonly summer_traits: readonly { readonly trait: string; readonly unit: FigureUnit }[];
  readonly has_ranks: boolean;
  readonly held: HeldModel | null;
  readonly tastes: readonly TasteModel[];
  readonly entries: readonly EntryRow[];
  readonly panels: string | null;
}

interface Wish {
  readonly key: WeightKey;
  readonly weight: number;
  /** Null where the records tell nothing of it. */
  readonly trait: string | null;
}

interface ListLine {
  readonly name: string;
  readonly path: string;
  readonly yardstick: boolean;
  readonly standing: Standing;
  readonly better: Figure;
  readonly best: Figure;
  readonly seasons: number;
}

interface TraitColumn {
  readonly trait: string;
  readonly unit: FigureUnit;
  readonly of: 'fruit' | 'mound';
  /** For every 100 of the mean, what mounds of one variety in one season differ by. */
  readonly cv_of_100: number | null;
}

interface TrialRow {
  readonly name: string;
  readonly yardstick: boolean;
  readonly seasons: number;
  readonly mounds: number;
  /** In the order of the columns; null where the variety has no value. */
  readonly cells: readonly (Figure | null)[];
  readonly sound: Figure | null;
}

interface SummerRow {
  readonly label: string;
  readonly shares: readonly (Figure | null)[];
  readonly warmth: StandingPhrase | null;
  readonly wetness: StandingPhrase | null;
}

/** Null before two varieties can be compared. */
export function trialModel(facts: Facts, trial: CropTrial, panels: string | null): TrialModel | null {
  const { yardstick } = trial;
  const kept = mainTraits(trial);
  if (!yardstick || kept.length === 0) return null;
  const answer = answerOf(facts.garden, trial);
  const known = trial.list.filter(({ entry }) => entry.standing !== 'few').length > 0;
  const wished = trial.wishes.filter(({ weight }) => weight > 0).map(({ trait }) => trait);
  const heaviest = trial.wishes
    .toSorted((a, b) => b.weight - a.weight)
    .slice(0, PLAINLY)
    .map(({ trait }) => trait);
  const compared = trial.traits.filter(({ trait, numbers }) => wished.includes(trait.id) && numbers.cannot === null);
  const summerTraits = compared.filter(({ summers }) => summers.length > 0);
  const standing = (of: Standing): string[] =>
    trial.list.filter(({ entry }) => entry.standing === of).map(({ variety }) => variety.name);
  const summers = trial.seasons.map((season) => {
    const weather = facts.ledger.weather.get(season.slug) ?? null;
    return {
      label: season.label,
      shares: summerTraits.map(({ summers: own }) => own.find((one) => one.season.slug === season.slug)?.share ?? null),
      warmth: phraseOf(weather?.measures.heat_c_days.standing ?? null),
      wetness: phraseOf(weather?.measures.rain_mm.standing ?? null),
    };
  });
  const bets = boldest(compared.map((trait) => betsOf(trial, trait)));
  return {
    names: answer.names,
    answer,
    seasons: trial.seasons.map(({ label }) => label),
    yardstick: { name: yardstick.variety.name, by: yardstick.by },
    placed: trial.placed,
    kind: kindOf(trial),
    wishes: wishesOf(trial),
    own_weights: trial.own_weights,
    bets,
    more_bets: answer.state === 'bets' ? bets.filter((one) => !isSame(one, answer.bets[0])) : bets,
    list: known
      ? trial.list.map(({ variety, entry, better, best }) => ({
          name: variety.name,
          path: pathOf(variety),
          yardstick: variety === yardstick.variety,
          standing: entry.standing,
          seasons: entry.seasons,
          better,
          best,
        }))
      : [],
    standings: { listed: standing('listed'), again: standing('again'), goes: standing('goes'), few: standing('few') },
    other_wishes: trial.other_wishes.map(({ key, change, comes, leaves }) => ({
      key,
      change,
      comes: namesOf(trial, comes),
      leaves: namesOf(trial, leaves),
    })),
    moved_by_prior: trial.moved_by_prior.map(({ name }) => name),
    try_again: worthASpot(trial),
    untried: trial.next.filter(({ grown }) => !grown).map(({ variety }) => variety.name),
    columns: kept.map(({ trait, numbers }) => ({
      trait: trait.id,
      unit: trait.unit,
      of: trait.of,
      cv_of_100: numbers.cv_of_100,
    })),
    rows: trial.varieties.flatMap((variety) => rowOf(trial, kept, variety.id) ?? []),
    has_sound: trial.sound.some(({ of_ten }) => of_ten.value !== null),
    against: compared.flatMap((trait) => againstModel(trial, trait, heaviest.includes(trait.trait.id)) ?? []),
    summers: trial.seasons.length > 1 && summerTraits.length > 0 ? summers : [],
    summer_traits: summerTraits.map(({ trait }) => ({ trait: trait.id, unit: trait.unit })),
    has_ranks: summers.some(({ warmth, wetness }) => warmth !== null || wetness !== null),
    held: heldModel(trial),
    tastes: tasteModels(trial),
    entries: entryRows(facts, trial),
    panels,
  };
}

function rowOf(trial: CropTrial, columns: readonly TrialTrait[], id: string): TrialRow | null {
  const variety = trial.varieties.find((one) => one.id === id);
  const own = trial.values.filter((value) => value.variety === id);
  if (!variety || own.length === 0) return null;
  return {
    name: variety.name,
    yardstick: variety === trial.yardstick?.variety,
    seasons: new Set(own.map(({ season }) => season)).size,
    mounds: new Set(own.map(({ season, spot }) => `${season} ${spot}`)).size,
    cells: columns.map(({ rows }) => rows.find((row) => row.variety === variety)?.level ?? null),
    sound: trial.sound.find((one) => one.variety === variety)?.of_ten ?? null,
  };
}

const isSame = (one: Bet, other: Bet | undefined): boolean =>
  one.trait === other?.trait && one.more === other.more && one.less === other.less;

/** The boldest of each trait before a second of any. */
function boldest(byTrait: readonly (readonly Bet[])[]): Bet[] {
  const rank = (bets: readonly Bet[]): Bet[] => bets.toSorted((a, b) => b.of_twenty - a.of_twenty);
  const first = rank(byTrait.flatMap((bets) => bets.slice(0, 1)));
  return [...first, ...rank(byTrait.flatMap((bets) => bets.slice(1)))].slice(0, MOST_BETS);
}

/** Every wish with a weight, and those of weight none that the records could tell. */
const wishesOf = ({ weights, wishes }: CropTrial): Wish[] =>
  (Object.keys(weights) as WeightKey[])
    .filter((key) => (weights[key] ?? 0) > 0)
    .map((key) => ({
      key,
      weight: weights[key] ?? 0,
      trait: wishes.find((one) => one.key === key)?.trait ?? null,
    }));

const namesOf = ({ varieties }: CropTrial, ids: readonly string[]): string[] =>
  ids.flatMap((id) => varieties.find((one) => one.id === id)?.name ?? []);

/** Less is to be gained than this, in what one fruit differs from the next, and no spot is worth naming. */
const LEAST_GAIN = 0.01;
/** So near to the most, of 1, a second one is named with the first. */
const NEARLY = 0.8;

function worthASpot({ next }: CropTrial): string[] {
  const grown = next.filter(({ grown: was }) => was);
  const most = grown[0]?.gain ?? 0;
  if (most < LEAST_GAIN) return [];
  return grown
    .filter(({ gain }) => gain >= NEARLY * most)
    .slice(0, 2)
    .map(({ variety }) => variety.name);
}

const kindOf = ({ seasons, crop }: CropTrial): string =>
  sharedKind(seasons.flatMap(({ plantings }) => plantings.filter(({ variety }) => variety?.crop.id === crop.id)));
