import { addDays, type Day } from '../../../src/day.ts';
import type { Garden } from '../../../src/garden/garden.ts';
import { linkGarden } from '../../../src/garden/link.ts';
import { readGardenRecords } from '../../../src/reading/garden-records.ts';
import { chanceOf, wholeBetween } from '../../simulated/chance.ts';

const sign = (id: string, shown: string): string =>
  `  - {id: ${id}, drawing: size, names: {en: ${id}}, helps: {en: look}, on_card: yes, shown: {${shown}}, sources: [trade-practice]}\n`;
const CROP = `id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\nripe_days: {set_days_low: 35, set_days_high: 45, sources: [trade-practice]}\nsigns:\n${sign('tendril', 'tendril: [half-brown, dry]')}${sign('spot', 'ground_spot: [butter, deep]')}`;

export interface SeasonRows {
  readonly plantings: string;
  readonly fruits: string;
  readonly visits: string;
}

/** Crop globe, varieties amber and birch, three mounds; seasons from April to October. Throws when its records hold an error. */
export function textGarden(
  seasons: Readonly<Record<number, SeasonRows>>,
  { weather = null, edition = 'community' }: { weather?: string | null; edition?: 'home' | 'community' } = {},
): Garden {
  const texts: Record<string, string> = {
    'garden.yaml': `name: Test plot\nedition: ${edition}\nunits: metric\npaper: A4\nlocale: en-GB\n${weather ? 'weather: {station: post, read: evening}\n' : ''}beds: [{id: E, area_m2: 12}]\nspots:\n  - {id: S1, kind: mound, bed: E}\n  - {id: S2, kind: mound, bed: E}\n  - {id: S3, kind: mound, bed: E}\n`,
    'crops/globe.yaml': CROP,
    'varieties.yaml':
      '- {id: amber, name: Amber, crop: globe, seed: unknown}\n- {id: birch, name: Birch, crop: globe, seed: unknown}\n',
    ...(weather ? { 'weather/post.csv': weather } : {}),
  };
  for (const [year, { plantings, fruits, visits }] of Object.entries(seasons)) {
    const folder = `seasons/${year}`;
    texts[`${folder}/season.yaml`] = `label: ${year}\nstarts_on: ${year}-04-01\nends_on: ${year}-10-31\n`;
    texts[`${folder}/plantings.yaml`] = plantings;
    texts[`${folder}/fruits.yaml`] = fruits;
    texts[`${folder}/visits.yaml`] = visits;
  }
  const files = Object.entries(texts).map(([path, text]) => ({ path, bytes: new TextEncoder().encode(text) }));
  const { garden, problems } = linkGarden(readGardenRecords(files), []);
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid test garden: ${JSON.stringify(errors)}`);
  return garden;
}

export const plantings = (year: number): string =>
  ['S1', 'S2', 'S3']
    .map(
      (spot, at) =>
        `- {id: P${at + 1}, spot: ${spot}, variety: ${at === 2 ? 'birch' : 'amber'}, planted_on: ${year}-05-20, plants_set: 2}\n`,
    )
    .join('');

export interface Shape {
  readonly fruits?: number;
  /** Days of set are written down. */
  readonly set?: boolean;
  /** Only fruits that are ripe are cut. */
  readonly ripe_only?: boolean;
}

/**
 * A season of fruits that set in early July, ripen at 38 to 46 days and come off at 33 to 50, each looked over two days
 * before it does and nine days before that; signs show mostly on ripe ones.
 */
export function drawnSeason(
  year: number,
  seed: number,
  { fruits: count = 30, set = true, ripe_only = false }: Shape = {},
): SeasonRows {
  const chance = chanceOf(seed);
  const looks = new Map<Day, string[]>();
  let fruits = '';
  for (let at = 0; at < count; at++) {
    const set_on = addDays(`${year}-07-01` as Day, wholeBetween(chance, 0, 12));
    const ripens = addDays(set_on, wholeBetween(chance, 38, 46));
    const off = addDays(set_on, wholeBetween(chance, ripe_only ? 47 : 33, 50));
    const state =
      off < ripens ? 'unripe' : off < addDays(ripens, 3) ? 'just-ripe' : off < addDays(ripens, 8) ? 'prime' : 'over';
    const id = `F${at + 1}`;
    for (const looked of [addDays(off, -11), addDays(off, -2)]) {
      const is_near = looked >= addDays(ripens, -3);
      const tendril = chance() < (is_near ? 0.85 : 0.15) ? 'dry' : 'green';
      const spot = chance() < (is_near ? 0.8 : 0.25) ? 'butter' : 'white';
      const rows = looks.get(looked) ?? [];
      rows.push(`{fruit: ${id}, tendril: ${tendril}, ground_spot: ${spot}, call: ${is_near ? 'ripe' : 'not-yet'}}`);
      looks.set(looked, rows);
    }
    fruits += `- {id: ${id}, planting: P${1 + (at % 3)}, fate: picked, ${set ? `set: {set_on: ${set_on}}, ` : ''}pick: {picked_on: ${off}}, cut: {cut_on: ${off}, state: ${state}}}\n`;
  }
  const visits = [...looks]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(
      ([day, rows]) => `- {id: V${day.slice(5).replace('-', '')}, visited_on: ${day}, fruits: [${rows.join(', ')}]}\n`,
    )
    .join('');
  return { plantings: plantings(year), fruits, visits };
}

/** Every day of July to September of some years; rain on one day in five, soaking on one of four of those. */
export function drawnWeather(years: readonly number[], seed: number): string {
  const chance = chanceOf(seed);
  const rows = years.flatMap((year) =>
    Array.from({ length: 120 }, (_, at) => {
      const rain = chance() < 0.2 ? (chance() < 0.25 ? 28 : 6) : 0;
      return `${addDays(`${year}-06-20` as Day, at)},${rain},${wholeBetween(chance, 22, 32)},${wholeBetween(chance, 9, 16)}`;
    }),
  );
  return `date,rain_mm,tmax_c,tmin_c\n${rows.join('\n')}\n`;
}
