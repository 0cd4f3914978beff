import { cautionSchema } from '../records/caution.ts';
import { cropSchema } from '../records/crop.ts';
import { dipSchema } from '../records/event/dip.ts';
import { feedingSchema } from '../records/event/feeding.ts';
import { floweringSchema } from '../records/event/flowering.ts';
import { girthSchema } from '../records/event/girth.ts';
import { keepingSchema } from '../records/event/keeping.ts';
import { mulchingSchema } from '../records/event/mulching.ts';
import { scoutingSchema } from '../records/event/scouting.ts';
import { shareSchema } from '../records/event/share.ts';
import { soilFeelSchema } from '../records/event/soil-feel.ts';
import { sowingSchema } from '../records/event/sowing.ts';
import { tastingSchema } from '../records/event/tasting.ts';
import { wateringSchema } from '../records/event/watering.ts';
import { fruitSchema } from '../records/fruit.ts';
import { gardenSchema } from '../records/garden.ts';
import { lotSchema } from '../records/lot.ts';
import { materialSchema } from '../records/material.ts';
import { methodSchema } from '../records/method.ts';
import { personSchema } from '../records/person.ts';
import { pickingSchema } from '../records/picking.ts';
import { plantingSchema } from '../records/planting.ts';
import { roofSchema } from '../records/roof.ts';
import { seasonSchema } from '../records/season.ts';
import { soilSchema } from '../records/soil.ts';
import { sourceSchema } from '../records/source.ts';
import { varietySchema } from '../records/variety.ts';
import { visitSchema } from '../records/visit.ts';
import { weatherDaySchema } from '../records/weather-day.ts';

/** Every record kind: the schema of one record and whether its file holds one or a list. */
export const KINDS = {
  garden: { schema: gardenSchema, shape: 'map' },
  people: { schema: personSchema, shape: 'list' },
  varieties: { schema: varietySchema, shape: 'list' },
  lots: { schema: lotSchema, shape: 'list' },
  crops: { schema: cropSchema, shape: 'map' },
  season: { schema: seasonSchema, shape: 'map' },
  plantings: { schema: plantingSchema, shape: 'list' },
  pickings: { schema: pickingSchema, shape: 'list' },
  fruits: { schema: fruitSchema, shape: 'list' },
  visits: { schema: visitSchema, shape: 'list' },
  sowings: { schema: sowingSchema, shape: 'list' },
  mulching: { schema: mulchingSchema, shape: 'list' },
  feeding: { schema: feedingSchema, shape: 'list' },
  waterings: { schema: wateringSchema, shape: 'list' },
  soil: { schema: soilFeelSchema, shape: 'list' },
  dips: { schema: dipSchema, shape: 'list' },
  flowering: { schema: floweringSchema, shape: 'list' },
  girths: { schema: girthSchema, shape: 'list' },
  scouting: { schema: scoutingSchema, shape: 'list' },
  keeping: { schema: keepingSchema, shape: 'list' },
  shares: { schema: shareSchema, shape: 'list' },
  tastings: { schema: tastingSchema, shape: 'list' },
  weather: { schema: weatherDaySchema, shape: 'list' },
  sources: { schema: sourceSchema, shape: 'list' },
  cautions: { schema: cautionSchema, shape: 'list' },
  materials: { schema: materialSchema, shape: 'list' },
  soils: { schema: soilSchema, shape: 'list' },
  roofs: { schema: roofSchema, shape: 'list' },
  methods: { schema: methodSchema, shape: 'list' },
} as const;

export type Kind = keyof typeof KINDS;

/** Where a file lies in a garden, and so what it holds. `part` is the season's slug, the station or the crop. */
export interface FileKind {
  readonly kind: Kind;
  readonly part: string;
}

const NAME = '[A-Za-z0-9]+(?:-[A-Za-z0-9]+)*';
const GARDEN_KINDS: readonly Kind[] = ['garden', 'people', 'varieties', 'lots'];
const SEASON_KINDS: readonly Kind[] = [
  'season',
  'plantings',
  'pickings',
  'fruits',
  'visits',
  'sowings',
  'mulching',
  'feeding',
  'waterings',
  'soil',
  'dips',
  'flowering',
  'girths',
  'scouting',
  'keeping',
  'shares',
  'tastings',
];
const FILES: readonly [RegExp, (match: RegExpExecArray) => FileKind][] = [
  [new RegExp(`^(${GARDEN_KINDS.join('|')})\\.yaml$`), (match) => ({ kind: match[1] as Kind, part: '' })],
  [new RegExp(`^crops/(${NAME})\\.yaml$`), (match) => ({ kind: 'crops', part: match[1] ?? '' })],
  [new RegExp(`^weather/(${NAME})\\.(?:csv|yaml)$`), (match) => ({ kind: 'weather', part: match[1] ?? '' })],
  [
    new RegExp(`^seasons/(${NAME})/(${SEASON_KINDS.join('|')})\\.yaml$`),
    (match) => ({ kind: match[2] as Kind, part: match[1] ?? '' }),
  ],
];

/** What the file at a path holds, or null where the book reads nothing. */
export function kindOfFile(path: string): FileKind | null {
  for (const [pattern, found] of FILES) {
    const match = pattern.exec(path);
    if (match) return found(match);
  }
  return null;
}

/** The names a file may have in the folder of a path, to suggest one. */
export function fileNamesBeside(path: string): string[] {
  if (path.startsWith('seasons/')) return SEASON_KINDS.map((kind) => `${kind}.yaml`);
  if (path.includes('/')) return [];
  return GARDEN_KINDS.map((kind) => `${kind}.yaml`);
}
