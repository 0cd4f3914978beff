import { expect, test } from 'vitest';
import { ALL, lookedRipeness, NONE, type Told } from './looked-garden.ts';

const years = (ripe: number, unripe: number, count: number): Told =>
  Object.fromEntries(
    Array.from({ length: count }, (_, year) => [
      2021 + year,
      [
        { count: ripe, state: 'prime', look: ALL },
        { count: unripe, state: 'unripe', look: ALL },
        { count: 3, state: 'unripe', look: NONE },
      ],
    ]),
  );

test('three ticks are never said to mean more than 8 in 10 before they are judged', () => {
  // 30 of 30 ticked ripe, in two seasons: two are too few, whatever they held.
  expect(lookedRipeness(years(30, 0, 2)).ticks).toMatchObject({ cap: 8, is_capped: true, ripe: { value: 8 } });
});

test('and 9 once sixty bold claims of three seasons held', () => {
  expect(lookedRipeness(years(25, 0, 3)).ticks).toMatchObject({ cap: 9, is_capped: true, ripe: { value: 9 } });
});

test('not where the claims would not have been bold: 8 of 10 ripe say 8', () => {
  const { ticks } = lookedRipeness(years(20, 5, 3));
  expect(ticks).toMatchObject({ cap: 8, is_capped: true });
  expect(ticks.ripe.value).toBe(8);
});

test('a season is told from the others alone, where they have ticked fruits enough', () => {
  // Of 65, all ripe, 60 are of one year: the other five have one each for it, under the six a claim takes.
  const seasons: Told = {
    ...years(1, 0, 6),
    2021: [
      { count: 60, state: 'prime', look: ALL },
      { count: 9, state: 'unripe', look: NONE },
    ],
  };
  expect(lookedRipeness(seasons).ticks).toMatchObject({ cap: 8, ripe: { n: 65, value: 8 } });
});
