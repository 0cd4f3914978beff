import { describe, expect, test } from 'vitest';
import type { BackModel } from '../../../content/water/back-model.ts';
import { water } from '../../../content/water/chapter.ts';
import type { NeedModel } from '../../../content/water/need-model.ts';
import type { Page } from '../../../src/book/page.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import type { Day } from '../../../src/day.ts';
import { createFormat } from '../../../src/format.ts';
import { asOf } from '../../../src/garden/as-of.ts';
import { lastDay } from '../../../src/garden/last-day.ts';
import { openLedger } from '../../../src/ledger/ledger.ts';
import type { Rhythm } from '../../../src/ledger/water/rhythm.ts';
import { dayRows, type Parts, planted, told, wateredGarden } from '../../ledger/water/watered-garden.ts';

const reference = loadReference('data/reference');

interface Model {
  readonly level_chart: string | null;
  readonly needs: readonly NeedModel[];
  readonly unknown: readonly string[];
  readonly lacks: string | null;
  readonly back: BackModel | null;
  readonly earlier: readonly { readonly label: string }[];
}

function pagesOf(parts: Parts, today?: string): readonly Page[] {
  const whole = wateredGarden(parts);
  const day = (today as Day | undefined) ?? told(lastDay(whole));
  const garden = asOf(whole, day);
  return water.write({
    garden,
    today: day,
    ledger: openLedger(garden, day, undefined, reference),
    reference,
    format: createFormat({ units: 'metric', locale: 'en-GB' }),
  });
}

const modelOf = (parts: Parts, today?: string): Model => told(pagesOf(parts, today)[0]).model as Model;

/** Five years of the same warm day, April to October, with 2 mm of rain. */
const FIVE_YEARS = [2021, 2022, 2023, 2024, 2025].map((year) => dayRows(`${year}-04-01`, 214, '2,30,16')).join('');

/** Two square metres a bowl, ten a spot; amber on both. */
const PLOT: Parts = {
  weather: FIVE_YEARS,
  spots:
    '  - {id: S1, kind: mound, area_m2: 10, bowl_m2: 2, soil: loam}\n  - {id: S2, kind: mound, area_m2: 10, bowl_m2: 2, soil: loam}\n',
  plantings: planted('P1', 'S1') + planted('P2', 'S2'),
  season: {
    waterings:
      '- {watered_on: 2025-06-01, cans_each: 2}\n- {watered_on: 2025-07-05, spots: [S1], volume_l: 45}\n- {watered_on: 2025-07-15, spots: [S1], roughly: plenty}\n',
    pickings: '- {planting: P1, picked_on: 2025-08-27, count: 4, mass_kg: 12}\n',
  },
  settings: 'place: {latitude: 45, longitude: 0, elevation_m: 100}\nmeasures: {can_l: 9}\n',
};

describe('what a spot wants', () => {
  const [crop] = modelOf(PLOT).needs;
  test('the ground of the average spot, and its four stages in their order', () => {
    expect(crop).toMatchObject({
      spots: 2,
      canopy_m2: 10,
      root_m2: 10,
      bowl_m2: 2,
      depth_cm: 50,
      mulch: 'none',
      years: 5,
    });
    expect(told(crop).rows.map(({ stage }) => stage)).toEqual(['initial', 'development', 'middle', 'late']);
    expect(told(crop).full.stage).toBe('middle');
  });
  test('cans are litres by the garden’s own can; rain of a week on its ground: 7 days of 2 mm on 10 m² are 140 litres', () => {
    for (const { weeks, rain_cans } of told(crop).rows) {
      expect(weeks.usual.cans.value).toBeCloseTo(told(weeks.usual.litres.value) / 9, 9);
      expect(rain_cans.value).toBeCloseTo(140 / 9, 9);
    }
  });
  test('a missed week comes back in three parts, a drip line gives a seventh of a hot week', () => {
    const { full, way_back_cans, drip_l_per_day } = told(crop);
    expect(way_back_cans.value).toBeCloseTo(told(full.weeks.usual.cans.value) / 3, 9);
    expect(drip_l_per_day.value).toBeCloseTo(told(full.weeks.hot.litres.value) / 7, 9);
  });
  test('ground ten square metres lasts five times as long as its bowl of two', () => {
    const { bowl_days, ground_days } = told(crop).full.weeks.hot;
    expect(told(ground_days?.low.value)).toBeCloseTo(5 * told(bowl_days?.low.value), 9);
    expect(told(bowl_days?.high.value)).toBeGreaterThan(told(bowl_days?.low.value));
  });
});

