import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/day.ts';
import { type DipAccount, dipAccount, tankSteps } from '../../../src/ledger/water/dip-account.ts';
import { givings } from '../../../src/ledger/water/given.ts';
import { tankFacts } from '../../../src/ledger/water/tank-facts.ts';
import type { RoofRecord } from '../../../src/records/roof.ts';
import { dayRows, planted, ROOFS, seasonOf, stationOf, told, wateredGarden } from './watered-garden.ts';

/** Eight tenths of the rain run off: on 10 m² eight litres a millimetre. */
const EIGHT_TENTHS: readonly RoofRecord[] = ROOFS.map((roof) => ({ ...roof, runoff_low: 0.7, runoff_high: 0.9 }));
const BOX = 'shape: box, length_cm: 100, width_cm: 80, height_cm: 125, tap_cm: 5';
const ROOF = 'roof_m2: 10, roof_of: metal, first_flush_l: 20';

interface Told {
  readonly tank?: string;
  /** By day of June. */
  readonly rain?: Readonly<Record<number, number | ''>>;
  readonly dips: string;
  readonly waterings?: string;
  readonly station?: boolean;
  readonly words?: boolean;
}

function gardenOf({ tank = `${BOX}, ${ROOF}`, rain = {}, dips, waterings = '', words = false }: Told) {
  return wateredGarden({
    settings: `tank: {${tank}}\n`,
    plantings: planted('P1', 'S1'),
    season: { dips, waterings },
    heading: words ? 'date,rain,tmax_c,tmin_c' : 'date,rain_mm,tmax_c,tmin_c',
    weather: dayRows('2025-06-01', 30, (index) => `${rain[index + 1] ?? (words ? 'none' : 0)},25,12`),
  });
}

function accountOf(of: Told): DipAccount | null {
  const garden = gardenOf(of);
  const season = seasonOf(garden);
  const facts = told(tankFacts(garden, EIGHT_TENTHS));
  return dipAccount(facts, season, givings(garden, season), of.station === false ? null : stationOf(garden), 20);
}
const dip = (day: number, of: string): string => `- {dipped_on: 2025-06-${String(day).padStart(2, '0')}, ${of}}\n`;
const drawn = (day: number, litres: number, from = 'tank'): string =>
  `- {watered_on: 2025-06-${String(day).padStart(2, '0')}, spots: [S1], volume_l: ${litres}, from: ${from}}\n`;

/**
 * 500 litres on the 1st. The 2nd brings 10 mm, 80 litres less 20 thrown away: 560. On the 3rd 90 are drawn: 470; mains
 * water leaves it alone. On the 8th the stick says 460: ten less in a week.
 */
const WEEK: Told = {
  rain: { 2: 10 },
  waterings: `${drawn(3, 90)}${drawn(4, 70, 'mains')}`,
  dips: `${dip(1, 'volume_l: 500')}${dip(8, 'volume_l: 460')}`,
};

describe('from one dip to the next', () => {
  test('a week by hand', () => {
    const found = told(accountOf(WEEK));
    expect(found.pairs.map(({ reckoned_l, days }) => [reckoned_l, days])).toEqual([[expect.closeTo(470, 9), 7]]);
    expect(found.bias_l_week).toBeCloseTo(-10, 9);
    expect(found.dips.map(({ day, litres }) => [day, litres])).toEqual([
      ['2025-06-01', 500],
      ['2025-06-08', 460],
    ]);
  });
  test('a depth tells the same: 62.5 and 57.5 cm of a floor of 0.8 m²', () => {
    const dips = `${dip(1, 'depth_cm: 62.5')}${dip(8, 'depth_cm: 57.5')}`;
    expect(accountOf({ ...WEEK, dips })?.bias_l_week).toBeCloseTo(-10, 9);
  });
  test('two joined tanks stand level, and the roof fills both', () => {
    const dips = `${dip(1, 'depth_cm: 31.25')}${dip(8, 'depth_cm: 28.75')}`;
    expect(accountOf({ ...WEEK, dips, tank: `${BOX}, ${ROOF}, count: 2` })?.bias_l_week).toBeCloseTo(-10, 9);
  });
  test('the day of the first dip counts, cans and rain after the stick; that of the second does not', () => {
    const of = { ...WEEK, waterings: `${drawn(1, 90)}${drawn(8, 50)}`, rain: { 1: 10, 8: 30 } };
    expect(accountOf(of)?.pairs[0]?.reckoned_l).toBeCloseTo(470, 9);
  });
  test('cans of several spots and entries on one day are drawn together', () => {
    const waterings = `${drawn(3, 50)}${drawn(3, 40)}`;
    expect(accountOf({ ...WEEK, waterings })?.pairs[0]?.reckoned_l).toBeCloseTo(470, 9);
  });
  test('it spills over the brim, and gives nothing from below the tap', () => {
    // 40 litres lie below the tap.
    const full = { rain: { 2: 100 }, dips: `${dip(1, 'volume_l: 500')}${dip(8, 'volume_l: 1000')}` };
    expect(accountOf(full)?.pairs[0]?.reckoned_l).toBe(1000);
    const low = { waterings: drawn(3, 90), dips: `${dip(1, 'volume_l: 100')}${dip(8, 'volume_l: 40')}` };
    expect(accountOf(low)?.pairs[0]?.reckoned_l).toBe(40);
    expect(accountOf(low)?.bias_l_week).toBe(0);
  });
});

