import { describe, expect, test } from 'vitest';
import { water } from '../../../content/water/chapter.ts';
import type { CropNeed } from '../../../content/water/crop-need.ts';
import { rhythmOf } from '../../../content/water/rhythm.ts';
import type { Page } from '../../../src/book/page.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { addDays, type Day } from '../../../src/day.ts';
import { CROPS } from '../../published/crop-water/fao-56-tables.ts';
import { HARGREAVES } from '../../published/fao-56/radiation.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

const reference = loadReference('data/reference');
const PLACE = `place: {latitude: ${45 + 43 / 60}, longitude: 0, elevation_m: 200}\n`;
const OWN = 'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n';
const { tmax, tmin } = HARGREAVES.day;

/** Julys of Example 20 with 2 mm a day, or another span of days a year. */
function weatherOf(years: readonly number[], from = '07-01', days = 31): string {
  const rows = years.flatMap((year) =>
    Array.from({ length: days }, (_, index) => `${addDays(`${year}-${from}` as Day, index)},2,${tmax},${tmin}\n`),
  );
  return `date,rain_mm,tmax_c,tmin_c\n${rows.join('')}`;
}

interface Rows {
  readonly place?: string;
  readonly weather?: string;
  readonly spots?: string;
  readonly crop?: string;
  readonly season?: boolean;
  readonly settings?: string;
}

interface Model {
  readonly needs: readonly (CropNeed & { readonly read: readonly { readonly label: string }[] })[];
  readonly unread: readonly string[];
  readonly unknown: readonly string[];
  readonly lacks: string | null;
}

