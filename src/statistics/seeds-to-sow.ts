/** How many seeds to sow for a number of plants, when not every seed comes up. */

/** Where no count up to this one is enough, more seed is no answer. */
const MOST_SEEDS = 1000;
/** A chance reached but for a rounding of the sums is reached. */
const ROUNDING = 1e-12;

/** Some seeds laid out and counted. */
export interface SproutTest {
  readonly came_up: number;
  readonly sown: number;
}

/**
 * The fewest seeds of which at least `wanted` come up with at least the given chance, when each comes up by itself with
 * chance `rate`: the smallest n with P(Binomial(n, rate) >= wanted) >= chance. Null when no n up to 1000 is enough.
 * Elementary probability. Throws RangeError unless wanted is whole and not negative, 0 <= rate <= 1, 0 < chance < 1.
 */
export function seedsForPlants(wanted: number, rate: number, chance: number): number | null {
  check('rate', rate, rate >= 0 && rate <= 1);
  return fewest(wanted, chance, () => rate);
}

/**
 * The same, when the rate is known from a test of the same seed alone, which is itself a small sample: the chance is
 * that of the beta-binomial predictive with Jeffreys' prior, Beta(came_up + 1/2, sown - came_up + 1/2). Gelman et al.,
 * Bayesian Data Analysis, section 2.4 (prior 2.8), from memory. Never fewer than one seed for each plant.
 * Throws RangeError as above, and unless sown is whole and above 0 and came_up whole from 0 to sown.
 */
export function seedsAfterTest(wanted: number, { came_up, sown }: SproutTest, chance: number): number | null {
  check('sown', sown, Number.isInteger(sown) && sown > 0);
  check('came_up', came_up, Number.isInteger(came_up) && came_up >= 0 && came_up <= sown);
  // Pólya's urn: each seed that is imagined sown is learned from as if it had been in the test.
  return fewest(wanted, chance, (up, seeds) => (came_up + 0.5 + up) / (sown + 1 + seeds));
}

/**
 * Adds seed after seed, keeping the chance of each number of seedlings short of the one wanted. Sums and products of
 * positive numbers only, so no digits are lost. `next` is the chance of the next seed after `up` of `seeds` came up.
 */
function fewest(wanted: number, chance: number, next: (up: number, seeds: number) => number): number | null {
  check('wanted', wanted, Number.isInteger(wanted) && wanted >= 0);
  check('chance', chance, chance > 0 && chance < 1);
  if (wanted === 0) return 0;
  let short = [1];
  for (let seeds = 1; seeds <= MOST_SEEDS; seeds++) {
    const after = new Array<number>(Math.min(seeds + 1, wanted)).fill(0);
    for (const [up, before] of short.entries()) {
      const rise = next(up, seeds - 1);
      after[up] = (after[up] ?? 0) + before * (1 - rise);
      if (up + 1 < wanted) after[up + 1] = before * rise;
    }
    short = after;
    if (short.reduce((sum, one) => sum + one, 0) <= 1 - chance + ROUNDING) return seeds;
  }
  return null;
}

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
