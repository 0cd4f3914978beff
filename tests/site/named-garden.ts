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
tank: {holds_l: 210, ${note}}
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
- {id: F3, planting: P2, fate: picked, pick: {picked_on: 2025-08-10, ${by}}, cut: {cut_on: 2025-08-13, ${by}}, ${note}}
`,
  'seasons/2025/visits.yaml': `- {id: V1, visited_on: 2025-08-10, fruits: [{fruit: F1, call: ripe, ${note}}], ${by}}\n`,
  'lots.yaml': `- {id: L1, variety: dapple, from: gift, tests: [{tested_on: 2025-03-20, seeds: 10, sprouted: 8, ${note}}], ${note}}\n`,
  'seasons/2025/sowings.yaml': `- {sown_on: 2025-04-20, lot: L1, planting: P1, seeds: 6, emerged: 5, ${by}}\n`,
  'seasons/2025/mulching.yaml': `- {laid_on: 2025-06-10, material: straw, spots: [M1], ${by}}\n`,
  'seasons/2025/feeding.yaml': `- {given_on: 2025-05-10, material: compost, spots: [M1], barrows: 1, ${by}}
- {given_on: 2025-07-10, material: liquid-feed, roughly: some, ${by}}
`,
  'seasons/2025/waterings.yaml': `- {watered_on: 2025-07-02, spots: [M1], cans_each: 2, from: tank, ${by}}
- {watered_on: 2025-07-09, roughly: some, ${by}}
`,
  'seasons/2025/soil.yaml': `- {felt_on: 2025-07-02, spots: [M1], top: dry, below: damp, ${by}}\n`,
  'seasons/2025/dips.yaml': `- {dipped_on: 2025-07-06, volume_l: 120, overflowed: no, ${by}}\n`,
  'seasons/2025/flowering.yaml': `- {seen_on: 2025-06-25, planting: P1, what: first-female, ${by}}
- {seen_on: 2025-07-01, planting: P1, what: closed-for-seed, tag: wool, flowers: 3, took: 1, ${by}}
- {seen_on: 2025-07-02, what: insects-counted, insects: 4, ${by}}
`,
  'seasons/2025/girths.yaml': `- {measured_on: 2025-07-20, fruit: F1, girth_cm: 40, ${by}}\n`,
  'seasons/2025/scouting.yaml': `- {looked_on: 2025-07-05, found: other, what: a goat, spots: [M1], checked: 2, affected: 1, severity: 2, ${by}}\n`,
  'seasons/2025/keeping.yaml': `- {ended_on: 2025-08-13, fruit: F1, ended: eaten-sound, ${by}}\n`,
  'seasons/2025/shares.yaml': `- {shared_on: 2025-08-10, to: neighbours, planting: P2, fruits: 2, ${by}}\n`,
  'seasons/2025/tastings.yaml': `- {tasted_on: 2025-08-13, fruit: F1, against: F3, sweeter: same, ${by}}\n- {tasted_on: 2025-08-13, best_first: [F1, F3], ${by}}\n`,
  'weather/porch.csv': `date,rain_mm,tmax_c,tmin_c,note\n2025-06-01,3,28,14,read by ${name}\n`,
};
