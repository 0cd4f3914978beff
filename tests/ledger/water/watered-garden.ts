import { loadReference } from '../../../src/cli/load-reference.ts';
import { addDays, type Day } from '../../../src/day.ts';
import type { Garden, Planting, Season, Spot, Station } from '../../../src/garden/garden.ts';
import type { ThirstRecord } from '../../../src/ledger/water/thirst-record.ts';
import type { SoilRecord } from '../../../src/records/soil.ts';
import { linkTexts, type Texts } from '../../reading/garden-texts.ts';

const reference = loadReference('data/reference');
export const ROOFS = reference.roofs;

/** Traits of an invented crop, round enough to reckon with in the head. */
export const TRAITS = {
  kc_initial: 0.5,
  kc_middle: 1,
  kc_end: 0.8,
  kcb_initial: 0.15,
  kcb_middle: 0.9,
  kcb_end: 0.6,
  height_m: 0.4,
  root_low_m: 0.5,
  root_high_m: 1,
  depletion: 0.5,
};

interface Stages {
  readonly initial: number;
  readonly development: number;
  readonly middle: number;
  readonly late: number;
}
export const ROWS: readonly Stages[] = [
  { initial: 20, development: 30, middle: 30, late: 30 },
  { initial: 10, development: 20, middle: 20, late: 30 },
];

interface CropParts {
  readonly rows?: readonly Stages[];
  readonly id?: string;
  /** A line of its figures of water. */
  readonly plastic?: string;
  /** More lines of its file. */
  readonly more?: string;
}

/** The crop's file. */
export function cropText(
  traits: Partial<typeof TRAITS> = {},
  { rows = ROWS, id = 'globe', plastic = '', more = '' }: CropParts = {},
): string {
  const lines = Object.entries({ ...TRAITS, ...traits }).map(([key, value]) => `  ${key}: ${value}\n`);
  const stages = rows.map(
    ({ initial, development, middle, late }) =>
      `    - {initial_days: ${initial}, development_days: ${development}, middle_days: ${middle}, late_days: ${late}, where: 'somewhere'}\n`,
  );
  return `id: ${id}\nnames: {en: ${id}}\nplurals: {en: ${id}s}\nslip: none\nfruit_on_ground: yes\nwater:\n${lines.join('')}  stages:\n${stages.join('')}${plastic}  sources: [trade-practice]\n${more}`;
}

export interface Parts {
  /** More lines of garden.yaml. */
  readonly settings?: string;
  readonly spots?: string;
  readonly crop?: string;
  readonly plantings?: string;
  /** Files of the season 2025 by their name without the ending, and further files by path. */
  readonly season?: Readonly<Record<string, string>>;
  readonly files?: Texts;
  /** Rows of the station's table under its heading. */
  readonly weather?: string;
  readonly heading?: string;
  readonly read?: string;
  readonly wind_m?: number;
}

/** Of the garden, unless a test says otherwise. */
export const LATITUDE = 45;
export const PLACE = `place: {latitude: ${LATITUDE}, longitude: 0, elevation_m: 100}\n`;
const SPOTS =
  '  - {id: S1, kind: mound, area_m2: 10, soil: loam}\n  - {id: S2, kind: mound, area_m2: 10, soil: loam}\n';

/** A garden of the season 2025, April to October. Throws when its records hold an error. */
export function wateredGarden({
  settings = PLACE,
  spots = SPOTS,
  crop = cropText(),
  plantings = planted('P1', 'S1'),
  season = {},
  files = {},
  weather,
  heading = 'date,rain_mm,tmax_c,tmin_c',
  read = 'evening',
  wind_m,
}: Parts = {}): Garden {
  const { garden, problems } = linkTexts({
    'garden.yaml': `name: Test plot\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\n${weather === undefined ? '' : `weather: {station: post, read: ${read}${wind_m === undefined ? '' : `, wind_m: ${wind_m}`}}\n`}${settings}spots:\n${spots}`,
    'crops/globe.yaml': crop,
    'varieties.yaml':
      '- {id: amber, name: Amber, crop: globe, seed: unknown}\n- {id: birch, name: Birch, crop: globe, seed: unknown}\n',
    'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-10-31\n',
    'seasons/2025/plantings.yaml': plantings,
    ...Object.fromEntries(Object.entries(season).map(([name, text]) => [`seasons/2025/${name}.yaml`, text])),
    ...(weather === undefined ? {} : { 'weather/post.csv': `${heading}\n${weather}` }),
    ...files,
  });
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid test garden: ${JSON.stringify(errors)}`);
  return garden;
}

export const planted = (id: string, spot: string, on = '2025-05-20', more = ''): string =>
  `- {id: ${id}, spot: ${spot}, variety: amber, planted_on: ${on}, plants_set: 2${more}}\n`;

/** A row a day with the same cells, or what a function gives for the place of the day. */
export const dayRows = (first: string, days: number, cells: string | ((index: number) => string)): string =>
  Array.from(
    { length: days },
    (_, index) => `${addDays(first as Day, index)},${typeof cells === 'string' ? cells : cells(index)}\n`,
  ).join('');

/** Air that takes the same every day, in the climate the tables of FAO-56 are for: 2 m/s, lowest humidity 45. */
export const steadyThirst = (eto_mm: number, days: ThirstRecord['days'] = []): ThirstRecord => ({
  on: () => ({ eto_mm, how: 'measured' }),
  days,
  adjustment: null,
  climate: () => ({ wind_m_s: 2, rh_min_pct: 45 }),
});

/** The loam of the reference facts with round figures: 0.1 to 0.1 m³ a m³, 8 and 20 mm of the top. */
export const ROUND_LOAM: Partial<SoilRecord> = {
  available_low_m3_m3: 0.1,
  available_high_m3_m3: 0.1,
  readily_evaporated_low_mm: 8,
  readily_evaporated_high_mm: 8,
  total_evaporated_low_mm: 20,
  total_evaporated_high_mm: 20,
};

export const soilsWith = (id: SoilRecord['id'], change: Partial<SoilRecord>): readonly SoilRecord[] =>
  reference.soils.map((soil) => (soil.id === id ? { ...soil, ...change } : soil));

export const SOILS = soilsWith('loam', ROUND_LOAM);

const only = <T>(what: string, one: T | null | undefined): T => {
  if (one === null || one === undefined) throw new Error(`there is no ${what}`);
  return one;
};

/** Its only season, or the one of a slug. */
export const seasonOf = ({ seasons }: Garden, slug = '2025'): Season =>
  only(
    slug,
    seasons.find((season) => season.slug === slug),
  );
export const stationOf = ({ stations }: Garden): Station => only('station', stations[0]);
export const spotOf = ({ spots }: Garden, id: string): Spot =>
  only(
    id,
    spots.find((spot) => spot.id === id),
  );
export const plantingOf = (garden: Garden, id: string): Planting =>
  only(
    id,
    garden.seasons.flatMap(({ plantings }) => plantings).find((one) => one.id === id),
  );

/** An amount of water, or whatever a test is about, which must be there. */
export function told<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error('nothing told');
  return value;
}
