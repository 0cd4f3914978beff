import type { Figure, FigureUnit } from '../../src/figure.ts';
import type { CropTrial, TrialTrait } from '../../src/ledger/trial/crop-trial.ts';
import type { PlainDifference } from '../../src/ledger/trial/plain-twin.ts';

/** One trait of all varieties, held against the yardstick: by the model, and by plain means beside it. */
export interface AgainstModel {
  readonly trait: string;
  readonly unit: FigureUnit;
  readonly of: 'fruit' | 'mound';
  /** Id of its chart; null for ratios, whose axis would be another. */
  readonly chart: string | null;
  readonly comparisons: number;
  readonly rows: readonly AgainstRow[];
  /** Of the plain means: a standard error that reaches another summer, where a variety shared two seasons and more. */
  readonly over_seasons: boolean;
}

interface AgainstRow {
  readonly name: string;
  readonly difference: Figure;
  readonly better: Figure;
  /** In the trait's unit, or times; null where the two never shared a season. */
  readonly plain: PlainDifference | null;
  readonly shared: number;
}

export const againstChartId = ({ crop }: CropTrial, { trait }: TrialTrait): string =>
  `variety-${crop.id.toLowerCase()}-${trait.id.replaceAll('_', '-')}-against`;

/** Varieties in the alphabet's order, the yardstick left out. */
export function againstModel(trial: CropTrial, one: TrialTrait): AgainstModel {
  const { trait, numbers, rows } = one;
  const others = rows.filter(({ numbers: own }) => own.apart !== 'yardstick');
  return {
    trait: trait.id,
    unit: trait.scale === 'ratio' ? 'times' : trait.unit,
    of: trait.of,
    chart: trait.scale === 'ratio' ? null : againstChartId(trial, one),
    comparisons: numbers.comparisons,
    rows: others.map(({ variety, difference, better, numbers: { plain } }) => ({
      name: variety.name,
      difference,
      better,
      plain: plain && trait.scale === 'ratio' ? asTimes(plain) : plain,
      shared: plain?.seasons.length ?? 0,
    })),
    over_seasons: others.some(({ numbers: { plain } }) => (plain?.over_seasons_se ?? null) !== null),
  };
}

/** Standard errors of logarithms, as times. */
const asTimes = (plain: PlainDifference): PlainDifference => ({
  ...plain,
  sed: plain.sed && Math.exp(plain.sed),
  over_seasons_se: plain.over_seasons_se && Math.exp(plain.over_seasons_se),
});
