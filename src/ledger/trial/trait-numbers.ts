import type { Interval } from '../../figure.ts';
import { areJoined, components } from '../../statistics/connectivity.ts';
import type { LevelDraws } from '../../statistics/posterior/level-draws.ts';
import {
  bestShare,
  differences,
  type LevelInterval,
  levelIntervals,
} from '../../statistics/posterior/level-summary.ts';
import { LEVEL } from '../comparison.ts';
import { type PlainDifference, type PlainTwin, plainTwin } from './plain-twin.ts';
import { type Trait, type TraitId, traitOf, unscaled } from './trait.ts';
import { type FitSettings, fitTrait, median, type TraitFit } from './trait-fit.ts';
import type { TraitValue } from './trait-value.ts';

/** Fewer fruits (or mounds) of a variety than this get no estimate: decided by the makers. */
export const FEWEST = 3;
/** From as many varieties on, it is asked which are among the best three. */
export const MANY = 5;
export const BEST = 3;

/** An estimate and its range, back in the trait's unit; of a ratio's difference, times. */
export interface Spanned {
  readonly value: number;
  readonly interval: Interval;
}

/** What one trait tells of one variety: plain numbers, so that they can be kept. */
export interface VarietyNumbers {
  readonly variety: string;
  /** Fruits, or mounds where a mound gives one value. */
  readonly n: number;
  /** Mounds, one a spot and season. */
  readonly mounds: number;
  readonly seasons: readonly string[];
  /** Why it has no estimate; null when it has. */
  readonly without: 'few-values' | null;
  /** In an average season of those compared. */
  readonly level: Spanned | null;
  /** Less the yardstick, or as many times it. Null for itself, and where `apart` says why. */
  readonly difference: Spanned | null;
  readonly apart: 'yardstick' | 'yardstick-unmeasured' | 'never-joined' | 'few-values' | null;
  /** Chance, of 1, that it is better than the yardstick; by the trait's own sense of better. */
  readonly better: number | null;
  /** Chance, of 1, that it is among the best three; null with fewer than five to compare. */
  readonly best: number | null;
  /** The same difference by plain means over the seasons both stood in; null without one. */
  readonly plain: PlainDifference | null;
}

export interface TraitNumbers {
  readonly trait: TraitId;
  /** Why nothing is estimated; null when something is. */
  readonly cannot: 'one-variety' | 'few-values' | 'no-spread' | null;
  /** Varieties with a value, by id. */
  readonly varieties: readonly VarietyNumbers[];
  /** Each season against the average of them: the summer's share. Empty with one. */
  readonly seasons: readonly (Spanned & { readonly season: string; readonly varieties: number })[];
  /** Medians of the standard deviations, on the scale of the fit. */
  readonly spread: { readonly residual: number; readonly variety: number; readonly summer: number } | null;
  /** For every 100 of the mean, what mounds of one variety in one season differ by. */
  readonly cv_of_100: number | null;
  /** How many varieties are held against the yardstick. */
  readonly comparisons: number;
}

export interface TraitFound {
  readonly numbers: TraitNumbers;
  /** Null where nothing could be fitted. */
  readonly fit: TraitFit | null;
}

/** One trait of a crop, told of all its varieties; `yardstick` is one of them. */
export function traitNumbers(
  id: TraitId,
  all: readonly TraitValue[],
  varieties: readonly string[],
  yardstick: string,
  settings: FitSettings,
): TraitFound {
  const trait = traitOf(id);
  const values = all.filter((value) => value.trait === id);
  const grown = varieties.filter((variety) => values.some((value) => value.variety === variety));
  const enough = grown.filter((variety) => values.filter((value) => value.variety === variety).length >= FEWEST);
  const cannot = grown.length < 2 ? 'one-variety' : enough.length < 2 ? 'few-values' : null;
  const found = cannot === null ? fitTrait(trait, values, varieties, settings) : null;
  const fit = found && !('cannot' in found) ? found : null;
  const desk: Desk = {
    trait,
    values,
    fit,
    yardstick,
    enough,
    groups: groupsOf(values),
    plain: plainTwin(trait, values, yardstick),
  };
  const told = grown.map((variety) => varietyNumbers(desk, variety));
  return {
    fit,
    numbers: {
      trait: id,
      cannot: cannot ?? (fit ? null : 'no-spread'),
      varieties: withBest(desk, told),
      seasons: fit ? seasonsOf(desk, fit) : [],
      spread: fit
        ? { residual: median(fit.sd.residual), variety: median(fit.sd.variety), summer: median(fit.sd.variety_season) }
        : null,
      cv_of_100: desk.plain.cv_of_100,
      comparisons: told.filter(({ difference }) => difference !== null).length,
    },
  };
}