describe('what is missing for a number', () => {
  test.each([
    ['nothing', {}, null],
    ['a place', { settings: '' }, 'place'],
    ['years', { weather: dayRows('2025-04-01', 214, '2,30,16') }, 'years'],
    ['a thermometer', { weather: dayRows('2025-04-01', 214, '2,,') }, 'thermometer'],
    ['a station', { weather: undefined }, 'thermometer'],
    [
      'traits',
      { crop: 'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n' },
      'trait',
    ],
  ] as const)('%s', (_name, parts, lacks) => {
    // An undefined part is one left out.
    const { weather, ...rest } = { ...PLOT, ...parts } as Parts;
    const model = modelOf(weather === undefined ? rest : { ...rest, weather });
    expect(model.lacks).toBe(lacks);
    expect(model.needs.length > 0).toBe(lacks === null);
  });
  test('before the first season', () => {
    const whole = wateredGarden(PLOT);
    const { pages } = bookOf({ reference: { ...reference, crops: [] } }, { ...whole, seasons: [] }, null);
    expect(pages.find(({ path }) => path === 'water/')?.model).toMatchObject({
      lacks: 'season',
      back: null,
      tank: null,
    });
  });
});

describe('looked back', () => {
  const back = told(modelOf(PLOT).back);
  const [one, two] = back.rows;
  test('given: 2 cans of 9, 45 litres and plenty (two cans) are 81 litres; the other spot got two cans', () => {
    expect(one).toMatchObject({ spot: 'S1', given: { value: 9 }, waterings: { value: 3 } });
    expect(two).toMatchObject({ spot: 'S2', given: { value: 2 }, waterings: { value: 1 } });
    expect(back.mean.given.value).toBe(5.5);
    expect(back.in_words).toBe(1);
  });
  test('81 litres for 12 kg; nothing weighed, nothing said', () => {
    expect(one?.l_per_kg.value).toBeCloseTo(6.75, 9);
    expect(two?.l_per_kg).toMatchObject({ value: null, reason: { code: 'none-weighed' } });
  });
  test('rain: from 20 May to the last picking on 27 August 100 days of 2 mm on 10 m²', () => {
    expect(one?.rain.value).toBeCloseTo(2000 / 9, 9);
    expect(back.rain_untold_days).toBe(0);
  });
  test('the longest gap: from 16 July to 27 August 43 days without', () => {
    expect(one?.gap_days.value).toBe(43);
  });
  test('in flower and fruit S1 was watered once and S2 never: 49 days up to the first picking, and 30 by the source', () => {
    // Growing ends after 50 days, on 8 July, so that 15 July alone lies in it.
    expect(back.rhythm?.every_days.value).toBeCloseTo(49 + 30, 9);
    expect(back.rhythm?.cans.value).toBeCloseTo(2, 9);
  });
  test('the spot that went short most often is named, and none where none did', () => {
    // Alike but for their water: 200 mm on S1 early in July, none on S2.
    const waterings = '- {watered_on: 2025-07-05, spots: [S1], volume_l: 2000}\n';
    const weather = FIVE_YEARS.replaceAll(',2,', ',0,');
    expect(modelOf({ ...PLOT, weather, season: { waterings } }, '2025-08-27').back?.driest).toBe('S2');
    const wet = modelOf({ ...PLOT, weather: FIVE_YEARS.replaceAll(',2,', ',20,') }).back;
    expect([wet?.driest, wet?.rows.map(({ short_days }) => short_days.value)]).toEqual([null, [0, 0]]);
  });
  test('a season without a watering has no look back', () => {
    expect(modelOf({ ...PLOT, season: {} }).back).toBeNull();
  });
  test('an earlier season has a page of its own', () => {
    const files = {
      'seasons/2024/season.yaml': 'label: 2024\nstarts_on: 2024-04-01\nends_on: 2024-10-31\n',
      'seasons/2024/plantings.yaml': planted('O1', 'S1', '2024-05-20'),
      'seasons/2024/waterings.yaml': '- {watered_on: 2024-06-01, cans_each: 1}\n',
    };
    const pages = pagesOf({ ...PLOT, files });
    expect(pages.map(({ path }) => path)).toEqual(
      expect.arrayContaining(['water/', 'water/2024/', 'water/card/globe/']),
    );
    expect(pages.find(({ path }) => path === 'water/2024/')).toMatchObject({ listed: false, earlier: true });
    expect((told(pages[0]).model as Model).earlier).toEqual([{ label: '2024', path: 'water/2024/' }]);
  });
});

