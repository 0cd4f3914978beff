import { describe, expect, test } from 'vitest';
import { type Giving, givings } from '../../../src/ledger/water/given.ts';
import { planted, seasonOf, wateredGarden } from './watered-garden.ts';

const CAN = 'measures: {can_l: 9}\n';
const TANK = 'tank: {holds_l: 1000, flow_l_min: 6}\n';
const PLANTINGS = `${planted('P1', 'S1')}${planted('P2', 'S2')}`;

function givenIn(waterings: string, settings = CAN): Giving[] {
  const garden = wateredGarden({ settings, plantings: PLANTINGS, season: { waterings } });
  return givings(garden, seasonOf(garden));
}
const one = (of: string): string => `- {watered_on: 2025-06-01, spots: [S1, S2], ${of}}\n`;
/** Litres and how they were told, a spot. */
const eachOf = (waterings: string, settings?: string): [number, string][] =>
  givenIn(waterings, settings).map(({ litres, told }) => [litres, told]);

describe('litres a spot', () => {
  test('cans for each are cans of this garden', () =>
    expect(eachOf(one('cans_each: 1.5'))).toEqual([
      [13.5, 'counted'],
      [13.5, 'counted'],
    ]));
  test('a can nobody measured holds ten litres, a judgement', () =>
    expect(eachOf(one('cans_each: 1.5'), '')[0]).toEqual([15, 'counted']));
  test('cans and litres for all are shared out', () => {
    expect(eachOf(one('cans: 3'))[0]).toEqual([13.5, 'counted']);
    expect(eachOf(one('volume_l: 50'))).toEqual([
      [25, 'counted'],
      [25, 'counted'],
    ]);
  });
  test('a US gallon is 3.785411784 litres by definition', () => {
    expect(eachOf(one('volume_gal: 20'))[0]?.[0]).toBeCloseTo(37.85411784, 12);
    expect(eachOf(one('minutes: 4, flow_gal_min: 2'))[0]?.[0]).toBeCloseTo(4 * 3.785411784, 12);
  });
  test('minutes count with the flow measured then, else with the tank’s', () => {
    expect(eachOf(one('minutes: 10, flow_l_min: 12'), CAN + TANK)[0]).toEqual([60, 'counted']);
    expect(eachOf(one('minutes: 10'), CAN + TANK)[0]).toEqual([30, 'counted']);
  });
  test('minutes at no known flow are a word, and without one “some”', () => {
    expect(eachOf(one('minutes: 10'))[0]).toEqual([9, 'word']);
    expect(eachOf(one('minutes: 10, roughly: plenty'))[0]).toEqual([18, 'word']);
  });
  test('a word is cans for each spot, however many there are', () => {
    expect(eachOf(one('roughly: little'))).toEqual([
      [4.5, 'word'],
      [4.5, 'word'],
    ]);
    expect(eachOf(one('roughly: some'))[0]).toEqual([9, 'word']);
    expect(eachOf(one('roughly: plenty'))[0]).toEqual([18, 'word']);
    expect(eachOf('- {watered_on: 2025-06-01, spots: [S1]}\n')).toEqual([[9, 'word']]);
  });
  test('what was counted comes before the word beside it, and none is none', () => {
    expect(eachOf(one('cans_each: 1, roughly: plenty'))[0]).toEqual([9, 'counted']);
    expect(eachOf(one('cans_each: 0'))[0]).toEqual([0, 'counted']);
    expect(eachOf(one('volume_l: 0'))[0]).toEqual([0, 'counted']);
  });
});

describe('spots and days', () => {
  test('without spots it went to every planted spot once, in equal parts', () => {
    const twice = `${PLANTINGS}${planted('P3', 'S2', '2025-07-20')}`;
    const garden = wateredGarden({
      settings: CAN,
      plantings: twice,
      season: { waterings: '- {watered_on: 2025-06-01, volume_l: 30}\n' },
    });
    expect(givings(garden, seasonOf(garden)).map(({ spot, litres }) => [spot, litres])).toEqual([
      ['S1', 15],
      ['S2', 15],
    ]);
  });
  test('a span is given in equal parts of its days', () => {
    const found = givenIn('- {watered_on: 2025-06-01..2025-06-04, spots: [S1], volume_l: 40}\n');
    expect(found.map(({ day, litres }) => [day, litres])).toEqual([
      ['2025-06-01', 10],
      ['2025-06-02', 10],
      ['2025-06-03', 10],
      ['2025-06-04', 10],
    ]);
    expect(new Set(found.map(({ key }) => key)).size).toBe(1);
    const june = givenIn('- {watered_on: 2025-06, spots: [S1], cans_each: 30}\n');
    expect(june).toHaveLength(30);
    expect(june[0]?.litres).toBeCloseTo(9, 12);
  });
  test('about a day is that day, and an unknown day is left out', () => {
    const found = givenIn(
      '- {watered_on: unknown, spots: [S1], cans_each: 1}\n- {watered_on: about 2025-06-02, spots: [S1], cans_each: 1}\n',
    );
    expect(found.map(({ day }) => day)).toEqual(['2025-06-02']);
  });
  test('the first day comes first, and on one day the first spot', () => {
    const found = givenIn(
      `- {watered_on: 2025-06-03, spots: [S2, S1], cans_each: 1}\n- {watered_on: 2025-06-01..2025-06-04, spots: [S2], cans_each: 1}\n`,
    );
    expect(found.map(({ day, spot }) => `${day.slice(8)} ${spot}`)).toEqual([
      '01 S2',
      '02 S2',
      '03 S1',
      '03 S2',
      '03 S2',
      '04 S2',
    ]);
  });
  test('drip is told by how', () => {
    expect(givenIn(one('cans: 1, how: drip')).map(({ drip }) => drip)).toEqual([true, true]);
    expect(givenIn(one('cans: 1, how: hose')).map(({ drip }) => drip)).toEqual([false, false]);
  });
});

describe('from the tank', () => {
  const fromOf = (of: string, settings: string): boolean | undefined => givenIn(one(of), settings)[0]?.from_tank;
  test('told so, or not told in a garden that has one', () => {
    expect(fromOf('cans: 1, from: tank', TANK)).toBe(true);
    expect(fromOf('cans: 1', TANK)).toBe(true);
    expect(fromOf('cans: 1, from: mains', TANK)).toBe(false);
    expect(fromOf('cans: 1, from: other', TANK)).toBe(false);
  });
  test('never in a garden without one', () => {
    expect(fromOf('cans: 1', CAN)).toBe(false);
    expect(fromOf('cans: 1, from: tank', CAN)).toBe(false);
  });
});
