/** Somebody with a name and an id that stand in no other text. */
export const PERSON = { id: 'ZQX7', code: 'plum-2', name: 'Odalys Wrenfield' } as const;

const { id, name } = PERSON;
const by = `by: ${id}, note: ${name} wrote this`;
const note = `note: seen by ${name}`;

/** A garden in which one person wrote every record and every remark names them; without people.yaml. */
export const NAMED_GARDEN = {
  'garden.yaml': `name: Corner by the wall
edition: community
units: metric
paper: A4
locale: en-GB
weather: {station: porch, read: evening}
beds:
  - {id: E, area_m2: 6, ${note}}
spots:
  - {id: M1, kind: mound, bed: E, ${note}}
  - {id: M2, kind: mound, bed: E, ${note}}
note: a garden of ${name}
`,
  'crops/globe.yaml': `id: globe
names: {en: globe}
plurals: {en: globes}
slip: none
fruit_on_ground: yes
${note}
`,
  'varieties.yaml': '- {id: dapple, name: Dapple Gate, crop: globe, seed: unknown, note: From a tin.}\n',
  'seasons/2025/season.yaml': `label: 2025\nstarts_on: 2025-04-15\nends_on: 2025-10-10\n${note}\n`,
  'seasons/2025/plantings.yaml': `- {id: P1, spot: M1, variety: dapple, planted_on: 2025-05-20, plants_set: 2, ${note}}
- {id: P2, spot: M2, variety: dapple, planted_on: 2025-05-20, plants_set: 2, ${note}}
`,
  'seasons/2025/pickings.yaml': `- {planting: P2, picked_on: 2025-08-10, count: about 3, ${by}}\n`,
  'seasons/2025/fruits.yaml': `- id: F1
  planting: P1
  fate: picked
  set: {set_on: 2025-07-01, ${by}}
  pick: {picked_on: 2025-08-12, mass_kg: 4.2, condition: whole, ${by}}
  cut: {cut_on: 2025-08-13, liked: very, ${by}}
  ${note}
- {id: F2, planting: P1, fate: lost, end: {ended_on: 2025-08-01, lost_to: animal, ${by}}, ${note}}
`,
  'seasons/2025/visits.yaml': `- {id: V1, visited_on: 2025-08-10, fruits: [{fruit: F1, call: ripe, ${note}}], ${by}}\n`,
  'weather/porch.csv': `date,rain_mm,tmax_c,tmin_c,note\n2025-06-01,3,28,14,read by ${name}\n`,
};
