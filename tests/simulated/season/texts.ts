import type { Texts } from '../garden-texts.ts';
import { listText, mapText, type Row } from '../yaml-text.ts';
import { dayText } from './calendar.ts';
import type { TrueMound } from './ground.ts';
import type { GrownSeason } from './grown.ts';
import type { TrueVariety } from './true-variety.ts';

export const STATION = 'post';

/** The files of a garden that hold no season. It brings its own crop and so needs no reference facts. */
export function gardenTexts(
  varieties: readonly TrueVariety[],
  mounds: readonly TrueMound[],
  read: 'evening' | 'morning',
): Texts {
  const about = { name: 'Simulated garden', edition: 'home', units: 'metric', paper: 'A4', locale: 'en-GB' };
  const spots = [...new Set(mounds.map(({ spot }) => spot))].map((id) => ({ id, kind: 'mound' }));
  return {
    'garden.yaml': `${mapText({ ...about, weather: { station: STATION, read } })}spots:\n${listText(spots)}`,
    'crops/globe.yaml': mapText({
      id: 'globe',
      names: { en: 'globe' },
      plurals: { en: 'globes' },
      slip: 'none',
      fruit_on_ground: 'yes',
    }),
    'varieties.yaml': listText(varieties.map(({ id, name }) => ({ id, name, crop: 'globe', seed: 'unknown' }))),
  };
}

/** A season's season.yaml and plantings.yaml. */
export function plantedTexts({ truth, dates }: GrownSeason): Texts {
  const folder = `seasons/${truth.slug}`;
  return {
    [`${folder}/season.yaml`]: mapText({
      label: truth.slug,
      starts_on: dayText(dates.starts),
      ends_on: dayText(dates.ends),
    }),
    [`${folder}/plantings.yaml`]: listText(truth.mounds.map((mound) => plantingRow(mound, dayText(dates.planted)))),
  };
}

const plantingRow = (mound: TrueMound, planted_on: string): Row => ({
  id: mound.planting,
  spot: mound.spot,
  ...(mound.block && { block: mound.block }),
  placed: 'lot',
  variety: mound.variety,
  planted_on,
  plants_set: mound.plants,
});
