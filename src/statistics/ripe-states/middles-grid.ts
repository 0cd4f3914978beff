/** The places at which the middle of a variety is tried, on the scale of log time, and how likely its fruits are there. */
import type { Vector } from '../linear/cholesky.ts';
import { multiplyChances, type Sight, type Stages } from './state-chance.ts';

/** Places evenly spaced by `step`: `lowest`, `lowest + step`, … */
export interface MiddlesGrid {
  readonly lowest: number;
  readonly step: number;
  readonly count: number;
}

/** How likely the fruits of one variety are at the places from `first` on; at all others it is next to nothing. */
export interface VarietyCurve {
  readonly first: number;
  /** Relative to the best. */
  readonly likelihood: Vector;
  /** Log likelihood at the best place. */
  readonly log_best: number;
}

/** Where no middle of a variety has a place, in half-normal scales of the spreads beyond the first and the last fruit. */
const REACH = 2.5;
/** A third of the scatter of a variety's middle is fine enough: a sum over a normal curve is exact to 9 digits at one. */
const FINEST = 0.003;
const COARSEST = 0.018;
const PER_FRUIT = 0.06;
/** Places tried first, about evenly spaced. */
const TRIED = 20;
/** Log likelihood below the best that is next to nothing. */
const NEGLIGIBLE = 13;
/** Where a chance has no digits left; it keeps a curve finite at parameters that cannot be. */
const LEAST = 1e-140;
/** Times the least it is still a number. */
const SMALL = 1e-150;

/** `scale` is of the priors: what log times may differ by. Each variety has at least one fruit. */
export function middlesGrid(varieties: readonly (readonly Sight[])[], scale: number): MiddlesGrid {
  const logs = varieties.flat().map(({ grown }) => Math.log((grown.from + grown.to) / 2));
  const most = Math.max(...varieties.map((fruits) => fruits.length));
  const step = Math.min(COARSEST, Math.max(FINEST, PER_FRUIT / Math.sqrt(most)));
  const lowest = Math.min(...logs) - REACH * scale;
  return { lowest, step, count: Math.ceil((Math.max(...logs) + REACH * scale - lowest) / step) + 1 };
}

/** Log likelihoods of a variety's fruits at so many places, `by` apart. Logs are taken seldom: they are slow. */
export function logLikelihoods(
  fruits: readonly Sight[],
  { from, by, count }: { readonly from: number; readonly by: number; readonly count: number },
  stages: Stages,
  wrong: number,
): Vector {
  const logs = new Float64Array(count);
  const products = new Float64Array(count).fill(1);
  for (const fruit of fruits) {
    multiplyChances(products, fruit, { from, by, least: LEAST }, stages, wrong);
    for (let place = 0; place < count; place++) {
      const product = products[place] as number;
      if (product > SMALL) continue;
      logs[place] = (logs[place] as number) + Math.log(product);
      products[place] = 1;
    }
  }
  for (let place = 0; place < count; place++)
    logs[place] = (logs[place] as number) + Math.log(products[place] as number);
  return logs;
}

/** Tries some places, then all between those beyond which nothing is left: a curve has one top. */
export function varietyCurve(
  fruits: readonly Sight[],
  { lowest, step, count }: MiddlesGrid,
  stages: Stages,
  wrong: number,
): VarietyCurve {
  const stride = Math.ceil(count / TRIED);
  const tried = logLikelihoods(fruits, { from: lowest, by: stride * step, count: TRIED + 1 }, stages, wrong);
  const best = tried.reduce((most, one) => Math.max(most, one), Number.NEGATIVE_INFINITY);
  const top = tried.indexOf(best);
  let [low, high] = [top - 1, top + 1];
  while (low > 0 && (tried[low] as number) > best - NEGLIGIBLE) low--;
  while (high < TRIED && (tried[high] as number) > best - NEGLIGIBLE) high++;
  const first = Math.max(0, low) * stride;
  const last = Math.min(TRIED, high) * stride;
  const logs = logLikelihoods(
    fruits,
    { from: lowest + first * step, by: step, count: last - first + 1 },
    stages,
    wrong,
  );
  const log_best = logs.reduce((most, one) => Math.max(most, one), Number.NEGATIVE_INFINITY);
  for (let at = 0; at < logs.length; at++) logs[at] = Math.exp((logs[at] as number) - log_best);
  return { first, likelihood: logs, log_best };
}
