/** Gardens that lack something, each as texts by path: every page has to say something true all the same. */

interface Frame {
  readonly edition?: string;
  readonly units?: string;
  readonly paper?: string;
  readonly locale?: string;
  readonly weather?: string;
}

const garden = ({
  edition = 'home',
  units = 'metric',
  paper = 'A4',
  locale = 'en-GB',
  weather = '',
}: Frame = {}): string =>
  `name: Corner by the wall\nedition: ${edition}\nunits: ${units}\npaper: ${paper}\nlocale: ${locale}\n${weather}spots:\n  - {id: M1, kind: mound, area_m2: 3}\n  - {id: M2, kind: mound, area_m2: 3}\n  - {id: T1, kind: tub}\n`;

const VARIETIES =
  '- {id: dapple, name: Dapple Gate, crop: watermelon, seed: open-pollinated, yardstick: yes}\n- {id: thimble, name: Thimble Moss, crop: watermelon, seed: hybrid}\n';
const SEASON = 'label: 2025\nstarts_on: 2025-04-15\nends_on: 2025-10-10\n';
const PLANTINGS = ['M1', 'M2', 'T1']
  .map(
    (spot, index) =>
      `- {id: P${index + 1}, spot: ${spot}, variety: ${index < 2 ? 'dapple' : 'thimble'}, planted_on: 2025-05-20, plants_set: 2}\n`,
  )
  .join('');

const season = (more: Record<string, string>, frame: Frame = {}): Record<string, string> => ({
  'garden.yaml': garden(frame),
  'varieties.yaml': VARIETIES,
  'seasons/2025/season.yaml': SEASON,
  'seasons/2025/plantings.yaml': PLANTINGS,
  ...more,
});

const fruits = (pick: string): string =>
  ['P1', 'P1', 'P2', 'P3']
    .map(
      (planting, index) =>
        `- {id: F${index + 1}, planting: ${planting}, fate: picked, pick: {picked_on: 2025-08-1${index}, ${pick}}}\n`,
    )
    .join('');

const PICKINGS =
  '- {planting: P1, picked_on: 2025-08, count: about 4}\n- {planting: P3, picked_on: 2025-08-10..2025-08-20, count: 2}\n';
const US = { units: 'us', paper: 'Letter', locale: 'en-US', edition: 'community' };
const WEATHER = 'date,rain_in,tmax_f,tmin_f\n2025-06-01,0.5,88,60\n2025-06-02,trace,91,63\n';

export const LITTLE_GARDENS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'no season yet': { 'garden.yaml': garden(), 'varieties.yaml': VARIETIES },
  'nothing planted': { 'garden.yaml': garden(), 'varieties.yaml': VARIETIES, 'seasons/2025/season.yaml': SEASON },
  'planted, nothing picked': season({}),
  'pickings only': season({ 'seasons/2025/pickings.yaml': PICKINGS }),
  'a register without a scale': season({ 'seasons/2025/fruits.yaml': fruits('size: big, condition: whole') }),
  'a register without conditions': season({ 'seasons/2025/fruits.yaml': fruits('mass_kg: 4.2') }),
  'no variety known': season({
    'seasons/2025/plantings.yaml': PLANTINGS.replaceAll('dapple', 'unknown').replaceAll('thimble', 'unknown'),
    'seasons/2025/fruits.yaml': fruits('mass_kg: 4.2, condition: whole'),
  }),
  'pounds and Letter': season(
    { 'seasons/2025/fruits.yaml': fruits('mass_lb: 9.5, condition: whole'), 'weather/porch.csv': WEATHER },
    { ...US, weather: 'weather: {station: porch, read: evening}\n' },
  ),
  'still growing': season({
    'seasons/2025/fruits.yaml': `${fruits('mass_kg: 4.2')}- {id: F9, planting: P2, fate: growing}\n`,
  }),
  'planted some day in May, metered from the second season on, rain in words': season(
    {
      'seasons/2025/plantings.yaml': PLANTINGS.replaceAll('2025-05-20', '2025-05'),
      'seasons/2025/fruits.yaml': fruits('mass_kg: 4.2, reason: ripe'),
      'seasons/2026/season.yaml': SEASON.replaceAll('2025', '2026'),
      'seasons/2026/plantings.yaml': PLANTINGS.replaceAll('2025', '2026'),
      'seasons/2026/fruits.yaml':
        '- {id: F1, planting: P1, fate: picked, pick: {picked_on: 2026-08-10}, cut: {cut_on: 2026-08-10, state: prime, brix_centre: 10.4}}\n',
      'weather/porch.csv': 'date,rain\n2025-06-01,some\n2026-06-01,none\n',
    },
    { edition: 'community', weather: 'weather: {station: porch, read: evening}\n' },
  ),
  'most lost before they were ripe': season({
    'seasons/2025/fruits.yaml': [
      '- {id: F1, planting: P1, fate: lost, set: {set_on: 2025-07-01}, end: {ended_on: 2025-08-01, lost_to: rot}}\n',
      '- {id: F2, planting: P1, fate: picked, pick: {picked_on: 2025-08-12}}\n',
      '- {id: F3, planting: P3, fate: picked, set: {set_on: 2025-07-01}, pick: {picked_on: 2025-08-12}}\n',
      ...[4, 5, 6].map(
        (id) => `- {id: F${id}, planting: P3, fate: left, set: {set_on: 2025-07-01}, end: {ended_on: 2025-09-12}}\n`,
      ),
    ].join(''),
  }),
  'everything was lost': season({
    'seasons/2025/fruits.yaml': '- {id: F1, planting: P1, fate: lost, end: {ended_on: 2025-08-01, lost_to: animal}}\n',
  }),
};
