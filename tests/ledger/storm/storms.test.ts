import { describe, expect, test } from 'vitest';
import { addDays, type Day } from '../../../src/day.ts';
import type { Garden } from '../../../src/garden/garden.ts';
import { NOTHING_KEPT } from '../../../src/kept.ts';
import { createBases } from '../../../src/ledger/bases.ts';
import { type CropStorms, cropStorms } from '../../../src/ledger/storm/crop-storms.ts';
import { stormsOf } from '../../../src/ledger/storm/storm.ts';
import { planting, smallGarden } from '../small-garden.ts';

const TODAY = '2025-10-31' as Day;
const DAYS = 'ripe_days: {set_days_low: 36, set_days_high: 44, planted_days_low: 81, sources: [trade-practice]}\n';

/** Days from 1 May to 30 September 2025, dry but for those named; `-` is a day nobody read. */
function weather(wet: Readonly<Record<string, string>>): string {
  const rows = Array.from({ length: 153 }, (_, at) => addDays('2025-05-01' as Day, at)).flatMap((day) => {
    const told = wet[day] ?? '0,';
    return told === '-' ? [] : [`${day},${told}`];
  });
  return `date,rain_mm,rain\n${rows.join('\n')}\n`;
}

/** Soaks from 20 mm, wet from 1 mm: the house's figures. */
const FIVE = Object.fromEntries(
  ['2025-08-01', '2025-08-10', '2025-08-20', '2025-08-30', '2025-09-09'].map((day) => [day, '30,']),
);

const gardenOf = (wet: Readonly<Record<string, string>>, fruits = '', crop = DAYS): Garden =>
  smallGarden({ plantings: planting('P1', 'S1'), fruits, weather: weather(wet), crop });

function stormsIn(garden: Garden): CropStorms {
  const crop = garden.crops.get('globe');
  if (!crop) throw new Error('no crop');
  return cropStorms(crop, stormsOf(garden, TODAY), [], createBases(), NOTHING_KEPT);
}

const fruit = (id: string, set: string, rest: string): string =>
  `- {id: ${id}, planting: P1, ${set === '' ? '' : `set: {set_on: ${set}}, `}${rest}}\n`;
const picked = (on: string, condition = 'whole'): string =>
  `fate: picked, pick: {picked_on: ${on}, condition: ${condition}}`;
const split = (on: string): string => `fate: lost, end: {ended_on: ${on}, lost_to: split}`;

describe('a storm is wet days in a row, one of them soaking', () => {
  const told = (wet: Readonly<Record<string, string>>) =>
    stormsOf(gardenOf(wet), TODAY).map(({ first, last, rain_mm, dry_days }) => [first, last, rain_mm, dry_days]);

  test('by the gauge, with the dry days before it', () => {
    const wet = {
      '2025-06-01': '5,',
      '2025-06-11': '3,',
      '2025-06-12': '20,',
      '2025-06-13': '1,',
      '2025-06-20': '19.9,',
    };
    expect(told(wet)).toEqual([['2025-06-11', '2025-06-13', 24, 9]]);
  });

  test('by the word, which has no millimetres', () => {
    const wet = { '2025-05-20': '5,', '2025-06-01': ',some', '2025-06-02': ',soaking' };
    expect(told(wet)).toEqual([['2025-06-01', '2025-06-02', null, 11]]);
  });

  test('an unread day ends it, and leaves the dry days before open', () => {
    const wet = { '2025-06-10': '-', '2025-06-11': '25,', '2025-06-12': '-', '2025-06-13': '25,' };
    expect(told(wet)).toEqual([
      ['2025-06-11', '2025-06-11', 25, null],
      ['2025-06-13', '2025-06-13', 25, null],
    ]);
  });

  test('none without a station', () => {
    const garden = smallGarden({ plantings: planting('P1', 'S1') });
    expect(stormsOf(garden, TODAY)).toEqual([]);
  });
});

