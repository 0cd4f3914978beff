import { describe, expect, test } from 'vitest';
import { loadGarden } from '../../../src/cli/load-garden.ts';
import type { Day } from '../../../src/day.ts';
import { asOf } from '../../../src/garden/as-of.ts';
import type { Garden } from '../../../src/garden/garden.ts';
import { lastDay } from '../../../src/garden/last-day.ts';
import { givings } from '../../../src/ledger/water/given.ts';
import type { SeasonWater } from '../../../src/ledger/water/season-water.ts';
import type { SpotWater } from '../../../src/ledger/water/spot-water.ts';
import { waterLedger } from '../../../src/ledger/water/water-ledger.ts';
import { SEATTLE } from '../../published/seattle-weather/daily.ts';
import { linkTexts } from '../../reading/garden-texts.ts';
import { seasonGarden } from '../../simulated/season/garden.ts';
import { SEASON_SETTINGS } from '../../simulated/season/settings.ts';
import { cropText, dayRows, planted, SOILS, told, wateredGarden } from './watered-garden.ts';

const { garden: demo, reference } = loadGarden('data/garden');
const FACTS = { soils: reference.soils, roofs: reference.roofs };

const seasonsOf = (garden: Garden, today: string, soils = FACTS.soils): readonly SeasonWater[] =>
  waterLedger(asOf(garden, today as Day), today as Day, [], { ...FACTS, soils }).seasons;

/** How far a day's account is from closed, mm: end − start = −(rain − ignored) − watering + etc + percolation − below wilting. */
function gapsOf({ days, water }: SpotWater): number[] {
  const { root_m2 } = water.ground;
  let start_mm = 0;
  return days.map(({ rain, given_l, step }) => {
    const { end, ignored_rain_mm, etc_mm, percolation_mm, below_wilting_mm } = told(step);
    const came_mm = rain.rain_mm - ignored_rain_mm + given_l / root_m2;
    const gap_mm = end.root_mm - start_mm - (etc_mm + percolation_mm - below_wilting_mm - came_mm);
    start_mm = end.root_mm;
    return gap_mm;
  });
}

/** Over the whole season, of sums. */
function seasonGap({ days, water }: SpotWater): number {
  const steps = days.map(({ step }) => told(step));
  const sum = (of: readonly number[]): number => of.reduce((total, one) => total + one, 0);
  const out_mm = sum(
    steps.map(({ etc_mm, percolation_mm, below_wilting_mm }) => etc_mm + percolation_mm - below_wilting_mm),
  );
  const in_mm =
    sum(days.map(({ rain }) => rain.rain_mm)) -
    sum(steps.map(({ ignored_rain_mm }) => ignored_rain_mm)) +
    sum(days.map(({ given_l }) => given_l)) / water.ground.root_m2;
  return told(steps.at(-1)).end.root_mm - (out_mm - in_mm);
}

const spotsOf = (seasons: readonly SeasonWater[]) => seasons.flatMap(({ spots }) => spots);

/** What must hold of every spot in any garden. */
function expectClosed(seasons: readonly SeasonWater[]): void {
  for (const { water, account } of spotsOf(seasons)) {
    const where = `${water.spot.id} ${water.days[0]?.day}`;
    expect(Math.max(...gapsOf(water).map(Math.abs)), where).toBeLessThan(1e-9);
    expect(Math.abs(seasonGap(water)), where).toBeLessThan(1e-9);
    const taw_mm = told(water.water.ground.available_mm).middle;
    for (const { step, thirst, wanted_l } of water.days) {
      const { end, ks, etc_mm, demand_mm } = told(step);
      expect(end.root_mm >= 0 && end.root_mm <= taw_mm && ks >= 0 && ks <= 1, where).toBe(true);
      expect(thirst.eto_mm >= 0 && wanted_l >= 0 && etc_mm <= demand_mm + 1e-9, where).toBe(true);
    }
    const stages = account.stages.reduce((sum, stage) => sum + stage.wanted_l, 0);
    expect(stages, where).toBeCloseTo(account.wanted_l, 6);
  }
}