describe('over several pairs', () => {
  test('what is off is spread over all their days', () => {
    // First pair as above, ten less in 7 days; then 460 with nothing in and out, and 431 three weeks later: 29 less in 21.
    const dips = `${WEEK.dips}${dip(29, 'volume_l: 431')}`;
    const found = told(accountOf({ ...WEEK, dips }));
    expect(found.pairs.map(({ days }) => days)).toEqual([7, 21]);
    expect(found.bias_l_week).toBeCloseTo((-39 * 7) / 28, 9);
  });
  test('each starts anew from what the stick said', () => {
    const dips = `${dip(1, 'volume_l: 500')}${dip(8, 'volume_l: 900')}${dip(15, 'volume_l: 900')}`;
    const found = told(accountOf({ ...WEEK, dips }));
    expect(found.pairs.map(({ reckoned_l }) => reckoned_l)).toEqual([expect.closeTo(470, 9), 900]);
    expect(found.bias_l_week).toBeCloseTo(430 / 2, 9);
  });
  test('a span with a day nobody wrote the rain of is left out, and a word is enough', () => {
    const dips = `${WEEK.dips}${dip(15, 'volume_l: 400')}`;
    const gap = told(accountOf({ ...WEEK, dips, rain: { 2: 10, 14: '' } }));
    expect(gap.pairs.map(({ to }) => to.day)).toEqual(['2025-06-08']);
    // The day of the last dip itself is not part of it.
    expect(accountOf({ ...WEEK, dips, rain: { 2: 10, 15: '' } })?.pairs).toHaveLength(2);
    expect(accountOf({ dips, words: true })?.pairs).toHaveLength(2);
  });
  test('two dips on one day make no pair, and one without a day is no dip', () => {
    const dips = `${dip(1, 'id: a, volume_l: 500')}${dip(1, 'id: b, volume_l: 480')}${dip(8, 'volume_l: 480')}- {dipped_on: 2025-06, volume_l: 9}\n`;
    const found = told(accountOf({ dips }));
    expect(found.dips).toHaveLength(3);
    expect(found.pairs.map(({ from, reckoned_l }) => [from.litres, reckoned_l])).toEqual([[480, 480]]);
  });
});

describe('nothing to compare', () => {
  test('without a dip that tells litres there is no account', () => {
    expect(accountOf({ dips: '' })).toBeNull();
    expect(accountOf({ tank: `holds_l: 1000, ${ROOF}`, dips: dip(1, 'depth_cm: 50') })).toBeNull();
  });
  test('one dip, no roof or no station leave dips without pairs', () => {
    const nothing = { pairs: [], bias_l_week: null };
    expect(accountOf({ dips: dip(1, 'volume_l: 500') })).toMatchObject(nothing);
    expect(accountOf({ ...WEEK, tank: BOX })).toMatchObject({ ...nothing, dips: [{}, {}] });
    expect(accountOf({ ...WEEK, station: false })).toMatchObject(nothing);
  });
});

test('the tank goes on over days nobody wrote of, as if they were dry', () => {
  const garden = gardenOf({ ...WEEK, rain: { 2: 10, 4: '' } });
  const facts = told(tankFacts(garden, EIGHT_TENTHS));
  const from = { day: '2025-06-01' as Day, litres: 500, key: '' };
  const given = givings(garden, seasonOf(garden));
  const steps = tankSteps(facts, told(facts.roof), from, '2025-06-05' as Day, given, stationOf(garden), 20);
  expect(steps.map(({ end_l }) => end_l)).toEqual([500, 560, 470, 470, 470].map((litres) => expect.closeTo(litres, 9)));
});
