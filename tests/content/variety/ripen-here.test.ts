import { expect, test } from 'vitest';
import type { RipensHere, TimeHere } from '../../../content/variety/ripen-here.ts';
import type { RoomHere } from '../../../content/variety/room-here.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

interface Model {
  readonly times: readonly TimeHere[];
  readonly rooms: readonly RoomHere[];
  readonly judged: number;
  readonly enough: number;
}

const reference = loadReference('data/reference');
const CROP = 'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n';
const TRAITS =
  'ripe_days: {set_days_low: 35, set_days_high: 45, planted_days_low: 85, sources: [trade-practice]}\nsowing: {soil_best_low_c: 20, soil_best_high_c: 30, pot_days_low: 21, pot_days_high: 28, plant_out_soil_c: 16, sources: [trade-practice]}\nroom: {plant_area_low_m2: 1, plant_area_high_m2: 2, sources: [trade-practice]}\n';
const PLANTED =
  '- {id: P1, spot: S1, variety: own, planted_on: 2025-05-20, plants_set: 2}\n- {id: P2, spot: S2, variety: packet, planted_on: 2025-05-20, plants_set: 1}\n';

const FILES = {
  'garden.yaml':
    'name: T\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\nweather: {station: post, read: evening}\nspots: [{id: S1, kind: mound, area_m2: 3}, {id: S2, kind: mound, area_m2: 1.5}]\n',
  'weather/post.csv': 'date,tmin_c\n2019-01-01,3\n',
  'crops/globe.yaml': CROP + TRAITS,
  'varieties.yaml': [
    '- {id: own, name: Own, crop: globe, seed: unknown, stated_days: 70, stated_days_from: planting}\n',
    '- {id: packet, name: Packet, crop: globe, seed: unknown, stated_days: 120, stated_days_from: planting}\n',
    '- {id: potted, name: Potted, crop: globe, seed: unknown, stated_days: 125, stated_days_from: sowing}\n',
    '- {id: unsure, name: Unsure, crop: globe, seed: unknown, stated_days: 130}\n',
    '- {id: silent, name: Silent, crop: globe, seed: unknown}\n',
  ].join(''),
  'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-09-30\n',
  'seasons/2025/plantings.yaml': PLANTED,
};

function modelOf(files: Readonly<Record<string, string>>): Model {
  const { garden, problems } = linkTexts({ ...FILES, ...files });
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid garden: ${JSON.stringify(errors)}`);
  return bookOf({ reference }, garden, null).pages.find(({ path }) => path === 'variety/')?.model as Model;
}

const byName = ({ times }: Model): Record<string, [number | null, RipensHere['from'], number | null, string]> =>
  Object.fromEntries(
    (times[0]?.varieties ?? []).map((one) => [one.name, [one.needs.value, one.from, one.spare.value, one.verdict]]),
  );

test('days from planting out to the season’s end, against the packet, the pot and the crop', () => {
  const model = modelOf({});
  // 20 May to 30 September: 11 + 30 + 31 + 31 + 30.
  expect(model.times[0]).toMatchObject({
    planted: '2025-05-20',
    ends_on: '2025-09-30',
    ends_with: 'season',
    days: { id: 'variety.ripen-here.globe.days', value: 133 },
  });
  expect(byName(model)).toEqual({
    Own: [70, 'packet', 63, 'enough'],
    // 13 days are under two weeks.
    Packet: [120, 'packet', 13, 'tight'],
    // 125 from sowing, at the fewest 21 of them in the pot.
    Potted: [104, 'packet-less-pot', 29, 'enough'],
    Unsure: [130, 'packet-unsure', 3, 'tight'],
    Silent: [85, 'crop', 48, 'enough'],
  });
  // Only those in the ground count for the finding.
  expect([model.judged, model.enough]).toEqual([2, 1]);
});

test('exactly two weeks to spare are enough, and one day over the summer is too long', () => {
  const stated = (days: number) =>
    byName(modelOf({ 'varieties.yaml': FILES['varieties.yaml'].replace('stated_days: 120', `stated_days: ${days}`) }))
      .Packet;
  expect(stated(119)).toEqual([119, 'packet', 14, 'enough']);
  expect(stated(133)).toEqual([133, 'packet', 0, 'tight']);
  expect(stated(134)).toEqual([134, 'packet', -1, 'too-long']);
});

test('what a variety did here stands before what its packet says, its slowest season first', () => {
  const earlier = {
    'seasons/2024/season.yaml': 'label: 2024\nstarts_on: 2024-04-01\nends_on: 2024-09-30\n',
    'seasons/2024/plantings.yaml': '- {id: A1, spot: S1, variety: own, planted_on: 2024-05-20, plants_set: 2}\n',
    // 11 + 30 + 31 + 20 days in 2024, 84 in 2025.
    'seasons/2024/pickings.yaml': '- {planting: A1, picked_on: 2024-08-20, count: 1}\n',
    'seasons/2025/pickings.yaml': '- {planting: P1, picked_on: 2025-08-12, count: 1}\n',
  };
  expect(byName(modelOf(earlier)).Own).toEqual([92, 'own', 41, 'enough']);
});

test('a frost of our own thermometer ends the summer where it comes before the season does', () => {
  const years = [2020, 2021, 2022, 2023, 2024];
  const frostOn = ['09-20', '09-22', '09-24', '09-26', '09-28'];
  const rows = years.flatMap((year, index) =>
    Array.from({ length: 365 }, (_, day) => {
      const date = new Date(Date.UTC(year, 0, 1 + day)).toISOString().slice(0, 10);
      return `${date},${date === `${year}-${frostOn[index]}` ? -1 : 8},20`;
    }),
  );
  const { times } = modelOf({ 'weather/post.csv': `date,tmin_c,tmax_c\n${rows.join('\n')}\n` });
  // Fewer than ten years: the earliest of them, 20 September; 20 May to then are 123 days.
  expect(times[0]).toMatchObject({
    ends_on: '2025-09-20',
    ends_with: 'frost',
    held: 5,
    years: 5,
    days: { value: 123 },
  });
});

test('without a day of planting out, or without days, nothing is weighed', () => {
  const unplanted = modelOf({ 'seasons/2025/plantings.yaml': '' });
  expect(unplanted.times[0]?.days).toMatchObject({ value: null, reason: { code: 'no-planting-out' } });
  expect(byName(unplanted).Packet).toEqual([120, 'packet', null, 'unknown']);
  const bare = modelOf({ 'crops/globe.yaml': CROP });
  expect(byName(bare).Silent).toEqual([null, null, null, 'unknown']);
  // Nobody’s days in the pot: those from sowing stay as they are, on the long side.
  expect(byName(bare).Potted).toEqual([125, 'packet-unsure', 8, 'tight']);
  expect(bare.rooms).toEqual([]);
});

test('ground to each plant: 3 m² and 1.5 m² for three plants, within what sources give', () => {
  expect(modelOf({}).rooms[0]).toMatchObject({
    each: { id: 'variety.room-here.globe.m2_each', value: 1.5, unit: 'm2' },
    fits: 'within',
  });
  const crowded = PLANTED.replace('plants_set: 1', 'plants_set: 4');
  expect(modelOf({ 'seasons/2025/plantings.yaml': crowded }).rooms[0]).toMatchObject({
    each: { value: 0.75 },
    fits: 'less',
  });
  const unmeasured = FILES['garden.yaml'].replace(', area_m2: 1.5', '');
  expect(modelOf({ 'garden.yaml': unmeasured }).rooms[0]).toMatchObject({
    each: { value: null, reason: { code: 'area-missing' } },
    fits: null,
  });
});
