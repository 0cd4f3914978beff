import type { Mound } from './design.ts';
import type { Variety } from './variety.ts';
import { listText, mapText, type Row } from './yaml-text.ts';

/** The files of a garden: text by path. */
export type Texts = Readonly<Record<string, string>>;

export const SEASON = 'seasons/2025';

/** A garden of one season, planted and not yet picked. It brings its own crop and so needs no reference facts. */
export function plantedTexts(varieties: readonly Variety[], mounds: readonly Mound[]): Texts {
  const spots = listText(mounds.map(({ spot }) => ({ id: spot, kind: 'mound' })));
  const about = { name: 'Simulated garden', edition: 'home', units: 'metric', paper: 'A4', locale: 'en-GB' };
  return {
    'garden.yaml': `${mapText(about)}spots:\n${spots}`,
    'crops/globe.yaml': mapText({
      id: 'globe',
      names: { en: 'globe' },
      plurals: { en: 'globes' },
      slip: 'none',
      fruit_on_ground: 'yes',
    }),
    'varieties.yaml': listText(varieties.map(({ id, name }) => ({ id, name, crop: 'globe', seed: 'unknown' }))),
    [`${SEASON}/season.yaml`]: mapText({ label: 2025, starts_on: '2025-04-15', ends_on: '2025-10-15' }),
    [`${SEASON}/plantings.yaml`]: listText(mounds.map(plantingRow)),
  };
}

/** The id of the one planting of a mound. */
export const plantingId = ({ spot }: Mound): string => `${spot}-25`;

const plantingRow = (mound: Mound): Row => ({
  id: plantingId(mound),
  spot: mound.spot,
  ...(mound.block && { block: mound.block }),
  placed: 'lot',
  variety: mound.variety,
  planted_on: '2025-05-20',
  plants_set: mound.plants,
});
