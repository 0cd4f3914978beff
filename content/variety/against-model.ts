import type { Figure, FigureUnit } from '../../src/figure.ts';
import type { CropTrial, TrialTrait } from '../../src/ledger/trial/crop-trial.ts';
import { type PlainInPrint, plainInPrint } from './plain-in-print.ts';

/** One trait of all varieties, held against the yardstick: by the model, and by plain means beside it. */
export interface AgainstModel {
  readonly trait: string;
  readonly unit: FigureUnit;
  readonly of: 'fruit' | 'mound';
  /** Id of its chart; null for ratios, whose axis would be another. */
  readonly chart: string | null;
  readonly comparisons: number;
  /** Its plain means are printed: of the two wishes that weigh most. */
  readonly plainly: boolean;
  /** To be spanned by a row without a difference. */
  readonly rest_columns: number;
  readonly rows: readonly AgainstRow[];
  /** Of the plain means: a standard error that reaches another summer, where a variety shared two seasons and more. */
  readonly over_seasons: boolean;
}

interface AgainstRow {
  readonly name: string;
  readonly difference: Figure;
  readonly better: Figure;
  /** Null where the two never shared a season. */
  readonly plain: PlainInPrint | null;
  readonly shared: number;
}

export const againstChartId = ({ crop }: CropTrial, { trait }: TrialTrait): string =>
  `variety-${crop.id.toLowerCase()}-${trait.id.replaceAll('_', '-')}-against`;

/** Varieties in the alphabet's order, the yardstick left out. Null where none can be held against it, or neither drawn nor tabled. */
export function againstModel(trial: CropTrial, one: TrialTrait, plainly: boolean): AgainstModel | null {
  const { trait, numbers, rows } = one;
  const others = rows.filter(({ numbers: own }) => own.apart !== 'yardstick');
  if (others.every(({ numbers: own }) => own.difference === null && own.plain === null)) return null;
  const is_ratio = trait.scale === 'ratio';
  if (is_ratio && !plainly) return null;
  const over_seasons = others.some(({ numbers: { plain } }) => (plain?.over_seasons_se ?? null) !== null);
  return {
    trait: trait.id,
    unit: is_ratio ? 'times' : trait.unit,
    of: trait.of,
    chart: is_ratio ? null : againstChartId(trial, one),
    comparisons: numbers.comparisons,
    plainly,
    rest_columns: 3 + Number(over_seasons) + Number(trial.seasons.length > 1),
    rows: others.map(({ variety, difference, better, numbers: { plain } }) => ({
      name: variety.name,
      difference,
      better,
      plain: plain && plainInPrint(trait, plain),
      shared: plain?.seasons.length ?? 0,
    })),
    over_seasons,
  };
}
