/** Texts of a garden of two own crops: one that lies, with what sources give it, and one that hangs, of which nothing is told. */
export interface GroundOf {
  readonly edition?: string;
  readonly units?: string;
  readonly spots?: string;
  readonly plantings?: string;
  readonly feeding?: string;
  readonly measures?: string;
  /** More lines of the second crop's file. */
  readonly bell?: string;
}

export const TRAITS =
  'room: {plant_area_low_m2: 0.8, plant_area_high_m2: 2, sources: [trade-practice]}\nfeeding: {n_low_kg_ha: 80, n_high_kg_ha: 160, sources: [trade-practice]}\n';

const SPOTS = `  - {id: M1, kind: mound, area_m2: 2}
  - {id: M2, kind: mound, area_m2: 2.02}
  - {id: M3, kind: mound, area_m2: 5}
  - {id: T1, kind: tub}
`;
const PLANTINGS = `- {id: P1, spot: M1, variety: amber, planted_on: 2025-05-20, plants_set: 3}
- {id: P2, spot: M2, variety: amber, planted_on: 2025-05-20, plants_set: 3}
- {id: P3, spot: M3, variety: reach, planted_on: 2025-05-22, plants_set: 2}
- {id: P4, spot: T1, variety: amber, planted_on: 2025-05-22, plants_set: 1}
`;

export const groundGarden = ({
  edition = 'community',
  units = 'metric',
  spots = SPOTS,
  plantings = PLANTINGS,
  feeding = '',
  measures = '',
  bell = '',
}: GroundOf = {}): Record<string, string> => ({
  'garden.yaml': `name: Test plot\nedition: ${edition}\nunits: ${units}\npaper: A4\nlocale: en-GB\n${measures}spots:\n${spots}`,
  'crops/globe.yaml': `id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n${TRAITS}`,
  'crops/bell.yaml': `id: bell\nnames: {en: bell}\nplurals: {en: bells}\nslip: none\nfruit_on_ground: no\n${bell}`,
  'varieties.yaml':
    '- {id: amber, name: Amber, crop: globe, seed: unknown}\n- {id: reach, name: Reach, crop: bell, seed: unknown}\n',
  'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-10-31\n',
  'seasons/2025/plantings.yaml': plantings,
  ...(feeding && { 'seasons/2025/feeding.yaml': feeding }),
});