interface Desk {
  readonly trait: Trait;
  readonly values: readonly TraitValue[];
  readonly fit: TraitFit | null;
  readonly yardstick: string;
  readonly enough: readonly string[];
  /** Varieties that can be held against each other. */
  readonly groups: readonly (readonly string[])[];
  readonly plain: PlainTwin;
}

/** Varieties are joined by standing in one season. */
export const groupsOf = (values: readonly TraitValue[]): string[][] =>
  components(
    [...new Set(values.map(({ season }) => season))].map((season) =>
      values.filter((value) => value.season === season).map(({ variety }) => variety),
    ),
  );

function varietyNumbers(desk: Desk, variety: string): VarietyNumbers {
  const { trait, values, fit, yardstick, enough } = desk;
  const own = values.filter((value) => value.variety === variety);
  const told = fit !== null && enough.includes(variety);
  const apart = apartOf(desk, variety);
  const against = told && apart === null ? differenceOf(trait, fit, variety, yardstick) : null;
  return {
    variety,
    n: own.length,
    mounds: new Set(own.map(({ season, spot }) => `${season} ${spot}`)).size,
    seasons: [...new Set(own.map(({ season }) => season))].sort(),
    without: enough.includes(variety) ? null : 'few-values',
    level: told ? back(trait, levelIntervals([drawsOf(fit.level, variety)], LEVEL)[0]) : null,
    difference: against?.difference ?? null,
    apart,
    better: against?.better ?? null,
    best: null,
    plain: desk.plain.differences.find((one) => one.variety === variety) ?? null,
  };
}

function apartOf({ values, yardstick, enough, groups }: Desk, variety: string): VarietyNumbers['apart'] {
  if (variety === yardstick) return 'yardstick';
  if (!values.some((value) => value.variety === yardstick) || !enough.includes(yardstick))
    return 'yardstick-unmeasured';
  if (!areJoined(groups, variety, yardstick)) return 'never-joined';
  return enough.includes(variety) ? null : 'few-values';
}

function differenceOf(
  trait: Trait,
  { worth }: TraitFit,
  variety: string,
  yardstick: string,
): { difference: Spanned; better: number } {
  const [found] = differences([drawsOf(worth, variety), drawsOf(worth, yardstick)], yardstick, LEVEL);
  if (!found) throw new RangeError(`invalid variety: ${variety}`);
  const above = found.share_above_zero;
  return { difference: back(trait, found), better: trait.better === 'more' ? above : 1 - above };
}

function withBest({ trait, fit, yardstick, groups }: Desk, told: readonly VarietyNumbers[]): VarietyNumbers[] {
  const able = told.filter(
    ({ variety, without }) => without === null && (variety === yardstick || areJoined(groups, variety, yardstick)),
  );
  if (!fit || able.length < MANY) return [...told];
  const sense = trait.better === 'more' ? 1 : -1;
  const shares = bestShare(
    able.map(({ variety }) => ({ level: variety, draws: drawsOf(fit.worth, variety).draws.map((one) => sense * one) })),
    BEST,
  );
  return told.map((one) => ({ ...one, best: shares.find(({ level }) => level === one.variety)?.share ?? null }));
}

function seasonsOf({ trait, values }: Desk, { seasons }: TraitFit): TraitNumbers['seasons'] {
  return seasons.map((one) => ({
    season: one.level,
    ...back(trait, levelIntervals([one], LEVEL)[0]),
    varieties: new Set(values.filter(({ season }) => season === one.level).map(({ variety }) => variety)).size,
  }));
}

export const drawsOf = (levels: readonly LevelDraws[], level: string): LevelDraws => {
  const found = levels.find((one) => one.level === level);
  if (!found) throw new RangeError(`invalid level: ${level}`);
  return found;
};

/** From the scale of the fit to the trait's unit, or to times. */
export function back(trait: Trait, told: LevelInterval | undefined): Spanned {
  if (!told) throw new RangeError('invalid levels: there are none');
  const { low, high, level } = told.interval;
  return {
    value: unscaled(trait, told.median),
    interval: { low: unscaled(trait, low), high: unscaled(trait, high), level },
  };
}
