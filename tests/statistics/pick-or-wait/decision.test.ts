import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { chanceDraws, DRAWS } from '../../../src/statistics/pick-or-wait/chance-draws.ts';
import { type Answer, type ChancesDraw, pickOrWait } from '../../../src/statistics/pick-or-wait/decision.ts';
import { LOSS, type Losses, type LossWord, USUAL_LOSSES } from '../../../src/statistics/pick-or-wait/loss.ts';

const share = fc.double({ min: 0, max: 1, noNaN: true });
const draw: fc.Arbitrary<ChancesDraw> = fc.record({
  ripe: share,
  rain: share,
  split_if_rain: share,
  dilution_if_rain: share,
  lost: share,
});
const draws = fc.array(draw, { minLength: 1, maxLength: 40 });
const word = fc.constantFrom<LossWord>('little', 'some', 'much');
const losses: fc.Arbitrary<Losses> = fc.record({ unripe: word, split: word, dilution: word, lost: word });
const RANK: Record<Answer, number> = { wait: 0, either: 1, pick: 2 };
const rank = (list: readonly ChancesDraw[], weighed: Losses): number => RANK[pickOrWait(list, weighed).answer];
const known = (one: Partial<ChancesDraw>): ChancesDraw[] => [
  { ripe: 0.5, rain: 0, split_if_rain: 0, dilution_if_rain: 0, lost: 0, ...one },
];

describe('cost and loss with known chances', () => {
  // Murphy 1977 (from memory): protect when the chance of bad weather exceeds cost over loss. The cost of picking now
  // is P(unripe) × 4, the loss when it rains is 4: so pick when the rain is likelier than the fruit is unripe.
  const equal: Losses = { unripe: 'much', split: 'much', dilution: 'little', lost: 'much' };
  it.each([
    { ripe: 0.7, rain: 0.31, answer: 'pick' },
    { ripe: 0.7, rain: 0.29, answer: 'wait' },
    { ripe: 0.9, rain: 0.11, answer: 'pick' },
    { ripe: 0.2, rain: 0.79, answer: 'wait' },
  ])('ripe $ripe, rain $rain that splits every fruit: $answer', ({ ripe, rain, answer }) => {
    expect(pickOrWait(known({ ripe, rain, split_if_rain: 1 }), equal).answer).toBe(answer);
  });
  it('at the threshold itself: either', () => {
    expect(pickOrWait(known({ ripe: 0.75, rain: 0.25, split_if_rain: 1 }), equal).answer).toBe('either');
  });
  it('a loss called little instead of much moves the threshold fourfold', () => {
    const cheap: Losses = { ...equal, unripe: 'little' };
    expect(pickOrWait(known({ ripe: 0.2, rain: 0.21, split_if_rain: 1 }), cheap).answer).toBe('pick');
    expect(pickOrWait(known({ ripe: 0.2, rain: 0.19, split_if_rain: 1 }), cheap).answer).toBe('wait');
  });
  it('the difference by hand', () => {
    // 0.5 × (0.2 × 2 + 0.6 × 1) + 0.1 × 4 - 0.4 × 4.
    const found = pickOrWait(
      known({ ripe: 0.6, rain: 0.5, split_if_rain: 0.2, dilution_if_rain: 0.6, lost: 0.1 }),
      USUAL_LOSSES,
    );
    expect(found.waiting_costs).toBeCloseTo(-0.7, 12);
    expect(found.interval.low).toBeCloseTo(-0.7, 12);
    expect(found.interval.level).toBe(0.8);
  });
});

describe('never turns back', () => {
  /** Each draw's chance raised by a part, its own, of what is left. */
  it.each(['ripe', 'rain', 'split_if_rain', 'dilution_if_rain', 'lost'] as const)('more chance of %s', (name) => {
    fc.assert(
      fc.property(draws, losses, fc.array(share, { minLength: 40, maxLength: 40 }), (list, weighed, parts) => {
        const raised = list.map((one, k) => ({ ...one, [name]: one[name] + (1 - one[name]) * (parts[k] ?? 0) }));
        expect(rank(raised, weighed)).toBeGreaterThanOrEqual(rank(list, weighed));
      }),
    );
  });
  it.each(['split', 'dilution', 'lost'] as const)('more lost by %s', (name) => {
    fc.assert(
      fc.property(draws, losses, (list, weighed) => {
        const [little, some, much] = (['little', 'some', 'much'] as const).map((one) =>
          rank(list, { ...weighed, [name]: one }),
        );
        expect(some).toBeGreaterThanOrEqual(little ?? 9);
        expect(much).toBeGreaterThanOrEqual(some ?? 9);
      }),
    );
  });
  it('more lost by an unripe fruit, the other way', () => {
    fc.assert(
      fc.property(draws, losses, (list, weighed) => {
        expect(rank(list, { ...weighed, unripe: 'much' })).toBeLessThanOrEqual(
          rank(list, { ...weighed, unripe: 'little' }),
        );
      }),
    );
  });
});

