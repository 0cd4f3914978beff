import { describe, expect, it } from 'vitest';
import type { Pair } from '../../../src/statistics/preference/ballot.ts';
import { BASEBALL } from '../../published/preference/baseball.ts';
import { CITATIONS } from '../../published/preference/citations.ts';
import oracle from '../../published/preference/oracle.json' with { type: 'json' };
import { PUDDINGS } from '../../published/preference/puddings.ts';
import { expectPrinted } from '../agreement.ts';
import { fruitsAlone, NO_PULL, order, peakOf, times } from './tasting.ts';

const pairs = (first: string, second: string, said: Pair['said'], count: number): Pair[] =>
  times(count, { first, second, said });

const baseball = fruitsAlone(
  BASEBALL.games.flatMap(([home, away, won, lost]) => [
    ...pairs(home, away, 'first', won),
    ...pairs(home, away, 'second', lost),
  ]),
  [],
);
const puddings = fruitsAlone(
  PUDDINGS.tasted.flatMap(([one, other, won, lost, same]) => [
    ...pairs(one, other, 'first', won),
    ...pairs(one, other, 'second', lost),
    ...pairs(one, other, 'same', same),
  ]),
  [],
);
const citations = fruitsAlone(
  CITATIONS.cited.flatMap(([cited, citing, count]) => pairs(cited, citing, 'first', count)),
  [],
);
const orders = fruitsAlone(
  [],
  oracle.unpulled.orders.given.map((one) => order(one.join(' '))),
);

function expectClose(actual: number, expected: number | undefined): void {
  expect(Math.abs(actual - (expected ?? Number.NaN))).toBeLessThan(1e-4);
}

describe('without a pull, the estimates are those of maximum likelihood', () => {
  it('pairs: seven teams', () => {
    expect(baseball.pairs).toHaveLength(273);
    const fit = peakOf(baseball, NO_PULL);
    for (const [team, printed] of Object.entries(BASEBALL.printed)) {
      expectPrinted(fit.above('Baltimore', team).estimate, printed);
      expectPrinted(fit.above('Baltimore', team).se, '0.3');
    }
  });

  it('pairs, far apart and very many: four journals', () => {
    const fit = peakOf(citations, NO_PULL);
    for (const [journal, printed] of Object.entries(CITATIONS.printed))
      expectPrinted(fit.above('Biometrika', journal).estimate, printed);
  });

  it('pairs with "the same": six puddings, whose printed fourth digit is short of the peak by up to 0.0002', () => {
    expect(puddings.pairs).toHaveLength(PUDDINGS.tastings);
    const fit = peakOf(puddings, { ...NO_PULL, ties: 1000 });
    for (const [pudding, [estimate, se]] of Object.entries(PUDDINGS.printed)) {
      expect(Math.abs(fit.above('1', pudding).estimate - Number(estimate))).toBeLessThan(2.5e-4);
      expectPrinted(fit.above('1', pudding).se, se);
    }
    expectPrinted(fit.log_ties, PUDDINGS.printed_log_ties[0]);
  });

  it.each([
    { name: 'baseball', tastings: baseball, reference: 'Baltimore', ties: null, expected: oracle.unpulled.baseball },
    {
      name: 'citations',
      tastings: citations,
      reference: 'Biometrika',
      ties: null,
      expected: oracle.unpulled.citations,
    },
    { name: 'puddings', tastings: puddings, reference: '1', ties: 1000, expected: oracle.unpulled.puddings },
    { name: 'orders of a few', tastings: orders, reference: 'a', ties: null, expected: oracle.unpulled.orders.worths },
  ])('as R has them: $name', ({ tastings, reference, ties, expected }) => {
    const fit = peakOf(tastings, { ...NO_PULL, ties });
    for (const [variety, [estimate, se]] of Object.entries(expected)) {
      if (variety === 'log_ties') {
        expectClose(fit.log_ties, estimate);
      } else {
        expectClose(fit.above(reference, variety).estimate, estimate);
        expectClose(fit.above(reference, variety).se, se);
      }
    }
  });
});