/** Litres the records tell of in all, against those of the spots' accounts and of days no account reaches. */
function expectAllGiven(garden: Garden, seasons: readonly SeasonWater[]): void {
  for (const { season, spots } of seasons) {
    const given = givings(garden, season);
    for (const { water, account } of spots) {
      const [first, last] = [told(water.days[0]).day, told(water.days.at(-1)).day];
      const own = given.filter(({ spot }) => spot === water.spot.id);
      const outside = own.filter(({ day }) => day < first || day > last).reduce((sum, { litres }) => sum + litres, 0);
      const all = own.reduce((sum, { litres }) => sum + litres, 0);
      expect(account.given_l + outside, water.spot.id).toBeCloseTo(all, 9);
    }
  }
}

describe('the demo garden', () => {
  const today = told(lastDay(told(demo)));
  const garden = asOf(told(demo), today);
  const seasons = seasonsOf(garden, today);

  test('every mound of every season is reckoned', () => {
    expect(seasons.map(({ season, spots }) => [season.slug, spots.length])).toEqual(
      garden.seasons.map(({ slug, plantings }) => [slug, new Set(plantings.map(({ spot }) => spot.id)).size]),
    );
    expect(spotsOf(seasons).length).toBe(96);
  });
  test('every day and every season closes to a thousand-millionth of a millimetre', () => expectClosed(seasons));
  test('what spots were given is what the records say', () => {
    expectAllGiven(garden, seasons);
    for (const { season } of seasons) {
      // The records once more, written out: cans hold nine litres here, a word one can and its like.
      const word = { little: 4.5, some: 9, plenty: 18 };
      const planted_spots = new Set(season.plantings.map(({ spot }) => spot.id)).size;
      const litres = season.events.waterings
        .filter(({ watered_on }) => watered_on.first !== null)
        .map(({ spots, cans_each, cans, volume_l, minutes, flow_l_min, roughly }) => {
          const count = spots?.length ?? planted_spots;
          if (cans_each !== null) return 9 * cans_each * count;
          if (cans !== null) return 9 * cans;
          if (volume_l !== null) return volume_l;
          return minutes === null ? word[roughly ?? 'some'] * count : minutes * (flow_l_min ?? 9);
        })
        .reduce((sum, one) => sum + one, 0);
      const given = givings(garden, season).reduce((sum, one) => sum + one.litres, 0);
      expect(litres, season.slug).toBeGreaterThan(1000);
      expect(given, season.slug).toBeCloseTo(litres, 6);
    }
  });
  test('a season cut by an earlier day of the book ends on that day', () => {
    // Of the last season alone, with the same thirst: what a later day tells of it does not reach back.
    const cut = told(seasonsOf(garden, '2025-07-20').at(-1));
    expectClosed([cut]);
    expect(Math.max(...cut.spots.map(({ water }) => water.days.length))).toBeLessThanOrEqual(70);
    expect(new Set(cut.spots.map(({ water }) => water.days.at(-1)?.day))).toEqual(new Set(['2025-07-20']));
    for (const { account } of cut.spots) {
      const whole = told(seasons.at(-1)?.spots.find(({ water }) => water.spot.id === account.spot)).account;
      expect(account.days).toBeLessThan(whole.days);
      expect(account.given_l).toBeLessThan(whole.given_l);
      expect(account.rain_l).toBeLessThan(whole.rain_l);
    }
  });
});

