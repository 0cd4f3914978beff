import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

const CROP = 'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n';
export const TRAITS =
  'seed: {crosses: {en: every other globe}, isolation_low_m: 150, isolation_high_m: 800, parents_low: 6, parents_high: 12, past_flowering_days: 35, cleaning: {en: rinse and dry}, life_years_low: 4, life_years_high: 5, sources: [trade-practice]}\nripe_days: {set_days_low: 35, set_days_high: 45, planted_days_low: 85, sources: [trade-practice]}\n';

const reference = loadReference('data/reference');

export const VARIETIES =
  '- {id: amber, name: Amber, crop: globe, seed: open-pollinated}\n- {id: birch, name: Birch, crop: globe, seed: hybrid}\n- {id: cloud, name: Cloud, crop: globe, seed: unknown}\n';
export const PLANTINGS =
  '- {id: P1, spot: S1, variety: amber, planted_on: 2025-05-20, plants_set: 2}\n- {id: P2, spot: S2, variety: amber, planted_on: 2025-05-20, plants_set: 3}\n- {id: P3, spot: S3, variety: birch, planted_on: 2025-05-20, plants_set: 2}\n';

/** The page of a garden of one season, 2025; files beside these replace them. */
export function seedPage(files: Readonly<Record<string, string>> = {}, crop = CROP + TRAITS) {
  const { garden, problems } = linkTexts({
    'garden.yaml':
      'name: T\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\nspots: [{id: S1, kind: mound}, {id: S2, kind: mound}, {id: S3, kind: mound}]\n',
    'crops/globe.yaml': crop,
    'varieties.yaml': VARIETIES,
    'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-10-31\n',
    'seasons/2025/plantings.yaml': PLANTINGS,
    ...files,
  });
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid garden: ${JSON.stringify(errors)}`);
  const page = bookOf({ reference }, garden, null).pages.find(({ path }) => path === 'seed/');
  if (!page) throw new Error('there is no page of seed');
  return page;
}

/** The same without any trait of the crop. */
export const barePage = (files: Readonly<Record<string, string>> = {}) => seedPage(files, CROP);
