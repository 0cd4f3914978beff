/**
 * Does a response go with something that whole groups share, such as the rain before a picking day? The groups' values
 * change places within their stratum (season), the observations stay where they are. Shuffling single observations
 * would count each fruit as a repeat of the rain that all fruits of its day had together.
 *
 * Assumes that, were there no such effect, what the days of one season brought could have come on any of its days:
 * day effects alike in spread, not drifting (a response that only falls as autumn comes breaks this; take the drift
 * out first), and as many fruits picked whatever the covariate. Days may hold unequally many observations; where the
 * covariate itself decided how many, p is only nearly right. Residuals must be free of what differs between seasons.
 * The values of several windows move together, so that the largest of several statistics has a p-value which already
 * pays for the search: Westfall & Young 1993, Resampling-Based Multiple Testing, ch. 2 (from memory).
 */
import { drawOrder, everyOrder, ordersOf } from './arrangements.ts';

/** Fewer arrangements than this are all tried. */
const TRY_ALL_BELOW = 10_000;
/** Statistics this close, relative to the larger, differ by the order of a sum only. */
const ROUNDING = 1e-9;

export interface SharedDay {
  readonly id: string;
  readonly stratum: string;
  /** One value per window, equally many for every day. */
  readonly covariates: readonly number[];
}

export interface DayObservation {
  /** Id of its day. */
  readonly day: string;
  readonly residual: number;
}

/**
 * How strongly the residuals go with the covariates: larger is stronger. `windows` holds for each window the covariate
 * of each observation, in the residuals' order, which is not the order given; they hold until the next call. Must be
 * finite.
 */
export type Strength = (windows: readonly (readonly number[])[], residuals: readonly number[]) => number;

export interface Draws {
  /** Numbers from 0 to below 1, from a seeded stream. */
  readonly random: () => number;
  /** How many arrangements to draw when there are too many to try all. */
  readonly draws: number;
}

export interface PermutationTest {
  readonly observed: number;
  readonly method: 'all' | 'drawn';
  /** Arrangements tried, the observed one included when all are. */
  readonly arrangements: number;
  /** How many of them gave at least the observed strength. */
  readonly at_least: number;
  /** at_least / arrangements of all; (1 + at_least) / (1 + arrangements) when drawn (Phipson & Smyth 2010). */
  readonly p: number;
}

/** Nothing can change places: no stratum has two days whose covariates differ. */
export interface NothingToShuffle {
  readonly code: 'nothing-to-shuffle';
  readonly days: number;
}

/**
 * The test. Days without observations are left out, as are their covariates. The outcome is the same in any order of
 * days and observations and under any ids, drawn or not. Throws RangeError for an unknown or repeated day, unequally
 * many windows, a number that is not finite, or draws that are not a whole number above 0.
 */
export function shuffleDays(
  days: readonly SharedDay[],
  observations: readonly DayObservation[],
  strength: Strength,
  { random, draws }: Draws,
): PermutationTest | { readonly cannot: NothingToShuffle } {
  check(days, observations, draws);
  const filled = inOrder(days, observations);
  const strata = byStratum(filled);
  if (!strata.some(hasDifferences)) return { cannot: { code: 'nothing-to-shuffle', days: filled.length } };
  const residuals = filled.flatMap((day) => day.residuals);
  const fill = windowsOf(filled);
  const under = (arranged: readonly (readonly Covariates[])[]): number => {
    const value = strength(fill(arranged.flat()), residuals);
    if (!Number.isFinite(value)) throw new RangeError(`invalid strength: ${value}`);
    return value;
  };
  const observed = under(strata);
  const reached = (value: number): boolean =>
    value >= observed - ROUNDING * Math.max(Math.abs(value), Math.abs(observed));

  const all = strata.reduce((product, stratum) => product * ordersOf(stratum.length), 1);
  let atLeast = 0;
  if (all < TRY_ALL_BELOW) {
    for (const arranged of everyArrangement(strata)) atLeast += reached(under(arranged)) ? 1 : 0;
    return { observed, method: 'all', arrangements: all, at_least: atLeast, p: atLeast / all };
  }
  for (let draw = 0; draw < draws; draw++) {
    atLeast += reached(under(strata.map((stratum) => drawOrder(stratum, random)))) ? 1 : 0;
  }
  return { observed, method: 'drawn', arrangements: draws, at_least: atLeast, p: (1 + atLeast) / (1 + draws) };
}

