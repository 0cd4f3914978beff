import type { Page } from '../../../src/book/page.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

const reference = loadReference('data/reference');

export const KEEP =
  'flowering: {sexes: apart, carried_by: insects, keep_fruits_low: 2, keep_fruits_high: 3, sources: [trade-practice]}\n';
export const RIPE = 'ripe_days: {set_days_low: 35, set_days_high: 45, sources: [trade-practice]}\n';
export const YOUNG = 'eaten: young\n';

const cropOf = (id: string, more: string): string =>
  `id: ${id}\nnames: {en: ${id}}\nplurals: {en: ${id}s}\nslip: none\nfruit_on_ground: yes\n${more}`;

interface Frame {
  /** More lines of the crop's file. */
  readonly globe?: string;
  /** Of a second crop, planted in S4; none where left out. */
  readonly bell?: string;
  readonly edition?: string;
  readonly units?: string;
  readonly pickings?: string;
  /** Fruits of 2024, when the same was planted a year before. */
  readonly earlier?: string;
}

/** Texts of a garden with three plantings of two plants each, perhaps a fourth of another crop, and this register. */
export const loadedGarden = (
  fruits: string,
  { globe = KEEP + RIPE, bell, edition = 'community', units = 'metric', pickings = '', earlier }: Frame = {},
): Record<string, string> => {
  const plantings = (year: number): string =>
    ['S1', 'S2', 'S3', ...(bell === undefined ? [] : ['S4'])]
      .map(
        (spot, index) =>
          `- {id: P${index + 1}, spot: ${spot}, variety: ${index < 3 ? 'amber' : 'birch'}, planted_on: ${year}-05-20, plants_set: 2}\n`,
      )
      .join('');
  const season = (year: number, of: string): Record<string, string> => ({
    [`seasons/${year}/season.yaml`]: `label: ${year}\nstarts_on: ${year}-04-01\nends_on: ${year}-10-31\n`,
    [`seasons/${year}/plantings.yaml`]: plantings(year),
    ...(of && { [`seasons/${year}/fruits.yaml`]: of }),
  });
  return {
    'garden.yaml': `name: Test plot\nedition: ${edition}\nunits: ${units}\npaper: A4\nlocale: en-GB\nspots: [{id: S1, kind: mound}, {id: S2, kind: mound}, {id: S3, kind: mound}, {id: S4, kind: mound}]\n`,
    'crops/globe.yaml': cropOf('globe', globe),
    ...(bell !== undefined && { 'crops/bell.yaml': cropOf('bell', bell) }),
    'varieties.yaml': `- {id: amber, name: Amber, crop: globe, seed: unknown}\n${bell === undefined ? '' : '- {id: birch, name: Birch, crop: bell, seed: unknown}\n'}`,
    ...(earlier !== undefined && season(2024, earlier)),
    ...season(2025, fruits),
    ...(pickings && { 'seasons/2025/pickings.yaml': pickings }),
  };
};

/** A picked fruit, with its mass where one is told. */
export const picked = (id: string, of: string, mass: string | null, on = '2025-09-01'): string =>
  `- {id: ${id}, planting: ${of}, fate: picked, pick: {picked_on: ${on}${mass === null ? '' : `, ${mass}`}}}\n`;

/** A fruit that came to another end. */
export const ended = (id: string, of: string, fate: string): string =>
  `- {id: ${id}, planting: ${of}, fate: ${fate}}\n`;

/** Six fruits of P1: three picked, two of them weighed, one lost, one thinned and one dropped young. */
export const SIX = [
  picked('A', 'P1', 'mass_kg: 4'),
  picked('B', 'P1', 'mass_kg: 6'),
  picked('C', 'P1', null),
  ended('D', 'P1', 'lost'),
  ended('E', 'P1', 'thinned'),
  ended('F', 'P1', 'aborted'),
].join('');

/** The page of a garden's texts. Throws when its records hold an error. */
export function pageOf(texts: Readonly<Record<string, string>>): Page {
  const { garden, problems } = linkTexts(texts);
  if (!garden || problems.some(({ severity }) => severity === 'error'))
    throw new Error(`invalid test garden: ${JSON.stringify(problems)}`);
  const page = bookOf({ reference }, garden, null).pages.find(({ path }) => path === 'thinning/');
  if (!page) throw new Error('there is no page');
  return page;
}