describe('either', () => {
  it('is the answer exactly when the range holds 0', () => {
    fc.assert(
      fc.property(draws, losses, (list, weighed) => {
        const { answer, interval } = pickOrWait(list, weighed);
        expect(answer === 'either').toBe(interval.low <= 0 && interval.high >= 0);
      }),
    );
  });
  it('takes a tenth of the draws on the other side', () => {
    const mixed = (against: number) =>
      Array.from({ length: 101 }, (_, k) => known({ ripe: k < against ? 1 : 0, lost: 0.5 })[0] as ChancesDraw);
    expect(pickOrWait(mixed(10), USUAL_LOSSES).answer).toBe('wait');
    expect(pickOrWait(mixed(11), USUAL_LOSSES).answer).toBe('either');
  });
  it('does not depend on the order of the draws', () => {
    fc.assert(
      fc.property(draws, losses, (list, weighed) => {
        expect(pickOrWait([...list].reverse(), weighed).answer).toBe(pickOrWait(list, weighed).answer);
      }),
    );
  });
});

test('what an answer hinges on', () => {
  const close = pickOrWait(known({ ripe: 0.7, rain: 0.31, split_if_rain: 1 }), { ...USUAL_LOSSES, split: 'much' });
  expect(close.answer).toBe('pick');
  expect(close.hinges_on).toEqual(['split']);
  // Waiting loses 0.7 × 2, picking 0.3 × 4; with a split called little 0.7. The word beside, and no further.
  const beside = pickOrWait(known({ ripe: 0.7, rain: 0.7, split_if_rain: 1 }), USUAL_LOSSES);
  expect(beside.answer).toBe('pick');
  expect(beside.hinges_on).toEqual(['split']);
  const clear = pickOrWait(known({ ripe: 1, lost: 1 }), USUAL_LOSSES);
  expect(clear.hinges_on).toEqual([]);
});

test('losses double from word to word', () => {
  expect([LOSS.little, LOSS.some, LOSS.much]).toEqual([1, 2, 4]);
});

describe('draws of a chance', () => {
  it('have its mean, and the spread of as many counted', () => {
    for (const [stream, { mean, counted }] of [
      { mean: 0.3, counted: 10 },
      { mean: 0.1, counted: 5 },
      { mean: 0.8, counted: 40 },
      { mean: 0.5, counted: 20 },
      { mean: 0.9, counted: 3 },
    ].entries()) {
      const all = chanceDraws({ mean, counted }, stream);
      const middle = all.reduce((sum, one) => sum + one, 0) / DRAWS;
      expect(middle).toBeCloseTo(mean, 2);
      const variance = all.reduce((sum, one) => sum + (one - middle) ** 2, 0) / DRAWS;
      // Variance of a beta distribution: mean × rest / (counted + 1).
      expect(variance / ((mean * (1 - mean)) / (counted + 1))).toBeCloseTo(1, 1);
    }
  });
  it('rise with the mean, each of them', () => {
    fc.assert(
      fc.property(share, share, fc.double({ min: 0.5, max: 60, noNaN: true }), (a, b, counted) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)].map((mean) => chanceDraws({ mean, counted }, 0));
        for (const [k, one] of (low ?? []).entries()) expect(high?.[k] ?? -1).toBeGreaterThanOrEqual(one - 1e-12);
      }),
      { numRuns: 40 },
    );
  });
  it('of different streams do not go together', () => {
    const streams = [0, 1, 2, 3, 4].map((stream) => chanceDraws({ mean: 0.5, counted: 2 }, stream));
    for (const [a, first] of streams.entries())
      for (const second of streams.slice(a + 1)) {
        const product = first.reduce((sum, one, k) => sum + (one - 0.5) * ((second[k] ?? 0) - 0.5), 0) / DRAWS;
        expect(Math.abs(product) / (1 / 12)).toBeLessThan(0.05);
      }
  });
  it('of a known chance are all the same', () => {
    expect(new Set(chanceDraws({ mean: 0.3, counted: null }, 0))).toEqual(new Set([0.3]));
    expect(new Set(chanceDraws({ mean: 0, counted: 7 }, 0))).toEqual(new Set([0]));
  });
});

test.each([
  ['draws', () => pickOrWait([], USUAL_LOSSES)],
  ['rain', () => pickOrWait(known({ rain: 1.1 }), USUAL_LOSSES)],
  ['ripe', () => pickOrWait(known({ ripe: Number.NaN }), USUAL_LOSSES)],
  ['mean', () => chanceDraws({ mean: -0.1, counted: null }, 0)],
  ['count', () => chanceDraws({ mean: 0.1, counted: 0 }, 0)],
  ['stream', () => chanceDraws({ mean: 0.1, counted: 1 }, 5)],
])('impossible %s are refused', (name, attempt) => {
  expect(attempt).toThrow(RangeError);
  expect(attempt).toThrow(`invalid ${name}:`);
});
