import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/day.ts';
import type { Garden } from '../../../src/garden/garden.ts';
import { isSouthern } from '../../../src/garden/hemisphere.ts';
import { type CropYear, cropYear } from '../../../src/ledger/year/crop-year.ts';
import { planSeasonOf } from '../../../src/ledger/year/plan-season.ts';
import { thawStart, warmUps } from '../../../src/ledger/year/warm-up.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

const FRAME = {
  'garden.yaml':
    'name: Test plot\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\nspots: [{id: S1, kind: mound}, {id: S2, kind: mound}]\n',
  'varieties.yaml': '- {id: amber, name: Amber, crop: globe, seed: unknown}\n',
};
const CROP = 'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n';
const STATED =
  'ripe_days: {set_days_low: 35, set_days_high: 45, planted_days_low: 85, sources: [trade-practice]}\nsowing: {soil_best_low_c: 21, soil_best_high_c: 35, pot_days_low: 21, pot_days_high: 28, plant_out_soil_c: 18, sources: [trade-practice]}\nseason: {days_low: 80, days_high: 110, sources: [trade-practice]}\n';

const season = (year: number, files: Readonly<Record<string, string>>): Record<string, string> => ({
  [`seasons/${year}/season.yaml`]: `label: ${year}\nstarts_on: ${year}-04-01\nends_on: ${year}-10-31\n`,
  ...Object.fromEntries(Object.entries(files).map(([name, text]) => [`seasons/${year}/${name}.yaml`, text])),
});

