import { addDays, type Day, dayOf } from '../../../src/day.ts';
import { asOf } from '../../../src/garden/as-of.ts';
import type { Crop, Garden } from '../../../src/garden/garden.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

export interface Cut {
  /** Days from set to picking; null: no day of set. */
  readonly days: number | null;
  readonly state: string;
  readonly more?: string;
}

export interface Running {
  /** Of the season before. */
  readonly cuts?: readonly Cut[];
  /** Fruits of the season that runs, as YAML after the id and planting. */
  readonly growing?: readonly string[];
  readonly visits?: string;
  /** Temperature of all days of a year, °C; null: no reading. */
  readonly warmth?: (year: number) => number | null;
  /** Years of the station's record before the running one; 0: no station. */
  readonly years?: number;
  readonly crop?: string;
  readonly edition?: string;
  readonly settings?: string;
  readonly more?: Readonly<Record<string, string>>;
}

/** The day of the book. */
export const TODAY = '2025-08-01' as Day;
const SIGNS =
  'signs:\n  - {id: tendril, drawing: tendril-dry, names: {en: Tendril brown}, helps: {en: see it}, on_card: yes, shown: {tendril: [dry]}, sources: [trade-practice]}\n';
export const FILE_DAYS =
  'ripe_days: {set_days_low: 36, set_days_high: 44, planted_days_low: 80, sources: [trade-practice]}\n';

/** Unripe at up to 38 days, prime from 42, over from 52, with the just ripe between: in days of set to picking. */
export const CUTS: readonly Cut[] = [
  ...[30, 32, 34, 36, 37, 38].map((days) => ({ days, state: 'unripe' })),
  ...[39, 40, 41].map((days) => ({ days, state: 'just-ripe' })),
  ...[42, 43, 44, 45, 46, 48].map((days) => ({ days, state: 'prime' })),
  ...[52, 54].map((days) => ({ days, state: 'over' })),
];

/** A fruit of the running season that set on a day. */
export const setOn = (day: string): string => `fate: growing, set: {set_on: ${day}}`;

const SET = '2024-06-20' as Day;

export function runningTexts({
  cuts = CUTS,
  growing = [setOn('2025-07-01')],
  visits,
  warmth = () => 20,
  years = 4,
  crop = FILE_DAYS,
  edition = 'community',
  settings = '',
  more = {},
}: Running = {}): Record<string, string> {
  const season = (year: number): string => `label: ${year}\nstarts_on: ${year}-04-01\nends_on: ${year}-10-15\n`;
  const planting = (year: number): string =>
    `- {id: P${year}, spot: S1, variety: amber, planted_on: ${year}-05-20, plants_set: 2}\n`;
  const cut = ({ days, state, more: own = '' }: Cut, index: number): string => {
    const off = addDays(SET, days ?? 40);
    const set = days === null ? '' : `set: {set_on: ${SET}}, `;
    return `- {id: F${index + 1}, planting: P2024, fate: picked, ${set}pick: {picked_on: ${off}}, cut: {cut_on: ${off}, state: ${state}${own}}}\n`;
  };
  return {
    'garden.yaml': `name: Test plot\nedition: ${edition}\nunits: metric\npaper: A4\nlocale: en-GB\n${years > 0 ? 'weather: {station: post, read: evening}\n' : ''}${settings}spots: [{id: S1, kind: mound}, {id: S2, kind: mound}]\n`,
    'crops/globe.yaml': `id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n${crop}${SIGNS}`,
    'varieties.yaml': '- {id: amber, name: Amber, crop: globe, seed: unknown}\n',
    'seasons/2024/season.yaml': season(2024),
    'seasons/2024/plantings.yaml': planting(2024),
    'seasons/2024/fruits.yaml': cuts.map(cut).join('') || '[]\n',
    'seasons/2025/season.yaml': season(2025),
    'seasons/2025/plantings.yaml': planting(2025),
    'seasons/2025/fruits.yaml':
      growing.map((one, index) => `- {id: G${index + 1}, planting: P2025, ${one}}\n`).join('') || '[]\n',
    ...(visits ? { 'seasons/2025/visits.yaml': visits } : {}),
    ...(years > 0 ? { 'weather/post.csv': weatherOf(years, warmth) } : {}),
    ...more,
  };
}

function weatherOf(years: number, warmth: (year: number) => number | null): string {
  const rows = Array.from({ length: years + 1 }, (_, index) => 2025 - years + index).flatMap((year) =>
    Array.from({ length: 200 }, (_, day) => addDays(dayOf(year, 4, 1), day))
      .filter((day) => day <= TODAY || year < 2025)
      .map((day) => `${day},0,${warmth(year) ?? ''},${warmth(year) ?? ''}`),
  );
  return `date,rain_mm,tmax_c,tmin_c\n${rows.join('\n')}\n`;
}

export function runningGarden(running: Running = {}): { garden: Garden; crop: Crop } {
  const { garden, problems } = linkTexts(runningTexts(running));
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid test garden: ${JSON.stringify(errors)}`);
  const crop = garden.crops.get('globe');
  if (!crop) throw new Error('no crop');
  return { garden: asOf(garden, TODAY), crop };
}
