import { column, type Table } from '../../src/book/table.ts';
import { addDays, type Day, daysBetween } from '../../src/day.ts';
import type { Season } from '../../src/garden/garden.ts';
import type { SpotDay, SpotWater } from '../../src/ledger/water/spot-water.ts';
import type { BackModel } from './back-model.ts';
import type { NeedModel } from './need-model.ts';

const KINDS = ['cool', 'usual', 'hot'] as const;
const WEEK = 7;

/** What each crop wants by stage and week. */
export const needTable = (crops: readonly NeedModel[]): Table => ({
  id: 'water-need',
  title: 'Water wanted a week, rain not taken off',
  columns: [
    column('crop', 'Crop'),
    column('stage', 'Stage'),
    column('first', 'From'),
    column('last', 'To'),
    column('week', 'Week'),
    column('l_per_week', 'Litres a week', 'l'),
    column('cans_per_week', 'Cans a week', 'cans'),
    column('bowl_days_low', 'Days on the watered ground alone, least', 'days'),
    column('bowl_days_high', 'Days on the watered ground alone, most', 'days'),
    column('ground_days_low', 'Days on all its ground, least', 'days'),
    column('ground_days_high', 'Days on all its ground, most', 'days'),
    column('rain_cans', 'Usual rain of a week', 'cans'),
    column('weeks_read', 'Weeks read'),
    column('years', 'Years read', 'years'),
  ],
  rows: crops.flatMap(({ id, rows, years }) =>
    rows.flatMap(({ stage, first, last, weeks, rain_cans }) =>
      KINDS.map((kind) => {
        const { litres, cans, bowl_days, ground_days } = weeks[kind];
        return [
          id,
          stage,
          first,
          last,
          kind,
          litres.value,
          cans.value,
          bowl_days?.low.value ?? null,
          bowl_days?.high.value ?? null,
          ground_days?.low.value ?? null,
          ground_days?.high.value ?? null,
          rain_cans.value,
          litres.n,
          years,
        ];
      }),
    ),
  ),
});

/** Every spot of a season, looked back on. */
export const backTable = ({ rows }: BackModel, slug: string): Table => ({
  id: `water-${slug.toLowerCase()}`,
  title: `Water given and wanted by spot, ${slug}`,
  columns: [
    column('spot', 'Spot'),
    column('given_cans', 'Given', 'cans'),
    column('rain_cans', 'Rain', 'cans'),
    column('wanted_cans', 'Wanted', 'cans'),
    column('waterings', 'Days watered', 'days'),
    column('short_days', 'Days it went short', 'days'),
    column('longest_gap_days', 'Longest without', 'days'),
    column('swing_cans', 'Largest swing in three days', 'cans'),
    column('l_per_kg', 'Given a kilogram of fruit', 'l_per_kg'),
  ],
  rows: rows.map(({ spot, given, rain, wanted, waterings, short_days, gap_days, swing, l_per_kg }) => [
    spot,
    given.value,
    rain.value,
    wanted.value,
    waterings.value,
    short_days.value,
    gap_days.value,
    swing.value,
    l_per_kg.value,
  ]),
});

/** The balance of some spots, day by day; `name` tells the table from others of the season. */
export const dailyTable = (season: Season, spots: readonly SpotWater[], name = 'daily'): Table => ({
  id: `water-${name}-${season.slug.toLowerCase()}`,
  title: `Water of spots day by day, ${season.label}`,
  columns: [
    column('spot', 'Spot'),
    column('date', 'Day'),
    column('stage', 'Stage'),
    column('eto_mm', 'Thirst of the air', 'mm'),
    column('eto_how', 'How known'),
    column('rain_mm', 'Rain', 'mm'),
    column('rain_told', 'Rain by'),
    column('given_l', 'Given', 'l'),
    column('wanted_l', 'Wanted', 'l'),
    column('left_mm', 'Left for the roots', 'mm'),
    column('share_stilled', 'Share of the thirst stilled'),
    column('ran_through_mm', 'Ran through', 'mm'),
  ],
  rows: spots.flatMap((water) =>
    water.days.map(({ day, stage, thirst, rain, given_l, wanted_l, step }) => [
      water.spot.id,
      day,
      stage,
      thirst.eto_mm,
      thirst.how,
      rain.rain_mm,
      rain.told,
      given_l,
      wanted_l,
      step && (water.water.ground.available_mm?.middle ?? 0) - step.end.root_mm,
      step?.ks ?? null,
      step?.percolation_mm ?? null,
    ]),
  ),
});

/** The same by weeks from planting. */
export const weeklyTable = (season: Season, spots: readonly SpotWater[], name = 'weekly'): Table => ({
  id: `water-${name}-${season.slug.toLowerCase()}`,
  title: `Water of spots week by week, ${season.label}`,
  columns: [
    column('spot', 'Spot'),
    column('from', 'From'),
    column('days', 'Days', 'days'),
    column('given_l', 'Given', 'l'),
    column('rain_l', 'Rain', 'l'),
    column('wanted_l', 'Wanted', 'l'),
    column('short_days', 'Days it went short', 'days'),
  ],
  rows: spots.flatMap((water) =>
    weeksOf(water.days).map(({ first, days }) => [
      water.spot.id,
      first,
      days.length,
      sum(days, ({ given_l }) => given_l),
      sum(days, ({ rain }) => rain.rain_mm * water.water.ground.root_m2),
      sum(days, ({ wanted_l }) => wanted_l),
      days.some(({ step }) => step === null) ? null : days.filter(({ step }) => step !== null && step.ks < 1).length,
    ]),
  ),
});

/** Weeks from the day of planting; the last may be short. */
export function weeksOf(days: readonly SpotDay[]): { readonly first: Day; readonly days: readonly SpotDay[] }[] {
  const [first, last] = [days[0]?.day, days.at(-1)?.day];
  if (!first || !last) return [];
  return Array.from({ length: Math.ceil((daysBetween(first, last) + 1) / WEEK) }, (_, week) => ({
    first: addDays(first, WEEK * week),
    days: days.slice(WEEK * week, WEEK * (week + 1)),
  }));
}

const sum = (days: readonly SpotDay[], of: (day: SpotDay) => number): number =>
  days.reduce((total, day) => total + of(day), 0);