describe('which fruits hung in it', () => {
  const counts = (fruits: string, wet: Readonly<Record<string, string>> = { '2025-08-01': '30,' }, crop = DAYS) =>
    stormsIn(gardenOf(wet, fruits, crop)).storms.map(({ hanging, split: torn }) => [hanging.length, torn]);

  test('past two thirds of 36 days on its first day: 24 days', () => {
    expect(counts(fruit('A', '2025-07-08', picked('2025-08-20')))).toEqual([[1, 0]]);
    expect(counts(fruit('A', '2025-07-09', picked('2025-08-20')))).toEqual([]);
  });

  test('without a day of set, two thirds of 81 days from planting: 54 days from 20 May', () => {
    const wet = (day: string) => ({ [day]: '30,' });
    expect(counts(fruit('A', '', picked('2025-08-20')), wet('2025-07-13'))).toEqual([[1, 0]]);
    expect(counts(fruit('A', '', picked('2025-08-20')), wet('2025-07-12'))).toEqual([]);
    expect(counts(fruit('A', '', picked('2025-08-20')), wet('2025-07-13'), '')).toEqual([]);
  });

  test('picked before it is out, on its first day or later in; of an unknown day it is left out', () => {
    const off = (day: string) => counts(fruit('A', '2025-06-20', picked(day)));
    expect(off('2025-07-31')).toEqual([]);
    expect(off('2025-08-01')).toEqual([[1, 0]]);
    expect(off('unknown')).toEqual([]);
  });

  test('found split, on the vine or picked, until three days after', () => {
    for (const end of [split, (on: string) => picked(on, 'split')]) {
      expect(counts(fruit('A', '2025-06-20', end('2025-08-04')))).toEqual([[1, 1]]);
      expect(counts(fruit('A', '2025-06-20', end('2025-08-05')))).toEqual([[1, 0]]);
    }
    expect(counts(fruit('A', '2025-06-20', picked('2025-08-02', 'rotten')))).toEqual([[1, 0]]);
  });

  test('a split is put down to the last storm before it', () => {
    const wet = { '2025-08-01': '30,', '2025-08-03': '30,' };
    expect(counts(fruit('A', '2025-06-20', split('2025-08-04')), wet)).toEqual([
      [1, 0],
      [1, 1],
    ]);
  });

  test('one still growing hangs in all', () => {
    expect(counts(fruit('A', '2025-06-20', 'fate: growing'), FIVE)).toHaveLength(5);
  });
});

describe('how often they split', () => {
  const four = Array.from({ length: 4 }, (_, at) => fruit(`F${at}`, '2025-06-20', 'fate: growing')).join('');

  test('under five storms the stated prior stands, 1 in 10, and is called one', () => {
    const wet = Object.fromEntries(Object.entries(FIVE).slice(0, 4));
    const { chance, split: figure } = stormsIn(gardenOf(wet, four));
    expect([chance.from, chance.storms, chance.exposed]).toEqual(['prior', 4, 16]);
    expect(figure).toMatchObject({ value: 1, reason: { code: 'few-storms', values: { count: 4, wanted: 5 } } });
  });

  test('from five on they are counted, with storms as repeats', () => {
    const torn = fruit('X', '2025-06-20', split('2025-08-02'));
    const { chance, split: figure, direction } = stormsIn(gardenOf(FIVE, four + torn));
    expect([chance.from, chance.storms, chance.exposed]).toEqual(['storms', 5, 21]);
    expect(figure).toMatchObject({
      id: 'ripe.globe.storm.split_of_ten',
      n: 21,
      replicate: { kind: 'storm', count: 5 },
      reason: null,
    });
    // 1 of 21, drawn a little towards a half by Jeffreys' prior.
    expect(figure.value).toBeGreaterThan(10 / 21);
    expect(figure.value).toBeLessThan(2);
    expect(direction.goes).toBe('cannot-tell');
  });
});
