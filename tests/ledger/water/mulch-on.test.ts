import { describe, expect, test } from 'vitest';
import type { Mulch } from '../../../src/agronomy/mulched-coefficient.ts';
import type { Day } from '../../../src/day.ts';
import { mulchOn } from '../../../src/ledger/water/mulch-on.ts';
import { cropText, planted, plantingOf, seasonOf, spotOf, told, wateredGarden } from './watered-garden.ts';

const PLASTIC =
  '  plastic: {evaporation_cut_low: 0.4, evaporation_cut_high: 0.6, transpiration_cut_low: -0.3, transpiration_cut_high: -0.1}\n';

function mulchedOn(mulching: string, day: string, { spot = 'S1', plastic = PLASTIC } = {}): Mulch {
  const garden = wateredGarden({
    crop: cropText({}, { plastic }),
    plantings: `${planted('P1', 'S1')}${planted('P2', 'S2')}`,
    season: { mulching },
  });
  const crop = told(plantingOf(garden, 'P1').variety).crop;
  return mulchOn(seasonOf(garden), spotOf(garden, spot), crop)(day as Day);
}
const straw = (on: string, more = ''): string => `- {laid_on: ${on}, material: straw${more}}\n`;
const BARE = { kind: 'none' };

describe('by day', () => {
  test('from the day it was laid on, eight of ten parts where nobody said', () => {
    expect(mulchedOn(straw('2025-06-10'), '2025-06-09')).toEqual(BARE);
    expect(mulchedOn(straw('2025-06-10'), '2025-06-10')).toEqual({ kind: 'organic', cover: 0.8 });
    expect(mulchedOn(straw('about 2025-06-10', ', cover_of_ten: 5'), '2025-06-10')).toEqual({
      kind: 'organic',
      cover: 0.5,
    });
    expect(mulchedOn(straw('2025-06-10', ', cover_of_ten: 0'), '2025-06-10')).toEqual({ kind: 'organic', cover: 0 });
  });
  test('until it is taken off, or something else is laid', () => {
    const work = `${straw('2025-06-10', ', work: laid')}- {laid_on: 2025-08-01, material: straw, work: taken-off}\n`;
    expect(mulchedOn(work, '2025-07-31')).toEqual({ kind: 'organic', cover: 0.8 });
    expect(mulchedOn(work, '2025-08-01')).toEqual(BARE);
    const more = `${straw('2025-06-10', ', cover_of_ten: 4')}${straw('2025-07-01', ', work: topped-up, cover_of_ten: 9')}`;
    expect(mulchedOn(more, '2025-06-30')).toEqual({ kind: 'organic', cover: 0.4 });
    expect(mulchedOn(more, '2025-07-01')).toEqual({ kind: 'organic', cover: 0.9 });
  });
  test('over a span from its last day, of unknown day from the season’s first', () => {
    expect(mulchedOn(straw('2025-06-10..2025-06-14'), '2025-06-13')).toEqual(BARE);
    expect(mulchedOn(straw('2025-06-10..2025-06-14'), '2025-06-14')).toMatchObject({ kind: 'organic' });
    expect(mulchedOn(straw('unknown'), '2025-04-01')).toMatchObject({ kind: 'organic' });
  });
  test('what is dated comes after what is not', () => {
    const work = `${straw('unknown')}- {laid_on: 2025-08-01, material: straw, work: taken-off}\n`;
    expect(mulchedOn(work, '2025-07-31')).toMatchObject({ kind: 'organic' });
    expect(mulchedOn(work, '2025-08-02')).toEqual(BARE);
  });
  test('a span that ends later counts later', () => {
    const work = `${straw('2025-06-01..2025-06-20', ', cover_of_ten: 9')}${straw('2025-06-10', ', cover_of_ten: 3')}`;
    expect(mulchedOn(work, '2025-06-15')).toEqual({ kind: 'organic', cover: 0.3 });
    expect(mulchedOn(work, '2025-06-20')).toEqual({ kind: 'organic', cover: 0.9 });
  });
});

test('only on its own spots, or on all where none are named', () => {
  const own = straw('2025-06-10', ', spots: [S2]');
  expect(mulchedOn(own, '2025-06-10')).toEqual(BARE);
  expect(mulchedOn(own, '2025-06-10', { spot: 'S2' })).toMatchObject({ kind: 'organic' });
  expect(mulchedOn(straw('2025-06-10'), '2025-06-10', { spot: 'S2' })).toMatchObject({ kind: 'organic' });
});

test('plastic does what sources say of the crop, in the middle of their figures; without them nothing', () => {
  const laid = '- {laid_on: 2025-05-10, material: plastic, cover_of_ten: 6}\n';
  const found = mulchedOn(laid, '2025-05-10');
  expect(found).toMatchObject({ kind: 'plastic', cover: 0.6, evaporation_cut: 0.5 });
  expect(found.kind === 'plastic' && found.transpiration_cut).toBeCloseTo(-0.2, 12);
  expect(mulchedOn(laid, '2025-05-10', { plastic: '' })).toEqual(BARE);
});
