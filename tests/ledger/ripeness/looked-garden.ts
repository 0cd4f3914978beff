import type { Day } from '../../../src/day.ts';
import { asOf } from '../../../src/garden/as-of.ts';
import type { Garden } from '../../../src/garden/garden.ts';
import { type Kept, keptInMemory } from '../../../src/kept.ts';
import { openLedger } from '../../../src/ledger/ledger.ts';
import type { CropRipeness } from '../../../src/ledger/ripeness/crop-ripeness.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

/** So many fruits alike, all picked on 12 August of their season and looked at the day before. */
export interface Alike {
  readonly count: number;
  /** Null for a fruit still growing. */
  readonly state: string | null;
  /** What was written down of the look; none where nobody looked. */
  readonly look?: string;
  readonly why?: string;
  /** Day of set; none where nobody knows. */
  readonly set?: string;
  /** Who looked; null for nobody in particular. */
  readonly by?: string;
}

export type Told = Readonly<Record<string, readonly Alike[]>>;

const sign = (id: string, shown: string): string =>
  `  - {id: ${id}, drawing: tendril-dry, names: {en: ${id}}, helps: {en: see it}, on_card: yes, shown: {${shown}}, sources: [trade-practice]}\n`;
export const SIGNED_CROP = `ripe_days: {set_days_low: 35, set_days_high: 45, sources: [trade-practice]}\nsigns:\n${sign('coil', 'tendril: [half-brown, dry]')}${sign('spot', 'ground_spot: [butter]')}${sign('low', 'sound: [hollow]')}${sign('parts', 'parted: [at-a-lift]')}`;

export const ALL = 'tendril: dry, ground_spot: butter, sound: hollow';
export const NONE = 'tendril: green, ground_spot: white, sound: ringing';

/** A garden of one planting a season, its files as text. */
export function textsOf(seasons: Told, people = '', edition = 'community'): Record<string, string> {
  const years = Object.entries(seasons).flatMap(([year, told]) => {
    const fruits = told.flatMap((one) => Array.from({ length: one.count }, () => one));
    const looks = fruits.flatMap(({ look, by }, index) =>
      look ? [{ look: `{fruit: F${index + 1}, ${look}}`, by }] : [],
    );
    const keepers = [...new Set(looks.map(({ by }) => by))];
    return [
      [`seasons/${year}/season.yaml`, `label: ${year}\nstarts_on: ${year}-04-01\nends_on: ${year}-10-31\n`],
      [
        `seasons/${year}/plantings.yaml`,
        `- {id: P1, spot: S1, variety: amber, planted_on: ${year}-05-20, plants_set: 2}\n`,
      ],
      [`seasons/${year}/fruits.yaml`, fruits.map((one, index) => fruitOf(one, index, year)).join('')],
      [
        `seasons/${year}/visits.yaml`,
        keepers
          .map((by, index) => {
            const own = looks.filter((one) => one.by === by).map(({ look }) => look);
            return `- {id: V${index + 1}, visited_on: ${year}-08-11${by ? `, by: ${by}` : ''}, fruits: [${own.join(', ')}]}\n`;
          })
          .join(''),
      ],
    ].filter(([, text]) => text !== '');
  });
  return {
    'garden.yaml': `name: Test plot\nedition: ${edition}\nunits: metric\npaper: A4\nlocale: en-GB\nspots: [{id: S1, kind: mound}]\n`,
    'crops/globe.yaml': `id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n${SIGNED_CROP}`,
    'varieties.yaml': '- {id: amber, name: Amber, crop: globe, seed: unknown}\n',
    ...(people ? { 'people.yaml': people } : {}),
    ...Object.fromEntries(years),
  };
}

function fruitOf({ state, why, set }: Alike, index: number, year: string): string {
  const ends =
    state === null
      ? 'fate: growing'
      : `fate: picked, pick: {picked_on: ${year}-08-12}, cut: {cut_on: ${year}-08-12, state: ${state}${why ? `, why: ${why}` : ''}}`;
  return `- {id: F${index + 1}, planting: P1, ${ends}${set ? `, set: {set_on: ${year}-${set}}` : ''}}\n`;
}

/** Throws when the records hold an error. */
export function lookedGarden(seasons: Told, people?: string, edition?: string): Garden {
  const { garden, problems } = linkTexts(textsOf(seasons, people, edition));
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid test garden: ${JSON.stringify(errors)}`);
  return garden;
}

/** The one crop's ripeness as of a day. */
export function lookedRipeness(seasons: Told, today = '2030-10-01', kept: Kept = keptInMemory()): CropRipeness {
  const garden = lookedGarden(seasons);
  const [found] = openLedger(asOf(garden, today as Day), today as Day, kept).ripeness;
  if (!found) throw new Error('no crop with signs');
  return found;
}
