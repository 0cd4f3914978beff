/**
 * The comparison of treatments in one trial: value = treatment + block + error, all effects fixed, one residual
 * standard deviation for all treatments. Least squares means as in Searle, Speed & Milliken 1980, American
 * Statistician 34:216-221: the treatment's expected value averaged over the blocks, each weighing the same.
 */
import { analysisOfVariance, type VarianceRow } from './analysis-of-variance.ts';
import { arrange, type BlockDesign, isComplete, linkedGroups, type Observation } from './block-design.ts';
import { additiveColumns } from './factor-coding.ts';
import { type LeastSquares, leastSquares, sumOfSquares } from './least-squares.ts';

/** Values this close to the fit, relative to the largest of them, differ by rounding only. */
const ROUNDING = 64 * Number.EPSILON;

export interface Estimate {
  /** In the values' unit, as is its standard error. */
  readonly estimate: number;
  readonly se: number;
}

export interface AdditiveFit {
  /** Sorted by code unit. */
  readonly treatments: readonly string[];
  /** Sorted by code unit; empty when the model has none. */
  readonly blocks: readonly string[];
  readonly uses_blocks: boolean;
  /** Every treatment equally often in every block: means are then plain averages with se = residual_sd / √n. */
  readonly complete: boolean;
  /** Pooled over all treatments, in the values' unit, on `df` degrees of freedom. */
  readonly residual_sd: number;
  readonly df: number;
  /** Adjusted to equally weighted blocks when the model has blocks. Throws RangeError for an unknown name. */
  readonly mean: (treatment: string) => Estimate & { readonly n: number };
  /** a minus b. Throws RangeError for an unknown name, or one treatment twice. */
  readonly difference: (a: string, b: string) => Estimate;
  readonly analysis_of_variance: readonly VarianceRow[];
}

/** Why there is no fit. */
export type Refusal =
  | { readonly code: 'no-values' }
  /** Treatments of different groups never meet in a block, not even through others. */
  | { readonly code: 'not-linked'; readonly groups: readonly (readonly string[])[] }
  /** As many unknowns as values: nothing is left to tell how far repeats differ. */
  | { readonly code: 'no-residual-df'; readonly values: number; readonly unknowns: number }
  /** All repeats agree exactly: a width of zero would claim a certainty that few rounded values cannot give. */
  | { readonly code: 'no-spread'; readonly df: number };

/**
 * Fits the model, or says why not. Without a block for every observation, or with fewer than two blocks or two
 * treatments, the model is one-way (treatment only). Throws RangeError for a value that is not finite.
 */
export function fitAdditive(observations: readonly Observation[]): AdditiveFit | { readonly cannot: Refusal } {
  const design = arrange(observations);
  const values = design.cells.map((cell) => cell.value);
  if (values.length === 0) return { cannot: { code: 'no-values' } };
  const usesBlocks = design.blocks.length > 0;
  const groups = usesBlocks ? linkedGroups(design) : [];
  if (groups.length > 1) return { cannot: { code: 'not-linked', groups } };
  const columns = additiveColumns(design);
  const df = values.length - columns.length;
  if (df <= 0) return { cannot: { code: 'no-residual-df', values: values.length, unknowns: columns.length } };

  // Centring first keeps the digits in which values differ when they share many leading ones.
  const centre = values.reduce((sum, value) => sum + value, 0) / values.length;
  const centred = values.map((value) => value - centre);
  const solved = leastSquares(columns, centred);
  const residualSd = Math.sqrt(solved.residual_ss / df);
  const largest = Math.max(...values.map(Math.abs));
  if (residualSd <= ROUNDING * largest) return { cannot: { code: 'no-spread', df } };
  return {
    treatments: design.treatments,
    blocks: design.blocks,
    uses_blocks: usesBlocks,
    complete: isComplete(design),
    residual_sd: residualSd,
    df,
    ...estimators(design, solved, centre, residualSd),
    analysis_of_variance: analysisOfVariance(design, centred, { ss: solved.residual_ss, df }),
  };
}

/** Every estimate is a weighted sum of independent values, so its variance is s² times the sum of squared weights. */
function estimators(
  design: BlockDesign,
  solved: LeastSquares,
  centre: number,
  residualSd: number,
): Pick<AdditiveFit, 'mean' | 'difference'> {
  const find = (treatment: string) => {
    const place = design.treatments.indexOf(treatment);
    if (place < 0) throw new RangeError(`invalid treatment: ${treatment} is not in this fit`);
    return { place, effect: solved.coefficients[place] ?? 0, weights: solved.weights[place] ?? [] };
  };
  return {
    mean(treatment) {
      const { place, effect, weights } = find(treatment);
      const n = design.cells.filter((cell) => cell.treatment === place).length;
      return { estimate: centre + effect, se: residualSd * Math.sqrt(sumOfSquares(weights)), n };
    },
    difference(a, b) {
      if (a === b) throw new RangeError(`invalid difference: ${a} with itself`);
      const [one, other] = [find(a), find(b)];
      const weights = one.weights.map((weight, index) => weight - (other.weights[index] ?? 0));
      return { estimate: one.effect - other.effect, se: residualSd * Math.sqrt(sumOfSquares(weights)) };
    },
  };
}