type Covariates = readonly number[];

interface FilledDay {
  readonly stratum: string;
  readonly covariates: Covariates;
  readonly residuals: readonly number[];
}

/** Days that have observations, ordered by what they hold and not by their ids. */
function inOrder(days: readonly SharedDay[], observations: readonly DayObservation[]): FilledDay[] {
  const held = new Map<string, number[]>();
  for (const { day, residual } of observations) held.set(day, [...(held.get(day) ?? []), residual]);
  const filled = days.flatMap(({ id, stratum, covariates }) => {
    const residuals = held.get(id)?.sort((a, b) => a - b);
    return residuals ? [{ stratum, covariates, residuals }] : [];
  });
  return filled.sort(
    (a, b) =>
      (a.stratum < b.stratum ? -1 : a.stratum > b.stratum ? 1 : 0) ||
      compare(a.covariates, b.covariates) ||
      compare(a.residuals, b.residuals),
  );
}

function compare(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((one, index) => one !== b[index]);
  return at < 0 ? a.length - b.length : (a[at] ?? 0) - (b[at] ?? Number.NEGATIVE_INFINITY);
}

/** The covariates of each stratum's days, in the order of the days. */
function byStratum(days: readonly FilledDay[]): Covariates[][] {
  const strata = new Map<string, Covariates[]>();
  for (const { stratum, covariates } of days) strata.set(stratum, [...(strata.get(stratum) ?? []), covariates]);
  return [...strata.values()];
}

const hasDifferences = (stratum: readonly Covariates[]): boolean =>
  stratum.some((one) => compare(one, stratum[0] ?? []) !== 0);

/** Every combination of an order of each stratum. */
function* everyArrangement(strata: readonly (readonly Covariates[])[]): Generator<readonly (readonly Covariates[])[]> {
  const [first, ...others] = strata;
  if (first === undefined) return yield [];
  for (const order of everyOrder(first)) {
    for (const rest of everyArrangement(others)) yield [order, ...rest];
  }
}

/**
 * For each window the covariate of each observation, when the days have these covariates. The same lists are filled
 * anew for every arrangement: there are thousands.
 */
function windowsOf(days: readonly FilledDay[]): (covariates: readonly Covariates[]) => number[][] {
  const dayOf = days.flatMap(({ residuals }, day) => new Array<number>(residuals.length).fill(day));
  const windows = (days[0]?.covariates ?? []).map(() => new Array<number>(dayOf.length).fill(0));
  return (covariates) => {
    for (const [window, values] of windows.entries())
      for (let at = 0; at < dayOf.length; at++) values[at] = covariates[dayOf[at] as number]?.[window] ?? 0;
    return windows;
  };
}

function check(days: readonly SharedDay[], observations: readonly DayObservation[], draws: number): void {
  const ids = new Set(days.map((day) => day.id));
  if (ids.size < days.length) throw new RangeError(`invalid days: an id stands twice among ${days.length}`);
  for (const { day, residual } of observations) {
    if (!ids.has(day)) throw new RangeError(`invalid day: ${day} is not among the ${days.length}`);
    if (!Number.isFinite(residual)) throw new RangeError(`invalid residual: ${residual}`);
  }
  const windows = days[0]?.covariates.length ?? 0;
  for (const { id, covariates } of days) {
    const whole = covariates.length === windows && windows > 0 && covariates.every(Number.isFinite);
    if (!whole) throw new RangeError(`invalid covariates: ${covariates.join(' ')} of day ${id}`);
  }
  if (!(Number.isInteger(draws) && draws > 0)) throw new RangeError(`invalid draws: ${draws}`);
}
