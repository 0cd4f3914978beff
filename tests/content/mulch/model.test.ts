import { expect, test } from 'vitest';
import type { FirstLaid, OwnMulch } from '../../../content/mulch/own-mulch.ts';
import type { StrawLine } from '../../../content/mulch/straw.ts';
import type { Page } from '../../../src/book/page.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { linkTexts } from '../../reading/garden-texts.ts';
import { LAID, type MulchOf, mulchGarden } from './mulch-garden.ts';

const reference = loadReference('data/reference');

interface Model {
  readonly own: readonly OwnMulch[];
  readonly first: FirstLaid | null;
  readonly straw: readonly StrawLine[];
}

function pageOf(of: MulchOf = {}): Page & { readonly model: Model } {
  const { garden, problems } = linkTexts(mulchGarden(of));
  if (!garden || problems.some(({ severity }) => severity === 'error'))
    throw new Error(`invalid test garden: ${JSON.stringify(problems)}`);
  const page = bookOf({ reference }, garden, null).pages.find(({ path }) => path === 'mulch/');
  if (!page) throw new Error('there is no page');
  return page as Page & { readonly model: Model };
}
const modelOf = (of: MulchOf = {}): Model => pageOf(of).model;

test('mulch in weeks from the planting out of its own spots, the last season first', () => {
  const { own } = modelOf({ mulching: LAID, mulching_before: '- {laid_on: 2024-06, material: hay}\n' });
  // 10 June is 21 days after 20 May and 14 after 27 May; 6 May is 21 days before 27 May; 15 July is 56 after 20 May.
  expect(
    own.map(({ season, material, topped_up, spots, weeks }) => [season, material, topped_up, spots, weeks]),
  ).toEqual([
    ['2025', 'plastic', false, ['M2'], { low: -3, high: -3 }],
    ['2025', 'straw', false, ['M1', 'M2'], { low: 2, high: 3 }],
    ['2025', 'wood-chips', true, ['M1'], { low: 8, high: 8 }],
    ['2024', 'hay', false, null, null],
  ]);
});

test('the first laying leaves plastic, topping up and vague days aside', () => {
  expect(modelOf({ mulching: LAID }).first).toEqual({ season: '2025', when: 'after', low: 2, high: 3 });
  // Nothing known of 2025: the season before tells. 20 May and 27 May to 4 June: 15 and 8 days.
  const mulching_before = '- {laid_on: 2024-06-04, material: straw}\n';
  expect(modelOf({ mulching: '- {laid_on: 2025-06, material: straw}\n', mulching_before }).first).toEqual({
    season: '2024',
    when: 'after',
    low: 1,
    high: 2,
  });
  expect(modelOf().first).toBeNull();
  expect(modelOf({ mulching: '- {laid_on: 2025-05-06, spots: [M2], material: plastic}\n' }).first).toBeNull();
});

test.each([
  ['2025-05-20', '[M1]', 'at-once'],
  ['2025-05-10', '[M1]', 'before'],
  ['2025-05-23', '[M1, M2]', 'around'],
  ['2025-05-27', '[M1, M2]', 'after'],
])('laid on %s on %s is told as %s planting out', (day, spots, when) =>
  expect(modelOf({ mulching: `- {laid_on: ${day}, spots: ${spots}, material: straw}\n` }).first?.when).toBe(when),
);

test('straw for spots alike in print, the commonest first, 5 and 8 cm deep', () => {
  const { straw } = modelOf({ measures: 'measures: {barrow_l: 60}\n' });
  // 3 m² · 5 cm are 150 litres, · 8 cm 240: 2.5 and 4 barrows of 60.
  expect(straw.map(({ spots, area_m2 }) => [spots, area_m2])).toEqual([
    [['M2', 'M3'], 3],
    [['M1'], 2],
  ]);
  expect([straw[0]?.l.low, straw[0]?.l.high, straw[0]?.barrows.low, straw[0]?.barrows.high]).toEqual(
    [150, 240, 2.5, 4].map((value) => expect.closeTo(value, 9)),
  );
});

test('no area anywhere: a square metre', () => {
  const { straw } = modelOf({
    spots: '  - {id: M1, kind: mound}\n  - {id: M2, kind: mound}\n  - {id: T1, kind: tub}\n',
  });
  expect(straw.map(({ spots, l }) => [spots, l.low, l.high])).toEqual([[null, 50, 80]]);
});

test('every figure of the page begins with its name and is there once', () => {
  const ids = pageOf().figures.map(({ id }) => id);
  expect(ids).toHaveLength(8);
  expect(ids.filter((id) => !id.startsWith('mulch.'))).toEqual([]);
  expect(new Set(ids).size).toBe(ids.length);
});

test('the level of record grows from plantings to mulch to how it lies', () => {
  expect(pageOf().level?.kept).toBe('little');
  expect(pageOf({ mulching: '- {laid_on: 2025-06-10, material: straw, depth_cm: 5}\n' }).level?.kept).toBe('some');
  expect(pageOf({ mulching: LAID }).level?.kept).toBe('full');
});
