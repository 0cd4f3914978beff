import fc from 'fast-check';
import { expect, it } from 'vitest';
import { kaplanMeier } from '../../../src/statistics/survival/kaplan-meier.ts';
import type { RipeTime } from '../../../src/statistics/survival/ripe-time.ts';
import { type Mass, turnbull } from '../../../src/statistics/survival/turnbull.ts';
import oracle from '../../published/survival/oracle.json' with { type: 'json' };
import { between, estimated, exact, lost, overripe } from './estimate.ts';

const SEEDED = { seed: 20250812, numRuns: 300 };

const day = fc.integer({ min: 1, max: 20 });
const seenOrLost = fc.oneof(day.map(exact), day.map(lost));
const look = fc.tuple(day, fc.integer({ min: 1, max: 9 })).map(([low, width]) => between(low, low + width));
const anything = fc.array(fc.oneof(seenOrLost, look, day.map(overripe)), { minLength: 1, maxLength: 30 });

/** Whether everything in the place fits the observation. */
const covers = (one: RipeTime, { place }: Mass): boolean => {
  const [low, high] = [one.low ?? -99, one.high ?? 99];
  const [from, to] = [place.low ?? -99, place.high ?? 99];
  if (low === high) return from === low && to === low;
  return from >= low && to > low && to <= high;
};

it('without losses Kaplan-Meier leaves the share of days that come later', () => {
  fc.assert(
    fc.property(fc.array(day, { minLength: 1, maxLength: 30 }), (days) => {
      for (const { span, remaining, share } of estimated(days.map(exact)).steps) {
        expect(remaining).toBeCloseTo(days.filter((one) => one > span.high).length / days.length, 12);
        expect(share).toBeCloseTo(days.filter((one) => one === span.high).length / days.length, 12);
      }
    }),
    SEEDED,
  );
});

it('without losses Greenwood is the binomial variance', () => {
  fc.assert(
    fc.property(fc.array(day, { minLength: 1, maxLength: 30 }), (days) => {
      for (const { remaining, variance } of estimated(days.map(exact)).steps) {
        if (variance === null) expect(remaining).toBe(0);
        else expect(variance).toBeCloseTo((remaining * (1 - remaining)) / days.length, 12);
      }
    }),
    SEEDED,
  );
});

it('Turnbull is Kaplan-Meier when every time is exact or cut off', () => {
  let withLosses = 0;
  fc.assert(
    fc.property(fc.array(seenOrLost, { minLength: 1, maxLength: 30 }), (observations) => {
      const masses = turnbull(observations);
      const seen = masses.filter(({ place }) => place.high !== null);
      const rows = kaplanMeier(observations);
      expect(seen.map(({ place }) => [place.low, place.high])).toEqual(rows.map(({ time }) => [time, time]));
      for (const [index, row] of rows.entries()) {
        const passed = seen.slice(0, index + 1).reduce((sum, { share }) => sum + share, 0);
        expect(1 - passed).toBeCloseTo(row.remaining, 10);
      }
      expect(estimated(observations).unseen?.share ?? 0).toBeCloseTo(
        masses.find(({ place }) => place.high === null)?.share ?? 0,
        10,
      );
      withLosses += masses.length > seen.length ? 1 : 0;
    }),
    SEEDED,
  );
  expect(withLosses).toBeGreaterThan(SEEDED.numRuns / 3);
});

it('Turnbull is consistent with itself, and no place elsewhere would be likelier', () => {
  let emptyPlaces = 0;
  fc.assert(
    fc.property(anything, (observations) => {
      const masses = turnbull(observations);
      expect(masses.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
      const chances = observations.map((one) =>
        masses.reduce((sum, mass) => sum + (covers(one, mass) ? mass.share : 0), 0),
      );
      // Average of what each observation says of a place; at most 1 anywhere, 1 where a share lies.
      const slope = (mass: Mass): number =>
        observations.reduce((sum, one, index) => sum + (covers(one, mass) ? 1 / (chances[index] ?? 0) : 0), 0) /
        observations.length;
      for (const mass of masses) expect(slope(mass)).toBeCloseTo(1, 9);
      // Any day, and any moment between two days, may be tried; moments after all days too.
      for (let twice = 0; twice <= 64; twice++) {
        const [low, high] = twice % 2 ? [(twice - 1) / 2, (twice + 1) / 2] : [twice / 2, twice / 2];
        const tried = slope({ place: { low, high }, share: 0 });
        expect(tried).toBeLessThan(1 + 1e-8);
        emptyPlaces += tried > 0 && tried < 0.999 ? 1 : 0;
      }
    }),
    SEEDED,
  );
  expect(emptyPlaces).toBeGreaterThan(SEEDED.numRuns);
});

it('gives the same bits for the same observations in any order', () => {
  const shuffled = anything.chain((all) =>
    fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length })),
  );
  fc.assert(
    fc.property(shuffled, ([one, other]) => {
      const [first, second] = [estimated(one), estimated(other)];
      expect(second.steps).toEqual(first.steps);
      expect(second.median_interval).toEqual(first.median_interval);
    }),
    SEEDED,
  );
});

it('every fruit twice changes nothing', () => {
  const same = (observations: readonly RipeTime[]): void => {
    const [once, twice] = [turnbull(observations), turnbull([...observations, ...observations])];
    expect(twice.map(({ place }) => place)).toEqual(once.map(({ place }) => place));
    for (const [index, { share }] of once.entries()) expect(twice[index]?.share).toBeCloseTo(share, 10);
  };
  fc.assert(fc.property(anything, same), SEEDED);
  same(oracle.looks['emptied too soon'].observations);
});

it('moves and stretches with time', () => {
  fc.assert(
    fc.property(anything, (observations) => {
      const moved = (time: number | null): number | null => (time === null ? null : 2 * time + 7);
      const there = estimated(observations.map(({ low, high }) => ({ low: moved(low), high: moved(high) })));
      const here = estimated(observations);
      expect(there.steps.map(({ share }) => share)).toEqual(here.steps.map(({ share }) => share));
      expect(there.median.span?.low ?? null).toBe(moved(here.median.span?.low ?? null));
      expect(there.median.span?.high ?? null).toBe(moved(here.median.span?.high ?? null));
      expect(there.median_interval.low).toBe(moved(here.median_interval.low));
    }),
    SEEDED,
  );
});

it('is never a number that is none, and the steps use up all', () => {
  fc.assert(
    fc.property(anything, (observations) => {
      const { steps, unseen, quantile } = estimated(observations);
      const numbers = steps.flatMap(({ share, remaining, variance }) => [share, remaining, variance ?? 0]);
      expect(numbers.every((one) => Number.isFinite(one) && one >= 0 && one <= 1 + 1e-12)).toBe(true);
      expect(steps.reduce((sum, { share }) => sum + share, unseen?.share ?? 0)).toBeCloseTo(1, 12);
      expect(steps.at(-1)?.remaining ?? 1).toBe(unseen?.share ?? 0);
      if (unseen === null) expect(quantile(1).span?.high).toBe(steps.at(-1)?.span.high);
      else expect(quantile(1).span).toBeNull();
    }),
    SEEDED,
  );
});