function pageOf({
  place = PLACE,
  weather = weatherOf([2018, 2019, 2021, 2022, 2023]),
  spots = 'spots: [{id: S1, kind: mound, area_m2: 4}, {id: S2, kind: mound, area_m2: 6}, {id: T1, kind: tub}]\n',
  crop = 'watermelon',
  season = true,
  settings = '',
}: Rows = {}): { page: Page; model: Model } {
  const { garden, problems } = linkTexts({
    'garden.yaml': `name: T\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\n${weather && 'weather: {station: post, read: evening}\n'}${place}${settings}${spots}`,
    'crops/globe.yaml': OWN,
    'varieties.yaml': `- {id: amber, name: Amber, crop: ${crop}, seed: unknown}\n- {id: birch, name: Birch, crop: globe, seed: unknown}\n`,
    ...(weather && { 'weather/post.csv': weather }),
    ...(season && {
      'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-08-31\n',
      'seasons/2025/plantings.yaml': ['S1', 'S2', 'T1']
        .map((spot) => `- {id: P${spot}, spot: ${spot}, variety: amber, planted_on: 2025-06-20, plants_set: 2}\n`)
        .join(''),
    }),
  });
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid garden: ${JSON.stringify(errors)}`);
  const [page] = water.write(bookOf({ reference }, garden, null).facts);
  if (!page) throw new Error('there is no page');
  return { page, model: page.model as Model };
}

/** FAO-56, table 12: the full stage of watermelon has 1.00, of tomato 1.15. */
const KC = { watermelon: CROPS.watermelon?.kc[1] ?? 0, tomato: CROPS.tomato?.kc[1] ?? 0 };

describe('the need of a month', () => {
  // Example 20, exact 5.03 on the middle day, printed 5.0 mm a day; the mean spot has 5 m²: 5.0 · 7 · 1.00 · 5 = 175 l a week.
  test.each(['watermelon', 'tomato'] as const)(
    'is FAO’s thirst times FAO’s coefficient of %s times the ground',
    (crop) => {
      const [need] = pageOf({ crop }).model.needs;
      expect(need?.ground).toEqual({ area_m2: 5, from: 'spots' });
      expect(need?.peak).toMatchObject({ month: 7, label: 'Jul' });
      const printed = Number(HARGREAVES.printed) * 7 * KC[crop] * 5;
      expect(Math.abs((need?.peak.l_per_week.value ?? 0) / printed - 1)).toBeLessThan(0.01);
      expect(need?.peak.l_per_week).toMatchObject({ id: `water.${crop}.07.l_per_week`, n: 5, source: 'fao-56' });
    },
  );

  // 2 mm a day on 5 m² are 10 l a day; a can of 7 l.
  test('cans are the garden’s own, rain is on the same ground', () => {
    const peak = pageOf({ settings: 'measures: {can_l: 7}\n' }).model.needs[0]?.peak;
    expect(peak?.cans_per_week.value).toBeCloseTo((peak?.l_per_week.value ?? 0) / 7, 10);
    expect(peak?.rain_l_per_week.value).toBeCloseTo(70, 10);
  });

  test('months run from planting out to the season’s end, and one too little read has no number and says so', () => {
    const { model, page } = pageOf();
    expect(model.needs[0]?.months.map(({ month }) => month)).toEqual([6, 7, 8]);
    expect([model.needs[0]?.read.map(({ label }) => label), model.unread]).toEqual([['Jul'], ['Jun', 'Aug']]);
    expect(page.figures.find(({ id }) => id === 'water.watermelon.06.l_per_week')).toMatchObject({
      value: null,
      reason: { code: 'few-years' },
    });
  });

  test('without any spot’s ground it is that of one plant, the middle of the room others give', () => {
    const [need] = pageOf({ spots: 'spots: [{id: S1, kind: tub}, {id: S2, kind: tub}, {id: T1, kind: tub}]\n' }).model
      .needs;
    const room = reference.crops.find(({ id }) => id === 'watermelon')?.room;
    expect(need?.ground.from).toBe('room');
    expect(need?.ground.area_m2).toBeCloseTo(
      ((room?.plant_area_low_m2 ?? 0) + (room?.plant_area_high_m2 ?? 0)) / 2,
      10,
    );
  });

  test('over New Year the months follow the season', () => {
    const { garden } = linkTexts({
      'garden.yaml':
        'name: T\nedition: home\nunits: metric\npaper: A4\nlocale: en-NZ\nweather: {station: post, read: evening}\nplace: {latitude: -40, longitude: 0, elevation_m: 5}\nspots: [{id: S1, kind: mound, area_m2: 4}]\n',
      'varieties.yaml': '- {id: amber, name: Amber, crop: watermelon, seed: unknown}\n',
      'weather/post.csv': weatherOf([2018, 2019, 2020, 2021, 2022], '12-01', 62),
      'seasons/2025-26/season.yaml': 'label: 2025/26\nstarts_on: 2025-10-01\nends_on: 2026-02-10\n',
      'seasons/2025-26/plantings.yaml': '- {id: P1, spot: S1, variety: amber, planted_on: 2025-11-15, plants_set: 1}\n',
    });
    if (!garden) throw new Error('there is no garden');
    const [page] = water.write(bookOf({ reference }, garden, null).facts);
    const need = (page?.model as Model | undefined)?.needs[0];
    expect(need?.months.map(({ month }) => month)).toEqual([11, 12, 1, 2]);
    expect(need?.read.map(({ label }) => label)).toEqual(['Dec', 'Jan']);
  });
});

describe('without a number', () => {
  test.each([
    ['season', { season: false }],
    ['thermometer', { weather: 'date,rain_mm\n2025-06-10,2\n' }],
    ['thermometer', { weather: '' }],
    ['place', { place: '' }],
    ['years', { weather: weatherOf([2021, 2022, 2023]) }],
    ['trait', { crop: 'globe' }],
  ] as const)('it says that the %s is missing', (lacks, rows) => {
    const { model, page } = pageOf(rows);
    expect([model.lacks, model.needs, page.figures, page.tables]).toEqual([lacks, [], [], []]);
  });

  test('a crop without coefficients is named beside one that has them', () =>
    expect(pageOf().model).toMatchObject({ lacks: null, unknown: ['globes'] }));
});

test('cans come seldom: one that lasts, or those of three days', () => {
  // A can of 10 l: 2.5 l a day last four days, 4 l not quite three, 30 l are nine cans in three days.
  expect([0.25, 0.4, 3, 0].map(rhythmOf)).toEqual([
    { cans: 1, days: 4 },
    { cans: 1, days: 3 },
    { cans: 9, days: 3 },
    null,
  ]);
});
