/**
 * Randomisation tests of a mean that try every possibility: pairs whose differences may change sign, two groups whose
 * members may change sides. Fisher 1935, The Design of Experiments, sections 21 and 21.1; Pitman 1937. They assume
 * that without an effect each difference was as likely to have the other sign, or each member to be on the other side.
 */
import { everyChoice } from './arrangements.ts';

/** More possibilities than this are not tried. */
const MOST = 2 ** 20;
/** Sums this close, relative to the sum of the values' sizes, differ by rounding only. */
const ROUNDING = 1e-12;

export interface ExactTest {
  /** Mean difference; of two groups, the first mean minus the second. */
  readonly observed: number;
  readonly arrangements: number;
  /** Possibilities with a difference at least as large, and at least as far from 0 on either side. */
  readonly at_least: number;
  readonly as_far: number;
  /** at_least and as_far over the arrangements. */
  readonly p_one_sided: number;
  readonly p_two_sided: number;
}

export type ExactRefusal =
  | { readonly code: 'no-values' }
  | { readonly code: 'too-many-arrangements'; readonly arrangements: number; readonly most: number };

/** Every choice of signs of the paired differences. Throws RangeError for a difference that is not finite. */
export function signFlips(differences: readonly number[]): ExactTest | { readonly cannot: ExactRefusal } {
  finite(differences);
  const n = differences.length;
  const arrangements = 2 ** n;
  if (n === 0) return { cannot: { code: 'no-values' } };
  if (arrangements > MOST) return { cannot: { code: 'too-many-arrangements', arrangements, most: MOST } };
  const [first = 0, ...others] = differences.map(Math.abs);
  let sums = [first, -first];
  for (const size of others) sums = sums.flatMap((sum) => [sum + size, sum - size]);
  return { observed: meanOf(differences), ...counted(sums, n * meanOf(differences), differences) };
}

/** Every choice of which values form the first group. Throws RangeError for a value that is not finite. */
export function twoSamples(
  first: readonly number[],
  second: readonly number[],
): ExactTest | { readonly cannot: ExactRefusal } {
  const pooled = [...first, ...second];
  finite(pooled);
  if (first.length === 0 || second.length === 0) return { cannot: { code: 'no-values' } };
  const arrangements = choicesOf(pooled.length, first.length);
  if (arrangements > MOST) return { cannot: { code: 'too-many-arrangements', arrangements, most: MOST } };
  const mean = meanOf(pooled);
  const around = pooled.map((one) => one - mean);
  const sums: number[] = [];
  for (const chosen of everyChoice(pooled.length, first.length)) {
    sums.push(chosen.reduce((sum, one) => sum + (around[one] ?? 0), 0));
  }
  // About the common mean the groups' sums are each other's opposite, so the first orders as the difference does.
  return { observed: meanOf(first) - meanOf(second), ...counted(sums, sums[0] ?? 0, pooled) };
}

const meanOf = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;

function counted(sums: readonly number[], own: number, values: readonly number[]): Omit<ExactTest, 'observed'> {
  const slack = ROUNDING * values.reduce((sum, one) => sum + Math.abs(one), 0);
  const atLeast = sums.filter((sum) => sum >= own - slack).length;
  const asFar = sums.filter((sum) => Math.abs(sum) >= Math.abs(own) - slack).length;
  return {
    arrangements: sums.length,
    at_least: atLeast,
    as_far: asFar,
    p_one_sided: atLeast / sums.length,
    p_two_sided: asFar / sums.length,
  };
}

function choicesOf(n: number, size: number): number {
  let choices = 1;
  for (let k = 1; k <= size; k++) choices = (choices * (n - size + k)) / k;
  return Math.round(choices);
}

function finite(values: readonly number[]): void {
  for (const value of values) if (!Number.isFinite(value)) throw new RangeError(`invalid value: ${value}`);
}