describe('a finger in the soil', () => {
  // No rain from planting on: roots of 1 m in loam of 130 to 180 mm, half of it free: dry some time in July, full in May.
  const DRY: Parts = {
    ...PLOT,
    weather:
      [2021, 2022, 2023, 2024].map((year) => dayRows(`${year}-04-01`, 214, '2,30,16')).join('') +
      dayRows('2025-04-01', 214, '0,30,16'),
  };
  const fingerOf = (soil: string) => modelOf({ ...DRY, season: { ...PLOT.season, soil } }).back?.finger;
  test('agrees with the reckoning or not, spot by spot', () => {
    expect(fingerOf('- {felt_on: 2025-05-25, below: damp}\n')).toEqual({ agreed: 2, of: 2, drier: 0, wetter: 0 });
    expect(fingerOf('- {felt_on: 2025-05-25, below: dry, spots: [S1]}\n')).toEqual({
      agreed: 0,
      of: 1,
      drier: 1,
      wetter: 0,
    });
    expect(fingerOf('- {felt_on: 2025-08-20, below: dry}\n')).toEqual({ agreed: 2, of: 2, drier: 0, wetter: 0 });
    expect(fingerOf('- {felt_on: 2025-08-20, below: wet}\n')).toEqual({ agreed: 0, of: 2, drier: 0, wetter: 2 });
  });
  test('only where somebody felt below, on a day that is known', () => {
    expect(fingerOf('- {felt_on: 2025-08-20, top: dry}\n- {felt_on: 2025-08, below: dry}\n')).toBeNull();
  });
});

test('a card tells whole cans for a usual and a hot week of each stage', () => {
  const card = pagesOf(PLOT).find(({ form }) => form === 'card');
  const { rows } = told(card).model as { rows: readonly { usual: Rhythm; hot: Rhythm }[] };
  expect(rows).toHaveLength(4);
  for (const { cans, days } of rows.flatMap(({ usual, hot }) => [usual, hot])) {
    expect(Number.isInteger(cans) && Number.isInteger(days)).toBe(true);
    expect(days).toBeGreaterThanOrEqual(1);
    expect(days).toBeLessThanOrEqual(7);
    expect(cans).toBeGreaterThanOrEqual(1);
  }
  const { weather, ...unweathered } = PLOT;
  expect(pagesOf(unweathered).some(({ form }) => form === 'card')).toBe(false);
});

describe('a tub', () => {
  const tub = (soil: string): Parts => ({
    ...PLOT,
    weather: FIVE_YEARS.replaceAll(',2,', ',0,'),
    spots: `  - {id: T1, kind: tub, area_m2: 0.25, soil_depth_cm: 40, soil: ${soil}}\n`,
    plantings: planted('P1', 'T1'),
    season: { waterings: '- {watered_on: 2025-06-01, cans_each: 1}\n', soil: '- {felt_on: 2025-06-10, below: dry}\n' },
  });
  test('of potting mix, whose store no source tells here, is given and wanted water and has no balance', () => {
    const { back, needs } = modelOf(tub('potting-mix'));
    expect(back?.rows[0]).toMatchObject({
      spot: 'T1',
      given: { value: 1 },
      short_days: { value: null, reason: { code: 'soil-unknown' } },
      swing: { value: null, reason: { code: 'soil-unknown' } },
    });
    expect(back).toMatchObject({ driest: null, finger: null });
    expect(back?.rows[0]?.wanted.value).toBeGreaterThan(0);
    expect(needs[0]?.full.weeks.hot.bowl_days).toBeNull();
    expect(modelOf(tub('potting-mix'))).toMatchObject({ level_chart: null });
  });
  test('of loam holds what its 40 cm hold: 100 litres of earth, 13 to 18 litres of water', () => {
    const { back, needs } = modelOf(tub('loam'), '2025-08-01');
    expect(back?.rows[0]?.short_days.value).toBeGreaterThan(0);
    expect(needs[0]).toMatchObject({ root_m2: 0.25, depth_cm: 40 });
    expect(back?.finger).toMatchObject({ of: 1 });
  });
});

test('by stage the average spot got and wanted what all its days add up to', () => {
  const back = told(modelOf(PLOT).back);
  expect(back.stages.map(({ stage }) => stage)).toEqual(['initial', 'development', 'middle', 'late']);
  // 1 June is the 13th day of 20: two cans each; 5 July the 47th, 45 litres on one of two spots; 15 July two cans on one.
  expect(back.stages.map(({ given }) => given.value)).toEqual([2, 2.5, 1, 0]);
  const sum = back.stages.reduce((all, { wanted }) => all + told(wanted.value), 0);
  expect(sum).toBeCloseTo(told(back.mean.wanted.value), 9);
});
