import type { Facts } from '../../../src/book/chapter.ts';
import type { Page } from '../../../src/book/page.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import type { CropTrial } from '../../../src/ledger/trial/crop-trial.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

const reference = loadReference('data/reference');

/** One mound of one variety in one season: a fruit a mass, its picking day in August and what else is told of it. */
export interface Mound {
  readonly variety: string;
  readonly fruits: readonly {
    readonly kg?: number;
    /** Day of August of a northern season, of February of a southern one. */
    readonly on?: number;
    /** More keys of its cut, for instance `brix_centre: 9.5`; none where it was not cut. */
    readonly cut?: string;
  }[];
  /** More keys of the planting. */
  readonly more?: string;
}

interface Tried {
  /** Ids of the varieties of each crop; a name is its id with a capital. */
  readonly crops: Readonly<Record<string, readonly string[]>>;
  /** By label, the first first; one with a stroke is southern. */
  readonly seasons: Readonly<Record<string, readonly Mound[]>>;
  readonly edition?: 'home' | 'community';
  readonly units?: 'metric' | 'us';
  /** More lines of garden.yaml. */
  readonly settings?: string;
  /** More keys of a variety, by its id. */
  readonly of?: Readonly<Record<string, string>>;
  /** Tastings, by the label of their season. */
  readonly tastings?: Readonly<Record<string, string>>;
}

/** A garden in which varieties of invented crops were tried: texts by path. Mounds are S1, S2 …, their fruits S1-1 …. */
export function triedGarden({
  crops,
  seasons,
  edition = 'community',
  units = 'metric',
  settings = '',
  of = {},
  tastings = {},
}: Tried): Record<string, string> {
  const most = Math.max(...Object.values(seasons).map(({ length }) => length));
  const spots = Array.from({ length: most }, (_, at) => `  - {id: S${at + 1}, kind: mound}\n`).join('');
  const varieties = Object.entries(crops).flatMap(([crop, ids]) =>
    ids.map(
      (id) =>
        `- {id: ${id}, name: ${id.charAt(0).toUpperCase()}${id.slice(1)}, crop: ${crop}, seed: unknown${of[id] ?? ''}}\n`,
    ),
  );
  return {
    'garden.yaml': `name: Test plot\nedition: ${edition}\nunits: ${units}\npaper: A4\nlocale: en-GB\n${settings}spots:\n${spots}`,
    'varieties.yaml': varieties.join(''),
    ...Object.fromEntries(
      Object.keys(crops).map((id) => [
        `crops/${id}.yaml`,
        `id: ${id}\nnames: {en: ${id}}\nplurals: {en: ${id}s}\nslip: none\nfruit_on_ground: yes\n`,
      ]),
    ),
    ...Object.fromEntries(
      Object.entries(seasons).flatMap(([label, mounds]) => seasonTexts(label, mounds, tastings[label])),
    ),
  };
}

function seasonTexts(label: string, mounds: readonly Mound[], tastings: string | undefined): [string, string][] {
  const year = Number(label.slice(0, 4));
  const is_southern = label.includes('/');
  const folder = `seasons/${label.replace('/', '-')}`;
  const [starts, planted, ends] = is_southern
    ? [`${year}-10-01`, `${year}-11-20`, `${year + 1}-04-30`]
    : [`${year}-04-01`, `${year}-05-20`, `${year}-10-31`];
  const month = is_southern ? `${year + 1}-02` : `${year}-08`;
  const day = (of: number): string => `${month}-${String(of).padStart(2, '0')}`;
  const plantings = mounds.map(
    ({ variety, more = '' }, at) =>
      `- {id: P${at + 1}, spot: S${at + 1}, variety: ${variety}, planted_on: ${planted}, plants_set: 1${more}}\n`,
  );
  const fruits = mounds.flatMap(({ fruits: own }, at) =>
    own.map(({ kg, on = 20, cut }, index) => {
      const mass = kg === undefined ? '' : `, mass_kg: ${kg}`;
      const cutting = cut === undefined ? '' : `, cut: {cut_on: ${day(on)}, ${cut}}`;
      return `- {id: S${at + 1}-${index + 1}, planting: P${at + 1}, fate: picked, pick: {picked_on: ${day(on)}, reason: ripe, condition: whole${mass}}${cutting}}\n`;
    }),
  );
  return [
    [`${folder}/season.yaml`, `label: ${label}\nstarts_on: ${starts}\nends_on: ${ends}\n`],
    [`${folder}/plantings.yaml`, plantings.join('')],
    ...(fruits.length > 0 ? [[`${folder}/fruits.yaml`, fruits.join('')] as [string, string]] : []),
    ...(tastings ? [[`${folder}/tastings.yaml`, tastings] as [string, string]] : []),
  ];
}

/** Mounds of one variety, a fruit each. */
export const mounds = (variety: string, kgs: readonly number[], on: readonly number[] = []): Mound[] =>
  kgs.map((kg, at) => ({ variety, fruits: [{ kg, ...(on[at] === undefined ? {} : { on: on[at] }) }] }));

/** The book of a garden's texts. Throws when its records hold an error. */
export function bookOfTexts(texts: Readonly<Record<string, string>>): ReturnType<typeof bookOf> {
  const { garden, problems } = linkTexts(texts);
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid test garden: ${JSON.stringify(errors)}`);
  return bookOf({ reference }, garden, null);
}

export function trialOf({ ledger }: Facts, crop: string): CropTrial {
  const found = ledger.trials.find((one) => one.crop.id === crop);
  if (!found) throw new Error(`no trial of ${crop}`);
  return found;
}

export function pageAt(pages: readonly Page[], path: string): Page {
  const found = pages.find((page) => page.path === path);
  if (!found) throw new Error(`there is no page ${path}`);
  return found;
}

/** Of six crops, each with another answer. */
export const SIX_CROPS = {
  crops: {
    arc: ['aster'],
    bell: ['beryl', 'brook'],
    cone: ['cedar', 'coral'],
    disc: ['dune', 'drift'],
    egg: ['ember', 'east'],
    fan: ['fern', 'field', 'fleet', 'flint', 'foam', 'frost'],
  },
  seasons: {
    2025: [
      // None: planted, and nothing picked. Alone: of two varieties one gave fruit.
      { variety: 'aster', fruits: [] },
      ...mounds('beryl', [4, 5, 6]),
      { variety: 'brook', fruits: [] },
      // Few: two mounds of each.
      ...mounds('cedar', [4, 5], [10, 12]),
      ...mounds('coral', [8, 9], [20, 22]),
      // Same: as alike as two can be that are not the same.
      ...mounds('dune', [4, 5, 6], [10, 14, 18]),
      ...mounds('drift', [4, 5, 6], [10, 14, 18]),
      // Bets: one gives twice as much, on the same days.
      ...mounds('east', [3.9, 4, 4.1], [10, 14, 18]),
      ...mounds('ember', [8, 8.2, 8.4], [10, 14, 18]),
      // List: five with three mounds, one with a single one.
      ...mounds('fern', [8, 8.5, 9], [10, 11, 12]),
      ...mounds('field', [7.5, 8, 8.5], [12, 13, 14]),
      ...mounds('fleet', [6, 6.5, 7], [13, 15, 17]),
      ...mounds('flint', [3, 3.5, 4], [18, 20, 22]),
      ...mounds('foam', [2, 2.5, 3], [24, 26, 28]),
      ...mounds('frost', [5]),
    ],
  },
} as const satisfies Tried;
