/** Texts of a garden of an own crop, planted in two seasons, with its mulch as told. */
export interface MulchOf {
  readonly edition?: string;
  readonly units?: string;
  readonly spots?: string;
  readonly mulching?: string;
  readonly mulching_before?: string;
  readonly measures?: string;
}

const SPOTS =
  '  - {id: M1, kind: mound, area_m2: 2}\n  - {id: M2, kind: mound, area_m2: 3}\n  - {id: M3, kind: mound, area_m2: 3.02}\n  - {id: T1, kind: tub}\n';

const plantings = (year: number): string =>
  `- {id: P1, spot: M1, variety: amber, planted_on: ${year}-05-20, plants_set: 2}
- {id: P2, spot: M2, variety: amber, planted_on: ${year}-05-27, plants_set: 2}
- {id: P3, spot: T1, variety: amber, planted_on: ${year}-05, plants_set: 1}
`;
const season = (year: number): string => `label: ${year}\nstarts_on: ${year}-04-01\nends_on: ${year}-10-31\n`;

export const mulchGarden = ({
  edition = 'community',
  units = 'metric',
  spots = SPOTS,
  mulching = '',
  mulching_before = '',
  measures = '',
}: MulchOf = {}): Record<string, string> => ({
  'garden.yaml': `name: Test plot\nedition: ${edition}\nunits: ${units}\npaper: A4\nlocale: en-GB\n${measures}spots:\n${spots}`,
  'crops/globe.yaml': 'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n',
  'varieties.yaml': '- {id: amber, name: Amber, crop: globe, seed: unknown}\n',
  'seasons/2024/season.yaml': season(2024),
  'seasons/2024/plantings.yaml': plantings(2024),
  'seasons/2024/mulching.yaml': mulching_before,
  'seasons/2025/season.yaml': season(2025),
  'seasons/2025/plantings.yaml': plantings(2025),
  'seasons/2025/mulching.yaml': mulching,
});

/** Straw on both mounds, more on one of them later, plastic before planting; a year before some day in June. */
export const LAID = `- {laid_on: 2025-05-06, spots: [M2], material: plastic}
- {laid_on: 2025-06-10, spots: [M1, M2], work: laid, material: straw, cover_of_ten: 8, depth_cm: 6}
- {laid_on: 2025-07-15, spots: [M1], work: topped-up, material: wood-chips}
- {laid_on: 2025-09-30, spots: [M1, M2], work: taken-off, material: straw}
`;
