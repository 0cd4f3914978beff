/**
 * What one more look is worth before it is taken: by how much the best few are expected to be better for it, when today's
 * means will move along their slopes by one standard normal step: E[sum of the highest of mⱼ + sⱼZ] less the sum of the
 * highest mⱼ. Between the points where two lines cross the same ones are highest, and the normal integral of a line is
 * known, so the sum is exact. With one place this is the knowledge gradient (Frazier, Powell & Dayanik 2009, INFORMS
 * Journal on Computing 21:599-613; from memory).
 */
import { normalCdf, normalDensity } from './normal.ts';

export interface Line {
  /** Today's mean, in any unit. */
  readonly mean: number;
  /** How far it moves for one standard normal step, in the same unit. */
  readonly slope: number;
}

/**
 * In the means' unit, never below 0 but for rounding. Throws RangeError for a line that is not finite, or unless places
 * is a whole number from 1 to the number of lines.
 */
export function expectedGain(lines: readonly Line[], places = 1): number {
  if (!(Number.isInteger(places) && places >= 1 && places <= lines.length))
    throw new RangeError(`invalid places: ${places} of ${lines.length}`);
  for (const { mean, slope } of lines) {
    if (!Number.isFinite(mean + slope)) throw new RangeError(`invalid line: ${mean} + ${slope} z`);
  }
  const ends = [Number.NEGATIVE_INFINITY, ...crossings(lines), Number.POSITIVE_INFINITY];
  const then = ends
    .slice(1)
    .reduce(
      (sum, to, at) => sum + over(highest(lines, places, between(ends[at] as number, to)), ends[at] as number, to),
      0,
    );
  return then - highest(lines, places, 0).reduce((sum, { mean }) => sum + mean, 0);
}

function crossings(lines: readonly Line[]): number[] {
  const points = lines.flatMap((one, at) =>
    lines
      .slice(at + 1)
      .flatMap((other) => (one.slope === other.slope ? [] : [(other.mean - one.mean) / (one.slope - other.slope)])),
  );
  return [...new Set(points)].sort((a, b) => a - b);
}

const highest = (lines: readonly Line[], places: number, z: number): Line[] =>
  [...lines].sort((a, b) => b.mean + b.slope * z - (a.mean + a.slope * z)).slice(0, places);

function between(from: number, to: number): number {
  if (from === Number.NEGATIVE_INFINITY) return to === Number.POSITIVE_INFINITY ? 0 : to - 1;
  return to === Number.POSITIVE_INFINITY ? from + 1 : (from + to) / 2;
}

/** ∫ Σ (m + s z) φ(z) dz. */
function over(lines: readonly Line[], from: number, to: number): number {
  const chance = cdf(to) - cdf(from);
  const shift = normalDensity(from) - normalDensity(to);
  return lines.reduce((sum, { mean, slope }) => sum + mean * chance + slope * shift, 0);
}

const cdf = (z: number): number =>
  z === Number.NEGATIVE_INFINITY ? 0 : z === Number.POSITIVE_INFINITY ? 1 : normalCdf(z);
