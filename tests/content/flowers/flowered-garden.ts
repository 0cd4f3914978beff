import type { Page } from '../../../src/book/page.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

const reference = loadReference('data/reference');

export const APART = `flowering: {sexes: apart, carried_by: insects, visits_least: 8, female_looks: {en: a round bud below the petals}, sources: [trade-practice]}\n`;
export const TOGETHER = 'flowering: {sexes: together, carried_by: shaking, sources: [trade-practice]}\n';

const cropOf = (id: string, more: string): string =>
  `id: ${id}\nnames: {en: ${id}}\nplurals: {en: ${id}s}\nslip: none\nfruit_on_ground: yes\n${more}`;

interface Frame {
  /** More lines of the crop's file. */
  readonly globe?: string;
  /** Of a second crop, planted in S3; none where left out. */
  readonly bell?: string;
  readonly edition?: string;
  /** Entries of 2024, when the same was planted a year before. */
  readonly earlier?: string;
}

/** Texts of a garden with two plantings of 20 May 2025, perhaps a third of another crop, and these entries. */
export const floweredGarden = (
  entries: string,
  { globe = APART, bell, edition = 'community', earlier }: Frame = {},
): Record<string, string> => {
  const plantings = (year: number): string =>
    ['S1', 'S2', ...(bell === undefined ? [] : ['S3'])]
      .map(
        (spot, index) =>
          `- {id: P${index + 1}, spot: ${spot}, variety: ${index < 2 ? 'amber' : 'birch'}, planted_on: ${year}-05-20, plants_set: 2}\n`,
      )
      .join('');
  const season = (year: number, of: string): Record<string, string> => ({
    [`seasons/${year}/season.yaml`]: `label: ${year}\nstarts_on: ${year}-04-01\nends_on: ${year}-10-31\n`,
    [`seasons/${year}/plantings.yaml`]: plantings(year),
    ...(of && { [`seasons/${year}/flowering.yaml`]: of }),
  });
  return {
    'garden.yaml': `name: Test plot\nedition: ${edition}\nunits: metric\npaper: A4\nlocale: en-GB\nspots: [{id: S1, kind: mound}, {id: S2, kind: mound}, {id: S3, kind: mound}]\n`,
    'crops/globe.yaml': cropOf('globe', globe),
    ...(bell !== undefined && { 'crops/bell.yaml': cropOf('bell', bell) }),
    'varieties.yaml': `- {id: amber, name: Amber, crop: globe, seed: unknown}\n${bell === undefined ? '' : '- {id: birch, name: Birch, crop: bell, seed: unknown}\n'}`,
    ...(earlier !== undefined && season(2024, earlier)),
    ...season(2025, entries),
  };
};

/** The page of a garden's texts. Throws when its records hold an error. */
export function pageOf(texts: Readonly<Record<string, string>>): Page {
  const { garden, problems } = linkTexts(texts);
  if (!garden || problems.some(({ severity }) => severity === 'error'))
    throw new Error(`invalid test garden: ${JSON.stringify(problems)}`);
  const page = bookOf({ reference }, garden, null).pages.find(({ path }) => path === 'flowers/');
  if (!page) throw new Error('there is no page');
  return page;
}
