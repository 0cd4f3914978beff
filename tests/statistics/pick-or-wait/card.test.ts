import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { type CardChances, pickOrWaitCard, RAIN_WORDS } from '../../../src/statistics/pick-or-wait/card.ts';
import type { Answer } from '../../../src/statistics/pick-or-wait/decision.ts';
import { type Losses, type LossWord, USUAL_LOSSES } from '../../../src/statistics/pick-or-wait/loss.ts';

const RANK: Record<Answer, number> = { wait: 0, either: 1, pick: 2 };
const TYPICAL: CardChances = {
  ripe_counted: 20,
  split_if_rain: { mean: 0.1, counted: 5 },
  dilution_if_rain: { mean: 0.5, counted: 10 },
  lost: { mean: 0.05, counted: 20 },
};
const answers = (chances: CardChances, losses: Losses): Answer[][] =>
  pickOrWaitCard(chances, losses).map(({ cells }) => [
    cells['none-likely'].answer,
    cells.maybe.answer,
    cells.likely.answer,
  ]);

describe('as a grower would read it', () => {
  it('rain that splits one in ten: an unripe fruit is left whatever comes, a likely ripe one may go either way', () => {
    expect(answers(TYPICAL, USUAL_LOSSES)).toEqual([
      ['wait', 'wait', 'wait'],
      ['wait', 'wait', 'wait'],
      ['wait', 'wait', 'wait'],
      // Picking loses 0.2 × 4; waiting 0.8 × (0.1 × 2 + 0.5 × 1) + 0.05 × 4 before likely rain: 0.8 against 0.76.
      ['wait', 'either', 'either'],
    ]);
  });
  it('rain that splits every other fruit: a likely ripe one is picked before it', () => {
    const stormy = { ...TYPICAL, split_if_rain: { mean: 0.5, counted: 40 }, lost: { mean: 0.1, counted: 40 } };
    const card = answers(stormy, { ...USUAL_LOSSES, split: 'much' });
    expect(card[3]?.[2]).toBe('pick');
    expect(card[0]).toEqual(['wait', 'wait', 'wait']);
  });
});

describe('never turns back', () => {
  const mean = fc.double({ min: 0, max: 1, noNaN: true });
  const counted = fc.option(fc.integer({ min: 1, max: 60 }));
  const chance = fc.record({ mean, counted });
  const word = fc.constantFrom<LossWord>('little', 'some', 'much');
  it('down a column and along a row', () => {
    fc.assert(
      fc.property(
        fc.record({ ripe_counted: counted, split_if_rain: chance, dilution_if_rain: chance, lost: chance }),
        fc.record({ unripe: word, split: word, dilution: word, lost: word }),
        (chances, losses) => {
          const ranks = answers(chances, losses).map((row) => row.map((answer) => RANK[answer]));
          for (const [r, row] of ranks.entries())
            for (const [c, one] of row.entries()) {
              expect(ranks[r + 1]?.[c] ?? 2).toBeGreaterThanOrEqual(one);
              expect(row[c + 1] ?? 2).toBeGreaterThanOrEqual(one);
            }
        },
      ),
      { numRuns: 25 },
    );
  });
});

test('the less is known, the more often either', () => {
  const either = (counts: number | null) =>
    answers(
      {
        ripe_counted: counts,
        split_if_rain: { mean: 0.2, counted: counts },
        dilution_if_rain: { mean: 0.5, counted: counts },
        lost: { mean: 0.1, counted: counts },
      },
      USUAL_LOSSES,
    )
      .flat()
      .filter((one) => one === 'either').length;
  expect(either(3)).toBeGreaterThan(either(200));
  expect(either(200)).toBeGreaterThanOrEqual(either(null));
});

test('a chance of ripeness that rests on three fruits makes a clear answer an open one', () => {
  const known = (mean: number) => ({ mean, counted: null });
  const chances = { split_if_rain: known(0.3), dilution_if_rain: known(0.5), lost: known(0.05) };
  const dry = (ripe_counted: number | null) =>
    answers({ ...chances, ripe_counted }, USUAL_LOSSES).map(([none]) => none);
  expect(dry(null)).toEqual(['wait', 'wait', 'wait', 'wait']);
  expect([dry(3)[0], dry(3)[3]]).toEqual(['wait', 'either']);
});

test('four rows, and three words whose chances rise', () => {
  expect(pickOrWaitCard(TYPICAL, USUAL_LOSSES).map(({ ripe_of_ten }) => ripe_of_ten)).toEqual([2, 4, 6, 8]);
  const means = Object.values(RAIN_WORDS).map(({ mean }) => mean);
  expect(means).toEqual([0.1, 0.4, 0.8]);
});
