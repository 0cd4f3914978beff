import type { Garden } from '../../../src/garden/garden.ts';
import { NOTHING_KEPT } from '../../../src/kept.ts';
import { createBases } from '../../../src/ledger/bases.ts';
import { type CropTrial, cropTrials } from '../../../src/ledger/trial/crop-trial.ts';
import type { TraitId } from '../../../src/ledger/trial/trait.ts';
import type { TraitValue } from '../../../src/ledger/trial/trait-value.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

/** Records of one season as YAML; what is left out is empty. */
export interface SeasonRows {
  readonly plantings: string;
  readonly fruits?: string;
  readonly pickings?: string;
  readonly tastings?: string;
}

interface More {
  /** More lines of garden.yaml. */
  readonly settings?: string;
  /** More fields of a variety, by its id, for instance `, yardstick: yes`. */
  readonly of?: Readonly<Record<string, string>>;
  readonly weather?: string;
  readonly spots?: number;
}

const VARIETIES = ['amber', 'birch', 'copper', 'dusk', 'ember', 'flint'];

/** A garden of seasons by year, with six varieties of an invented crop. Throws when its records hold an error. */
export function trialGarden(seasons: Readonly<Record<string, SeasonRows>>, more: More = {}): Garden {
  const texts = trialTexts(seasons, more);
  const { garden, problems } = linkTexts(texts);
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid test garden: ${JSON.stringify(errors)}`);
  return garden;
}

export function trialTexts(
  seasons: Readonly<Record<string, SeasonRows>>,
  { settings = '', of = {}, weather, spots = 12 }: More = {},
): Readonly<Record<string, string>> {
  const listed = Array.from({ length: spots }, (_, at) => `  - {id: S${at + 1}, kind: mound}\n`).join('');
  const station = weather ? 'weather: {station: post, read: evening}\n' : '';
  const varieties = VARIETIES.map((id) => `- {id: ${id}, name: ${id}, crop: globe, seed: unknown${of[id] ?? ''}}\n`);
  const ofSeason = ([year, { plantings, fruits = '', pickings = '', tastings }]: [string, SeasonRows]) => [
    [`seasons/${year}/season.yaml`, `label: ${year}\nstarts_on: ${year}-04-01\nends_on: ${year}-10-31\n`] as const,
    [`seasons/${year}/plantings.yaml`, plantings] as const,
    [`seasons/${year}/fruits.yaml`, fruits] as const,
    [`seasons/${year}/pickings.yaml`, pickings] as const,
    ...(tastings ? [[`seasons/${year}/tastings.yaml`, tastings] as const] : []),
  ];
  return {
    'garden.yaml': `name: Test plot\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\n${station}${settings}spots:\n${listed}`,
    'crops/globe.yaml': 'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n',
    'varieties.yaml': varieties.join(''),
    ...Object.fromEntries(Object.entries(seasons).flatMap(ofSeason)),
    ...(weather ? { 'weather/post.csv': weather } : {}),
  };
}

/** The trial of the garden's one crop with a variety. */
export function onlyTrial(garden: Garden): CropTrial {
  const trial = cropTrials(garden, createBases(), NOTHING_KEPT).find(({ crop }) => crop.id === 'globe');
  if (!trial) throw new Error('no trial');
  return trial;
}

/** Values of one trait as "planting-or-fruit value", sorted. */
export const valuesOf = (trial: CropTrial, trait: TraitId): string[] =>
  trial.values
    .filter((one) => one.trait === trait)
    .map(({ key, value }) => `${key.split('/').at(-1)} ${value}`)
    .sort();

/** One planting, set out on 20 May. */
export const planted = (year: number, id: string, spot: string, variety: string, more = ''): string =>
  `- {id: ${id}, spot: ${spot}, variety: ${variety}, planted_on: ${year}-05-20, plants_set: 2${more}}\n`;

/** One fruit; `parts` are its fields. */
export const fruit = (id: string, planting: string, parts: string, fate = 'picked'): string =>
  `- {id: ${id}, planting: ${planting}, fate: ${fate}, ${parts}}\n`;

/** One value of a trait as a trial reads it from a record. */
export const value = (
  trait: TraitId,
  variety: string,
  season: string,
  spot: string,
  amount: number,
  more: Partial<TraitValue> = {},
): TraitValue => ({
  trait,
  value: amount,
  variety,
  season,
  block: null,
  spot,
  day: null,
  key: `${trait} ${variety} ${season} ${spot} ${amount}`,
  ...more,
});
