/**
 * Log odds as a sum of columns, each coefficient drawn from a normal curve around 0 with a stated spread: a ridge. What
 * is then believed of a sum of coefficients leans to the side the hits point to, so the normal curve at the peak is
 * carried one order further (mean, variance, third cumulant), as in `preference/lean.ts`: Tierney & Kadane 1986,
 * Journal of the American Statistical Association 81:82-86; Shun & McCullagh 1995, Journal of the Royal Statistical
 * Society B 57:749-760 (both from memory). With d = Σc, h the rows' covariances and T, F the third and fourth
 * derivatives by row:
 *   mean beyond the peak   ½ Σ Tᵢ dᵢ hᵢᵢ
 *   variance beyond cᵗΣc   ½ Σ Fᵢ dᵢ² hᵢᵢ + ½ Σ Tᵢ dᵢ² hᵢⱼ Tⱼ hⱼⱼ + ½ Σ Tᵢ dᵢ hᵢⱼ² dⱼ Tⱼ
 *   third cumulant         Σ Tᵢ dᵢ³
 */
import { dot, type Rows, solve, solveLower, triangleOf, type Vector } from '../linear/cholesky.ts';
import { type Design, designOf, type Likelihood, type LogisticRow, likelihoodAt } from './logistic.ts';

const MOST_STEPS = 200;
/** Where a step gains less than this in log density, what is left is far below what is printed. */
const LAST_GAIN = 1e-14;
/** Of the normal curve's: far from normal, the next order could take away more than there is. */
const LEAST_VARIANCE = 0.25;

/** What is believed of a sum of coefficients. */
export interface Leaning {
  readonly mean: number;
  readonly variance: number;
  readonly third_cumulant: number;
}

export interface RidgePosterior {
  readonly peak: readonly number[];
  /** Of the sum of the coefficients times these weights, one for each column. */
  readonly of: (weights: readonly number[]) => Leaning;
}

/**
 * `spreads`: the prior's standard deviation of each column's coefficient, above 0. Throws RangeError as `designOf`, and
 * for other spreads.
 */
export function ridgePosterior(rows: readonly LogisticRow[], spreads: readonly number[]): RidgePosterior {
  const design = designOf(rows);
  const possible = spreads.length === design.width && spreads.every((one) => one > 0 && Number.isFinite(one));
  if (!possible) throw new RangeError(`invalid spreads: ${spreads.join(' ')} for ${design.width} columns`);
  const { coefficients, likelihood, triangle } = peakOf(design, spreads);
  const curves = curvesOf(design, likelihood, triangle);
  return { peak: [...coefficients], of: (weights) => leaningOf(weights, design, coefficients, triangle, curves) };
}

interface Point {
  readonly coefficients: Vector;
  readonly likelihood: Likelihood;
  readonly triangle: Rows;
  readonly log: number;
}

function pointAt(design: Design, spreads: readonly number[], coefficients: Vector): Point {
  const likelihood = likelihoodAt(design, coefficients);
  const precision = likelihood.information.map((row, place) => {
    const own = Float64Array.from(row);
    own[place] = (own[place] as number) + (spreads[place] as number) ** -2;
    return own;
  });
  const triangle = triangleOf(precision);
  if (triangle === null) throw new RangeError('invalid spreads: too wide for the posterior to have a peak');
  const prior = coefficients.reduce((sum, one, place) => sum + (one / (spreads[place] as number)) ** 2, 0);
  return { coefficients, likelihood, triangle, log: likelihood.log - prior / 2 };
}

/** By Newton's method with halved steps; the log density has a single peak. */
function peakOf(design: Design, spreads: readonly number[]): Point {
  let point = pointAt(design, spreads, new Float64Array(design.width));
  for (let step = 0; step < MOST_STEPS; step++) {
    const slope = point.coefficients.map((one, place) => -one / (spreads[place] as number) ** 2);
    for (const [row, x] of design.columns.entries()) {
      const left =
        (design.hits[row] as number) - (design.units[row] as number) * (point.likelihood.chances[row] as number);
      for (let i = 0; i < slope.length; i++) slope[i] = (slope[i] as number) + left * (x[i] as number);
    }
    const move = solve(point.triangle, slope);
    const gain = dot(slope, move);
    let next: Point | null = null;
    for (let part = 1; part > Number.EPSILON && next === null; part /= 2) {
      const tried = pointAt(
        design,
        spreads,
        point.coefficients.map((one, place) => one + part * (move[place] as number)),
      );
      if (tried.log >= point.log) next = tried;
    }
    if (next === null) break;
    point = next;
    if (gain < LAST_GAIN) break;
  }
  return point;
}

/** Third and fourth derivatives by row, and the rows' covariances. */
interface Curves {
  readonly third: Vector;
  readonly fourth: Vector;
  readonly covariances: Rows;
  /** Σ hᵢⱼ Tⱼ hⱼⱼ. */
  readonly shifts: Vector;
}

function curvesOf({ columns }: Design, { chances, weights }: Likelihood, triangle: Rows): Curves {
  const halves = columns.map((x) => solveLower(triangle, x));
  const covariances = halves.map((one) => Float64Array.from(halves, (other) => dot(one, other)));
  const third = weights.map((weight, row) => -weight * (1 - 2 * (chances[row] as number)));
  const fourth = weights.map((weight, row) => {
    const chance = chances[row] as number;
    return -weight * (1 - 6 * chance * (1 - chance));
  });
  const own = third.map((one, row) => one * ((covariances[row] as Vector)[row] as number));
  return { third, fourth, covariances, shifts: Float64Array.from(covariances, (row) => dot(row, own)) };
}

function leaningOf(
  weights: readonly number[],
  { columns, width }: Design,
  coefficients: Vector,
  triangle: Rows,
  { third, fourth, covariances, shifts }: Curves,
): Leaning {
  if (weights.length !== width || !weights.every(Number.isFinite)) throw new RangeError(`invalid weights: ${weights}`);
  const direction = Float64Array.from(weights);
  const covariance = solve(triangle, direction);
  const along = Float64Array.from(columns, (x) => dot(x, covariance));
  const normal = dot(direction, covariance);
  let [mean, variance, cubed] = [dot(direction, coefficients), normal, 0];
  const bent = along.map((d, row) => d * (third[row] as number));
  for (const [row, d] of along.entries()) {
    const covariancesOf = covariances[row] as Vector;
    const own = covariancesOf[row] as number;
    const t = third[row] as number;
    mean += (t * d * own) / 2;
    variance += ((fourth[row] as number) * d * d * own + t * d * d * (shifts[row] as number)) / 2;
    let both = 0;
    for (let other = 0; other < bent.length; other++)
      both += (covariancesOf[other] as number) ** 2 * (bent[other] as number);
    variance += ((bent[row] as number) * both) / 2;
    cubed += t * d ** 3;
  }
  return { mean, variance: Math.max(variance, LEAST_VARIANCE * normal), third_cumulant: cubed };
}
