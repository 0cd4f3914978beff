import type { Facts } from '../../src/book/chapter.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { CropTrial } from '../../src/ledger/trial/crop-trial.ts';
import { MANY } from '../../src/ledger/trial/trait-numbers.ts';
import { WEIGHT_TRAITS } from '../../src/ledger/trial/weight.ts';
import { WEIGHT_KEYS } from '../../src/records/weights.ts';
import { type Bet, betsOf } from './bet.ts';
import { trialPath } from './paths.ts';

/** Bets printed of one crop, each of another trait. */
const MOST_BETS = 2;

/** Which variety, of one crop, as far as the records go. */
export interface Answer {
  readonly crop: string;
  readonly names: { readonly one: string; readonly many: string };
  /**
   * list: five and more to choose from, and a short list of them. bets: a few, told apart by a bet or two. same: compared,
   * and not told apart. alone: one variety harvested, `only`. few: too little of two of them. none: nothing harvested.
   */
  readonly state: 'list' | 'bets' | 'same' | 'alone' | 'few' | 'none';
  /** In the alphabet's order. */
  readonly listed: readonly string[];
  /** Of how many. */
  readonly choice: number;
  readonly only: string | null;
  readonly yardstick: string | null;
  /** Others could be compared, but too little is told of the yardstick. */
  readonly yardstick_untold: boolean;
  readonly bets: readonly Bet[];
  /** Those the finding does not say already. */
  readonly more_bets: readonly Bet[];
  readonly seasons: number;
  readonly this_summer: string | null;
  /** The report of all its figures; null in a home book, and where nothing is compared. */
  readonly path: string | null;
}

/** For every crop, those with most to say first; of equals in the order of their ids. */
export const answersOf = ({ garden, ledger }: Facts): Answer[] =>
  ledger.trials
    .map((trial) => answerOf(garden, trial))
    .sort((a, b) => STATES.indexOf(a.state) - STATES.indexOf(b.state));

const STATES: readonly Answer['state'][] = ['list', 'bets', 'same', 'few', 'alone', 'none'];

/** For one crop. */
export function answerOf(garden: Facts['garden'], trial: CropTrial): Answer {
  const harvested = new Set(trial.values.map(({ variety }) => variety));
  const known = trial.list.filter(({ entry }) => entry.standing !== 'few');
  const listed = trial.list.filter(({ entry }) => entry.standing === 'listed').map(({ variety }) => variety.name);
  const bets = oneATrait(trial);
  const state =
    harvested.size === 0
      ? 'none'
      : harvested.size === 1
        ? 'alone'
        : known.length >= MANY
          ? 'list'
          : bets.length > 0
            ? 'bets'
            : known.length > 1
              ? 'same'
              : 'few';
  return {
    crop: trial.crop.id,
    names: cropNames(trial.crop, garden.about.locale),
    state,
    listed: state === 'list' ? listed : [],
    choice: known.length,
    only: trial.varieties.find(({ id }) => harvested.has(id))?.name ?? null,
    yardstick: trial.yardstick?.variety.name ?? null,
    yardstick_untold: state === 'few' && isYardstickUntold(trial),
    bets,
    more_bets: state === 'bets' ? bets.slice(1) : bets,
    seasons: trial.seasons.length,
    this_summer: trial.seasons.length === 1 ? (trial.seasons[0]?.label ?? null) : null,
    path: garden.about.edition === 'community' && isCompared(trial) ? trialPath(trial.crop) : null,
  };
}

/** Two varieties of it at least have an estimate. */
export const isCompared = ({ traits }: CropTrial): boolean => traits.some(({ numbers }) => numbers.cannot === null);

/** In a wished trait that others are estimated by. */
function isYardstickUntold({ weights, traits }: CropTrial): boolean {
  const wished: readonly string[] = WEIGHT_KEYS.filter((key) => (weights[key] ?? 0) > 0).flatMap(
    (key) => WEIGHT_TRAITS[key],
  );
  return traits.some(
    ({ trait, numbers, rows }) =>
      wished.includes(trait.id) &&
      numbers.cannot === null &&
      rows.every(({ numbers: own }) => own.apart !== 'yardstick' || own.without !== null),
  );
}

/** The boldest bet of each wished trait, in the order of the wishes. */
function oneATrait(trial: CropTrial): Bet[] {
  const wished = trial.wishes.filter(({ weight }) => weight > 0).sort((a, b) => b.weight - a.weight);
  return [...new Set(wished.map(({ trait }) => trait))]
    .flatMap((id) => {
      const found = trial.traits.find(({ trait }) => trait.id === id);
      return found ? betsOf(trial, found).slice(0, 1) : [];
    })
    .slice(0, MOST_BETS);
}