describe('simulated gardens', () => {
  const chosen = SEASON_SETTINGS.filter(({ name }) =>
    [
      '3 seasons in blocks',
      '1 season after 20 years of weather, read in the morning',
      '2 seasons of few mounds, much left unwritten',
    ].includes(name),
  );
  test.each(chosen.flatMap((setting) => [1, 2].map((seed) => ({ name: setting.name, setting, seed }))))(
    '$name, seed $seed',
    ({ setting, seed }) => {
      const { texts } = seasonGarden(setting, seed);
      const spots = (texts['garden.yaml'] ?? '').replaceAll(
        'kind: mound',
        'kind: mound, area_m2: 6, soil: sandy-loam, bowl_m2: 1',
      );
      const years = [...new Set(Object.keys(texts).flatMap((path) => /^seasons\/([^/]+)\//.exec(path)?.[1] ?? []))];
      const waterings = years.map((year) => [
        `seasons/${year}/waterings.yaml`,
        `- {watered_on: ${year}-06-01..${year}-08-31, cans_each: 60}\n- {watered_on: ${year}-07-15, roughly: plenty}\n`,
      ]);
      const { garden } = linkTexts({
        ...texts,
        'garden.yaml': `${spots}place: {latitude: 48, longitude: 0, elevation_m: 100}\n`,
        'crops/globe.yaml': cropText(),
        ...Object.fromEntries(waterings),
      });
      const today = told(lastDay(told(garden)));
      const seasons = seasonsOf(told(garden), today);
      expect(seasons).toHaveLength(years.length);
      for (const { season, spots: own } of seasons)
        expect(own.length).toBe(new Set(season.plantings.map(({ spot }) => spot.id)).size);
      expectClosed(seasons);
      expectAllGiven(told(garden), seasons);
    },
  );
});

describe('four years of Seattle', () => {
  const YEARS = [2012, 2013, 2014, 2015];
  const seasonTexts = (year: number): Record<string, string> => ({
    [`seasons/${year}/season.yaml`]: `label: ${year}\nstarts_on: ${year}-04-01\nends_on: ${year}-10-31\n`,
    [`seasons/${year}/plantings.yaml`]: `${planted('P1', 'S1', `${year}-05-10`)}${planted('P2', 'S2', `${year}-05-20`)}${planted('P3', 'S3', `${year}-06-01`)}`,
    [`seasons/${year}/waterings.yaml`]: [
      ...Array.from(
        { length: 12 },
        (_, week) =>
          `- {watered_on: ${year}-06-${String(2 * week + 1).padStart(2, '0')}, spots: [S1, S2], cans_each: 2}\n`,
      ),
      `- {watered_on: ${year}-07-01..${year}-08-20, spots: [S1], volume_l: 900, how: drip}\n`,
    ].join(''),
    [`seasons/${year}/mulching.yaml`]: `- {laid_on: ${year}-06-20, spots: [S1, S3], material: straw}\n`,
  });
  const garden = wateredGarden({
    settings: 'place: {latitude: 47.45, longitude: 0, elevation_m: 120}\n',
    spots:
      '  - {id: S1, kind: mound, area_m2: 4, soil: sand, bowl_m2: 0.5, canopy_m2: 9}\n  - {id: S2, kind: mound, area_m2: 8, soil: clay}\n  - {id: S3, kind: mound, area_m2: 2, soil_depth_cm: 20}\n',
    weather: SEATTLE.map(({ date, rain_mm, tmax_c, tmin_c }) => `${date},${rain_mm},${tmax_c},${tmin_c}\n`).join(''),
    files: Object.fromEntries(YEARS.flatMap((year) => Object.entries(seasonTexts(year)))),
    plantings: '[]\n',
  });
  const seasons = seasonsOf(garden, '2015-12-31');

  test('every day closes: deep clay, dry sand under wide leaves, twenty centimetres of soil', () => {
    expect(spotsOf(seasons)).toHaveLength(12);
    expectClosed(seasons);
    expectAllGiven(garden, seasons);
  });
  test('dry sand runs out and the account says so; water runs through it as well', () => {
    const steps = spotsOf(seasons)
      .filter(({ water }) => water.spot.id !== 'S2')
      .flatMap(({ water }) => water.days.map(({ step }) => told(step)));
    expect(steps.some(({ percolation_mm }) => percolation_mm > 0)).toBe(true);
    expect(steps.some(({ ignored_rain_mm }) => ignored_rain_mm > 0)).toBe(true);
    expect(steps.some(({ below_wilting_mm }) => below_wilting_mm > 0)).toBe(true);
    expect(steps.some(({ ks }) => ks < 0.5)).toBe(true);
  });
  test('rain on the ground is the gauge’s, day for day', () => {
    for (const { water, account } of spotsOf(seasons)) {
      const [first, last] = [told(water.days[0]).day, told(water.days.at(-1)).day];
      const mm = SEATTLE.filter(({ date }) => date >= first && date <= last).reduce((sum, day) => sum + day.rain_mm, 0);
      expect(account.rain_l).toBeCloseTo(mm * water.water.ground.root_m2, 6);
    }
  });
});

test('with round soils the account closes as well', () => {
  const garden = wateredGarden({ weather: dayRows('2025-05-01', 180, (day) => `${day % 9 === 0 ? 11 : 0},26,13`) });
  const seasons = seasonsOf(garden, '2025-10-31', SOILS);
  expect(spotsOf(seasons)).toHaveLength(1);
  expectClosed(seasons);
});