function gardenOf(texts: Readonly<Record<string, string>>, crop = CROP): Garden {
  const { garden, problems } = linkTexts({ ...FRAME, 'crops/globe.yaml': crop, ...texts });
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid garden: ${JSON.stringify(errors)}`);
  return garden;
}

const yearOfGlobe = (garden: Garden, today: string): CropYear => {
  const crop = garden.crops.get('globe');
  if (!crop) throw new Error('no globe');
  return cropYear(garden, today as Day, crop);
};

const band = ({ bands }: CropYear, step: keyof CropYear['bands']) => {
  const found = bands[step];
  return found && [found.from_days, found.to_days, found.first, found.last, found.basis, found.seasons];
};

const planting = (year: number, spot: string, planted: string, more = ''): string =>
  `- {id: ${spot}-${year}, spot: ${spot}, variety: amber, planted_on: ${planted}, plants_set: 2${more}}\n`;

describe('the season a plan is for', () => {
  const garden = gardenOf(season(2024, { plantings: planting(2024, 'S1', '2024-05-20') }));

  test('is the one that runs until its last day, then the next', () => {
    expect(planSeasonOf(garden, '2024-10-30' as Day)).toMatchObject({ label: '2024', running: true });
    expect(planSeasonOf(garden, '2024-10-31' as Day)).toEqual({
      label: '2025',
      starts_on: '2025-04-01',
      ends_on: '2025-10-31',
      running: false,
    });
    expect(planSeasonOf(garden, null)).toBeNull();
  });

  test('runs over New Year where the summer does', () => {
    const southern = gardenOf({
      'seasons/2024-25/season.yaml': 'label: 2024/25\nstarts_on: 2024-10-15\nends_on: 2025-03-14\n',
      'seasons/2024-25/plantings.yaml': planting(24, 'S1', '2024-11-12'),
    });
    expect(planSeasonOf(southern, '2025-03-14' as Day)).toMatchObject({ label: '2025/26', starts_on: '2025-10-15' });
    expect(isSouthern(southern)).toBe(true);
    // 12 November of 2025, and 85 days on: 18 days of November, 31 + 31, 5 of February.
    expect(band(yearOfGlobe({ ...southern, crops: gardenOf({}, CROP + STATED).crops }, '2025-03-14'), 'pick')).toEqual([
      85,
      110,
      '2026-02-05',
      '2026-03-02',
      'sources',
      0,
    ]);
  });
});

describe('a first year’s bands come from the crop’s file', () => {
  const garden = gardenOf(season(2025, { plantings: planting(2025, 'S1', '2025-05-20') }), CROP + STATED);
  const year = yearOfGlobe(garden, '2025-05-20');

  test('sown three to four weeks before', () =>
    expect(band(year, 'sow')).toEqual([-28, -21, '2025-04-22', '2025-04-29', 'sources', 0]));
  test('planted this season', () => {
    expect(year.planting_out).toMatchObject({ day: '2025-05-20', from: 'planted', count: 1 });
    expect(band(year, 'plant-out')?.slice(2, 4)).toEqual(['2025-05-20', '2025-05-20']);
  });
  test('mulched two to four weeks after, common practice', () =>
    expect(band(year, 'mulch')).toEqual([14, 28, '2025-06-03', '2025-06-17', 'practice', 0]));
  test('set 35 to 45 days before the 85th, fed for leaf until then', () => {
    expect(band(year, 'set')).toEqual([40, 50, '2025-06-29', '2025-07-09', 'sources', 0]);
    expect(band(year, 'feed-leaf')).toEqual([0, 40, '2025-05-20', '2025-06-29', 'sources', 0]);
  });
  test('a crop without traits has a planting day and mulch, and nothing made up', () => {
    const bare = yearOfGlobe(gardenOf(season(2025, { plantings: planting(2025, 'S1', '2025-05-20') })), '2025-05-20');
    expect(Object.entries(bare.bands).flatMap(([step, found]) => (found ? [step] : []))).toEqual([
      'plant-out',
      'mulch',
    ]);
  });
});

describe('a garden’s own records come first', () => {
  const garden = gardenOf(
    {
      ...season(2023, {
        plantings:
          planting(2023, 'S1', '2023-05-18', ', sown_on: 2023-04-20') +
          planting(2023, 'S2', 'unknown', ', sown_on: 2023-01-01'),
        fruits:
          '- {id: F1, planting: S1-2023, fate: picked, set: {set_on: 2023-07-01}, pick: {picked_on: 2023-08-10, reason: ripe}}\n- {id: F2, planting: S1-2023, fate: picked, set: {set_on: 2023-07}, pick: {picked_on: 2023-08-01, reason: forecast}}\n- {id: F3, planting: S1-2023, fate: aborted, set: {set_on: 2023-06-01}}\n',
        mulching:
          '- {laid_on: 2023-06-08, material: straw}\n- {laid_on: 2023-09-01, material: straw, work: taken-off}\n- {laid_on: 2023-07-20, material: grass, work: topped-up}\n',
      }),
      ...season(2024, {
        plantings: planting(2024, 'S1', 'about 2024-05-22', ', sown_on: 2024-05-01'),
        pickings:
          '- {planting: S1-2024, picked_on: 2024-09-01, count: 3}\n- {planting: S1-2024, picked_on: 2024-07-01, count: 0}\n',
        flowering:
          '- {seen_on: 2024-06-21, planting: S1-2024, what: first-female}\n- {seen_on: 2024-06-01, planting: S1-2024, what: first-male}\n',
      }),
    },
    CROP + STATED,
  );
  const year = yearOfGlobe(garden, '2024-12-01');

  test('planting out: the days of both years, in the next', () =>
    expect(year.planting_out).toEqual({
      day: '2025-05-18',
      first: '2025-05-18',
      last: '2025-05-22',
      from: 'seasons',
      count: 2,
    }));
  test('sowing: 28 days before in one year, 21 in the other; a planting of unknown day counts for nothing', () =>
    expect(band(year, 'sow')).toEqual([-28, -21, '2025-04-20', '2025-04-27', 'own', 2]));
  test('mulch: 21 days after, and what was taken off is none', () =>
    expect(band(year, 'mulch')).toEqual([21, 21, '2025-06-08', '2025-06-08', 'own', 1]));
  test('set: 44 days after; a month names no day, and an aborted fruit no set', () =>
    expect(band(year, 'set')).toEqual([44, 44, '2025-07-01', '2025-07-01', 'own', 1]));
  test('fed for leaf until the first female flower, 30 days after', () =>
    expect(band(year, 'feed-leaf')).toEqual([0, 30, '2025-05-18', '2025-06-17', 'own', 1]));
  test('picked 84 to 102 days after; a fruit picked for the forecast and an empty basket are none', () =>
    expect(band(year, 'pick')).toEqual([84, 102, '2025-08-10', '2025-08-28', 'own', 2]));
});

describe('the warm-up of a station', () => {
  /** A winter of 5 °C that ends on a day of the year, then 20 °C. */
  const stationOf = (warmFrom: readonly string[], skip: readonly string[] = []): Garden => {
    const lines = warmFrom.flatMap((from) => {
      const year = Number(from.slice(0, 4));
      return Array.from({ length: 200 }, (_, index) => {
        const date = new Date(Date.UTC(year, 0, 1 + index)).toISOString().slice(0, 10);
        if (skip.includes(date)) return [];
        return date < from ? `${date},2,8` : `${date},14,26`;
      }).flat();
    });
    return gardenOf(
      {
        ...season(2025, { plantings: planting(2025, 'S1', 'unknown') }),
        'garden.yaml': `${FRAME['garden.yaml']}weather: {station: post, read: midnight}\n`,
        'weather/post.csv': `date,tmin_c,tmax_c\n${lines.join('\n')}\n`,
      },
      CROP + STATED,
    );
  };
  const JANUARY = '2025-01-01' as Day;

  test('is the first day that ends seven of 18 °C in the mean: with 5 and 20 °C six warm days of seven are 17.9', () => {
    const [station] = stationOf(['2025-05-01']).stations;
    if (!station) throw new Error('no station');
    // 1 May is day 120 after New Year; the seventh warm day is 7 May.
    expect(warmUps(station, JANUARY, 18)).toEqual([126]);
    expect(warmUps(station, JANUARY, 17.8)).toEqual([125]);
    expect(warmUps(station, JANUARY, 21)).toEqual([]);
  });

  test('needs every day of its seven, and nineteen in twenty before', () => {
    const days = (count: number, from: string): string[] =>
      Array.from({ length: count }, (_, index) =>
        new Date(Date.parse(from) + index * 86_400_000).toISOString().slice(0, 10),
      );
    const of = (skip: readonly string[]): number[] => {
      const [station] = stationOf(['2025-05-01'], skip).stations;
      return station ? warmUps(station, JANUARY, 18) : [];
    };
    expect(of(['2025-05-03'])).toEqual([129]); // the seven begin on 4 May
    expect(of(days(6, '2025-02-01'))).toEqual([126]);
    expect(of(days(7, '2025-02-01'))).toEqual([]);
  });

  test('begins in July in the south', () => {
    expect(thawStart('2025-10-15' as Day, true)).toBe('2025-07-01');
    expect(thawStart('2026-01-10' as Day, true)).toBe('2025-07-01');
    expect(thawStart('2025-04-15' as Day, false)).toBe('2025-01-01');
  });

  test('stands in for planting days nobody wrote down, from five years on', () => {
    const five = ['2021-05-01', '2022-05-05', '2023-04-28', '2024-05-10', '2025-05-03'];
    expect(yearOfGlobe(stationOf(five), '2025-04-01').planting_out).toEqual({
      day: '2025-05-09', // the middle one of 4, 7, 9, 11 and 16 May
      first: '2025-05-04',
      last: '2025-05-17', // 10 May of a leap year is a day later in the year
      from: 'warm-up',
      count: 5,
    });
    expect(yearOfGlobe(stationOf(five.slice(1)), '2025-04-01').planting_out).toBeNull();
  });
});
