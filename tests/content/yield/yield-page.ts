import type { CropSection } from '../../../content/yield/crop-section.ts';
import type { SeasonModel } from '../../../content/yield/season-model.ts';
import type { Page } from '../../../src/book/page.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

const reference = loadReference('data/reference');

/** One plant in a spot of its own: its variety, and its fruits as the keys of their pick. */
export interface Spot {
  readonly variety: 'amber' | 'birch' | 'cedar';
  readonly picks: readonly string[];
}

/** Spots of one plant with one weighed whole fruit each, so that the spot's value is the fruit's mass in kg. */
export const spotsOf = (variety: Spot['variety'], masses: readonly number[]): Spot[] =>
  masses.map((mass) => ({ variety, picks: [`mass_kg: ${mass}, condition: whole`] }));

export interface Trial {
  readonly spots: readonly Spot[];
  readonly yardstick?: Spot['variety'];
  /** More records by path. */
  readonly more?: Readonly<Record<string, string>>;
}

const VARIETIES = ['amber', 'birch', 'cedar'] as const;

function textsOf({ spots, yardstick, more = {} }: Trial): Record<string, string> {
  const numbered = spots.map((spot, index) => ({ ...spot, id: `S${index + 1}` }));
  const lines = <T>(rows: readonly T[], line: (row: T) => string): string =>
    rows.map((row) => `${line(row)}\n`).join('');
  return {
    'garden.yaml': `name: Test plot\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\nspots:\n${lines(numbered, ({ id }) => `  - {id: ${id}, kind: mound}`)}`,
    'crops/globe.yaml': 'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n',
    'varieties.yaml': lines(
      VARIETIES,
      (id) => `- {id: ${id}, name: ${id}, crop: globe, seed: unknown, yardstick: ${id === yardstick ? 'yes' : 'no'}}`,
    ),
    'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-08-12\n',
    'seasons/2025/plantings.yaml': lines(
      numbered,
      ({ id, variety }) => `- {id: P-${id}, spot: ${id}, variety: ${variety}, planted_on: 2025-05-20, plants_set: 1}`,
    ),
    'seasons/2025/fruits.yaml': lines(
      numbered.flatMap(({ id, picks }) => picks.map((pick, index) => ({ id: `${id}-${index + 1}`, of: id, pick }))),
      ({ id, of, pick }) =>
        `- {id: ${id}, planting: P-${of}, fate: picked, pick: {picked_on: 2025-08-12${pick && `, ${pick}`}}}`,
    ),
    ...more,
  };
}

/** The pages of the chapter, by path. Throws when the trial's records hold an error. */
export function yieldPages(trial: Trial): Map<string, Page> {
  const { garden, problems } = linkTexts(textsOf(trial));
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid trial: ${JSON.stringify(errors)}`);
  const { pages } = bookOf({ reference }, garden, null);
  return new Map(pages.filter(({ chapter }) => chapter === 'yield').map((page) => [page.path, page]));
}

export function seasonOf(trial: Trial): SeasonModel {
  const { season } = (yieldPages(trial).get('yield/')?.model ?? {}) as { season?: SeasonModel | null };
  if (!season) throw new Error('invalid trial: nothing was picked');
  return season;
}

/** The only crop, whether it has a section or is told in a line. */
export function cropOf(trial: Trial): CropSection {
  const { crops, lone } = seasonOf(trial);
  const [only] = [...crops, ...lone];
  if (!only) throw new Error('invalid trial: there is no crop');
  return only;
}
