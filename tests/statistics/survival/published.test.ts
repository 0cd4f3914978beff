import { expect, it } from 'vitest';
import { kaplanMeier } from '../../../src/statistics/survival/kaplan-meier.ts';
import { COSMESIS } from '../../published/survival/cosmesis.ts';
import { LEUKAEMIA } from '../../published/survival/leukaemia.ts';
import { expectPrinted } from '../agreement.ts';
import { estimated } from './estimate.ts';

it('Kaplan-Meier of the leukaemia patients (Freireich 1963) as printed', () => {
  const estimate = estimated(LEUKAEMIA.observations);
  const rows = kaplanMeier(LEUKAEMIA.observations);
  expect(rows.map(({ time, at_risk, events }) => [time, at_risk, events])).toEqual(
    LEUKAEMIA.printed.map((row) => row.slice(0, 3)),
  );
  for (const [index, [, , , remaining, se]] of LEUKAEMIA.printed.entries()) {
    expectPrinted(estimate.steps[index]?.remaining, remaining);
    expectPrinted(Math.sqrt(estimate.steps[index]?.variance ?? Number.NaN), se);
  }
  expect(estimate.counts).toEqual({ exact: 9, between: 0, before: 0, unseen: 12 });
  expect(estimate.median.span).toEqual({ low: LEUKAEMIA.median, high: LEUKAEMIA.median });
  expect(estimate.unseen?.after).toBe(35);
});

it('the same by hand: 18/21, then 16/17 of it, 14/15, 11/12, 10/11, 6/7, 5/6', () => {
  const byHand = [18 / 21, 16 / 17, 14 / 15, 11 / 12, 10 / 11, 6 / 7, 5 / 6];
  let remaining = 1;
  for (const [index, factor] of byHand.entries()) {
    remaining *= factor;
    expect(kaplanMeier(LEUKAEMIA.observations)[index]?.remaining).toBeCloseTo(remaining, 14);
  }
});

it('Turnbull of the radiotherapy patients (Finkelstein & Wolfe 1985) as printed', () => {
  const estimate = estimated(COSMESIS.observations);
  expect(estimate.counts).toEqual({ exact: 0, between: 21, before: 0, unseen: 25 });
  expect(estimate.steps.map(({ span }) => [span.low, span.high])).toEqual(
    COSMESIS.printed.map(([low, high]) => [low, high]),
  );
  for (const [index, [, , share]] of COSMESIS.printed.entries()) expectPrinted(estimate.steps[index]?.share, share);
  expect(estimate.median.span).toEqual({ low: 38, high: 40 });
});
