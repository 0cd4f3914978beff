import type { Vector } from '../../statistics/linear/cholesky.ts';
import { atColumns, effectsOf, type LevelDraws, withFactor } from '../../statistics/posterior/level-draws.ts';
import { type Posterior, posterior } from '../../statistics/posterior/posterior.ts';
import type { PosteriorData, PosteriorRefusal } from '../../statistics/posterior/posterior-data.ts';
import { scaled, TRAITS, type Trait } from './trait.ts';
import type { TraitValue } from './trait-value.ts';

/** Scales of the half-normal priors on how far levels spread, over what one fruit (or mound) differs from the next. */
export const PRIORS = { variety: 1.5, variety_season: 1, mound: 0.5, day: 0.5 } as const;

export interface FitSettings {
  readonly draws: number;
  /** Multiplies every scale of PRIORS. */
  readonly pull: number;
}

/** What one trait tells of the varieties, as draws in the trait's own scale: of a ratio, in logarithms. */
export interface TraitFit {
  /** Effects that go on to a next summer, from however many. */
  readonly lasting: readonly LevelDraws[];
  /** The same; of a single summer, what each was worth in that one. */
  readonly worth: readonly LevelDraws[];
  /** Worth with the average of the seasons added: what a value of it lies around here. */
  readonly level: readonly LevelDraws[];
  /** Each season less the average of them all; empty with one. */
  readonly seasons: readonly LevelDraws[];
  /** Of a variety in a season it was grown, what that summer added. */
  readonly summers: readonly LevelDraws[];
  readonly sd: TraitSpread;
}

/** Standard deviations; a draw each. */
export interface TraitSpread {
  /** Between fruits of one mound, or between mounds where a mound gives one value. */
  readonly residual: Vector;
  readonly variety: Vector;
  readonly variety_season: Vector;
  /** Null where a mound gives one value. */
  readonly mound: Vector | null;
  readonly day: Vector | null;
}

/** Seeds differ by trait, so that draws of two traits are independent. */
const FIRST_SEED = 4001;

/**
 * Season and block fixed; variety, variety in its season, mound and picking day random, by `statistics/posterior`. Blocks
 * give way where they leave nothing to tell the scatter from. Varieties without a value are told from the spread alone.
 */
export function fitTrait(
  trait: Trait,
  values: readonly TraitValue[],
  varieties: readonly string[],
  { draws, pull }: FitSettings,
): TraitFit | { readonly cannot: PosteriorRefusal } {
  const seed = FIRST_SEED + TRAITS.indexOf(trait);
  const by = (cellOf: (value: TraitValue) => string) =>
    posterior(dataOf(trait, values, varieties, pull, cellOf), { seed, draws });
  const blocked = by(blockCell);
  const cellOf = 'cannot' in blocked ? seasonCell : blockCell;
  const found = 'cannot' in blocked ? by(seasonCell) : blocked;
  return 'cannot' in found ? found : told(found, values, cellOf);
}

const seasonCell = ({ season }: TraitValue): string => season;
const blockCell = ({ season, block }: TraitValue): string => `${season} ${block ?? ''}`;
export const summerOf = (variety: string, season: string): string => `${variety} ${season}`;

function dataOf(
  trait: Trait,
  values: readonly TraitValue[],
  varieties: readonly string[],
  pull: number,
  cellOf: (value: TraitValue) => string,
): PosteriorData {
  const factor = (name: keyof typeof PRIORS, level: (value: TraitValue) => string, also: readonly string[] = []) => ({
    name,
    level: values.map(level),
    scale: pull * PRIORS[name],
    also,
  });
  return {
    y: values.map(({ value }) => scaled(trait, value)),
    fixed: [...new Set(values.map(cellOf))].sort().map((cell) => ({
      name: cell,
      values: values.map((value) => (cellOf(value) === cell ? 1 : 0)),
    })),
    random: [
      factor('variety', ({ variety }) => variety, varieties),
      factor('variety_season', ({ variety, season }) => summerOf(variety, season)),
      ...(trait.of === 'fruit' ? [factor('mound', ({ season, spot }) => `${season} ${spot}`)] : []),
      ...(trait.by_day ? [factor('day', ({ day, key }) => day ?? `some day, ${key}`)] : []),
    ],
  };
}

function told(found: Posterior, values: readonly TraitValue[], cellOf: (value: TraitValue) => string): TraitFit {
  const seasons = [...new Set(values.map(seasonCell))].sort();
  const cellsOf = (season: string): string[] => [
    ...new Set(values.filter((value) => value.season === season).map(cellOf)),
  ];
  // Each season weighs the same, and each block within it.
  const columns = seasons.map((season) => {
    const cells = cellsOf(season);
    return Object.fromEntries(cells.map((cell) => [cell, 1 / cells.length]));
  });
  const average = Object.fromEntries(
    columns.flatMap((one) => Object.entries(one).map(([cell, weight]) => [cell, weight / seasons.length])),
  );
  const effects = effectsOf(found, 'variety');
  const [only] = seasons;
  const grown = new Set(values.map(({ variety }) => variety));
  const worth =
    seasons.length === 1
      ? effects.map((one) =>
          grown.has(one.level)
            ? (withFactor([one], found, 'variety_season', (variety) => summerOf(variety, only ?? ''))[0] ?? one)
            : one,
        )
      : effects;
  const zero: LevelDraws = { level: '', draws: new Float64Array(found.draws) };
  const mean = atColumns([zero], found, average)[0]?.draws ?? zero.draws;
  const sdOf = (name: string): Vector | null => found.factors.find((one) => one.name === name)?.sd ?? null;
  return {
    lasting: effects,
    worth,
    level: atColumns(worth, found, average),
    seasons:
      seasons.length === 1
        ? []
        : seasons.map((season, at) => ({
            level: season,
            draws: (atColumns([zero], found, columns[at] ?? {})[0]?.draws ?? zero.draws).map(
              (value, draw) => value - (mean[draw] ?? 0),
            ),
          })),
    summers: effectsOf(found, 'variety_season'),
    sd: {
      residual: found.residual_sd,
      variety: sdOf('variety') ?? zero.draws,
      variety_season: sdOf('variety_season') ?? zero.draws,
      mound: sdOf('mound'),
      day: sdOf('day'),
    },
  };
}

/** The upper of the two middle draws, where they are even in number. */
export const median = (draws: Vector): number => draws.toSorted()[Math.floor(draws.length / 2)] as number;
