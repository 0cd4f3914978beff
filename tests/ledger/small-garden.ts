import type { Garden } from '../../src/garden/garden.ts';
import { linkGarden } from '../../src/garden/link.ts';
import { readGardenRecords } from '../../src/reading/garden-records.ts';

/** Records of one season as YAML; what is left out is empty. */
export interface Rows {
  readonly spots?: string;
  readonly plantings: string;
  readonly fruits?: string;
  readonly pickings?: string;
  readonly weather?: string;
  readonly read?: string;
  /** More lines of garden.yaml. */
  readonly settings?: string;
  readonly visits?: string;
  /** More lines of the crop's file, its signs for instance. */
  readonly crop?: string;
}

/** A garden of one season, 2025, with two varieties of an invented crop. Throws when its records hold an error. */
export function smallGarden({
  spots,
  plantings,
  fruits = '',
  pickings = '',
  weather,
  read = 'evening',
  settings = '',
  visits,
  crop = '',
}: Rows): Garden {
  const texts: Record<string, string> = {
    'garden.yaml': `name: Test plot\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\n${weather ? `weather: {station: post, read: ${read}}\n` : ''}${settings}beds: [{id: E, area_m2: 12}]\nspots:\n${spots ?? '  - {id: S1, kind: mound, bed: E}\n  - {id: S2, kind: mound, bed: E}\n  - {id: S3, kind: mound, bed: E}\n'}`,
    'crops/globe.yaml': `id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n${crop}`,
    'varieties.yaml':
      '- {id: amber, name: Amber, crop: globe, seed: unknown}\n- {id: birch, name: Birch, crop: globe, seed: unknown}\n',
    'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-10-31\n',
    'seasons/2025/plantings.yaml': plantings,
    'seasons/2025/fruits.yaml': fruits,
    'seasons/2025/pickings.yaml': pickings,
    ...(visits ? { 'seasons/2025/visits.yaml': visits } : {}),
    ...(weather ? { 'weather/post.csv': weather } : {}),
  };
  const files = Object.entries(texts).map(([path, text]) => ({ path, bytes: new TextEncoder().encode(text) }));
  const { garden, problems } = linkGarden(readGardenRecords(files), []);
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid test garden: ${JSON.stringify(errors)}`);
  return garden;
}

/** One planting of a variety in a spot. */
export const planting = (id: string, spot: string, more = ''): string =>
  `- {id: ${id}, spot: ${spot}, variety: amber, planted_on: 2025-05-20, plants_set: 2${more}}\n`;

/** One picked fruit of a planting. */
export const picked = (id: string, of: string, pick: string): string =>
  `- {id: ${id}, planting: ${of}, fate: picked, pick: {picked_on: 2025-08-12, ${pick}}}\n`;
