import { describe, expect, it } from 'vitest';
import { kaplanMeier } from '../../../src/statistics/survival/kaplan-meier.ts';
import { quantileOf } from '../../../src/statistics/survival/quantile.ts';
import type { RipeTime } from '../../../src/statistics/survival/ripe-time.ts';
import { ripeTimes } from '../../../src/statistics/survival/ripe-times.ts';
import { between, estimated, exact, lost, overripe } from './estimate.ts';

const spans = (observations: readonly RipeTime[]) =>
  estimated(observations).steps.map(({ span, share }) => [span.low, span.high, Number(share.toFixed(9))]);

describe('where ends touch, worked by hand', () => {
  it('a look that ends on the day another fruit was ripe includes that day', () => {
    expect(spans([between(1, 3), exact(3)])).toEqual([[3, 3, 1]]);
  });
  it('a look that begins on that day does not', () => {
    expect(spans([exact(3), between(3, 5)])).toEqual([
      [3, 3, 0.5],
      [3, 5, 0.5],
    ]);
  });
  it('a fruit lost on that day was ripe later', () => {
    expect(spans([exact(3), overripe(3), lost(3), exact(4)])).toEqual([
      [3, 3, 0.5],
      [4, 4, 0.5],
    ]);
  });
  it('looks in a row share nothing', () => {
    expect(spans([between(1, 3), between(3, 5)])).toEqual([
      [1, 3, 0.5],
      [3, 5, 0.5],
    ]);
  });
  it('over-ripe before all others: at or before, no day invented', () => {
    expect(spans([overripe(2), exact(3), exact(4), exact(5)])).toEqual([
      [null, 2, 0.25],
      [3, 3, 0.25],
      [4, 4, 0.25],
      [5, 5, 0.25],
    ]);
  });
  it('likeliest shares of two looks that cross a third: a = 1/2 by symmetry, the middle empty', () => {
    // Log-likelihood of (1,3] (3,5] (1,5]: log a + log b with a + b = 1.
    expect(spans([between(1, 3), between(3, 5), between(1, 5)])).toEqual([
      [1, 3, 0.5],
      [3, 5, 0.5],
    ]);
  });
  it('a place that might as well hold nothing holds nothing', () => {
    // With a, b, c at 1, in (1,2], in (2,3]: log a + log (a + b) + log (b + c) + log c, greatest at a = c = 1/2, flat in b.
    const looks = [exact(1), overripe(2), lost(1), between(2, 3)];
    for (const twice of [looks, [...looks, ...looks]]) {
      expect(spans(twice)).toEqual([
        [1, 1, 0.5],
        [2, 3, 0.5],
      ]);
    }
  });
  it('a place that some observations cover may hold nothing', () => {
    // Two of six, (1,4] and (3,6], cover (3,4]; with halves at the ends its slope is 2 / 0.5 = 4, below the 6 it needs.
    const looks = [between(1, 2), between(1, 2), between(1, 4), between(3, 6), between(5, 6), between(5, 6)];
    expect(spans(looks)).toEqual([
      [1, 2, 0.5],
      [5, 6, 0.5],
    ]);
  });
});

describe('median', () => {
  it('is the day itself, the looks around it, or the days from one to the next', () => {
    expect(estimated([exact(3), exact(4), exact(9)]).median).toEqual({ span: { low: 4, high: 4 }, reason: null });
    expect(estimated([between(1, 3), between(3, 6), between(6, 9)]).median.span).toEqual({ low: 3, high: 6 });
    expect(estimated([exact(3), exact(4), exact(6), exact(9)]).median.span).toEqual({ low: 4, high: 6 });
    expect(estimated([overripe(3), overripe(3), exact(9)]).median.span).toEqual({ low: null, high: 3 });
  });
  it('met to the dot with nothing seen after is that day', () => {
    expect(estimated([exact(3), lost(5)]).median.span).toEqual({ low: 3, high: 3 });
  });
  it('is not reached when more than half were lost before, and says how far it got', () => {
    const { median } = estimated([exact(3), lost(4), lost(5), lost(6)]);
    expect(median).toEqual({ span: null, reason: { code: 'not-reached', values: { share: 0.5, reached: 0.25 } } });
  });
  it('has no interval from looks, and says so', () => {
    const { median_interval } = estimated([between(1, 3), between(3, 5)]);
    expect(median_interval).toEqual({
      low: null,
      high: null,
      level: 0.9,
      reason: { code: 'looks-only', values: {} },
    });
  });
});

it('the first and the last seen', () => {
  const { earliest, latest, unseen } = estimated([exact(3), between(5, 8), exact(9), lost(12)]);
  expect([earliest.span, latest.span, unseen]).toEqual([
    { low: 3, high: 3 },
    { low: 9, high: 9 },
    { after: 12, share: 0.25 },
  ]);
});

it('nothing seen: no step, and reasons', () => {
  const { steps, earliest, latest, median, unseen, counts } = estimated([lost(3), lost(8)]);
  expect([steps, unseen, counts.unseen]).toEqual([[], { after: 8, share: 1 }, 2]);
  expect([earliest, latest]).toEqual(Array(2).fill({ span: null, reason: { code: 'none-seen', values: {} } }));
  expect(median.reason).toEqual({ code: 'not-reached', values: { share: 0.5, reached: 0 } });
});

it('nothing at all is refused as data', () => {
  expect(ripeTimes([])).toEqual({ cannot: { code: 'no-observations' } });
});

describe('mistakes of the caller throw', () => {
  it.each([
    ['time', () => ripeTimes([between(5, 3)])],
    ['time', () => ripeTimes([{ low: null, high: null }])],
    ['time', () => ripeTimes([exact(Number.NaN)])],
    ['time', () => ripeTimes([between(3, Number.POSITIVE_INFINITY)])],
    ['time', () => kaplanMeier([between(3, 5)])],
    ['time', () => kaplanMeier([overripe(5)])],
    ['share', () => quantileOf([], 0)],
    ['share', () => quantileOf([], 1.1)],
    ['share', () => quantileOf([], Number.NaN)],
  ])('invalid %s', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});
