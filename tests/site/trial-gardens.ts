/** Gardens with enough spots to compare varieties, each with its own reason why the page may not: texts by path. */

interface Spot {
  readonly variety: 'dapple' | 'thimble' | 'unknown';
  readonly block?: string;
  /** The pick's keys after its date; null when nothing is written down of the spot. */
  readonly pick: string | null;
}

const lines = <T>(rows: readonly T[], line: (row: T, index: number) => string): string =>
  rows.map((row, index) => `${line(row, index)}\n`).join('');

const trial = (spots: readonly Spot[], more: Readonly<Record<string, string>> = {}): Record<string, string> => ({
  'garden.yaml': `name: Six by the hedge\nedition: community\nunits: metric\npaper: A4\nlocale: en-GB\nbeds: [{id: E, area_m2: 18}]\nspots:\n${lines(spots, (_, index) => `  - {id: M${index + 1}, kind: mound, bed: E}`)}`,
  'varieties.yaml':
    '- {id: dapple, name: Dapple Gate, crop: watermelon, seed: open-pollinated, yardstick: yes}\n- {id: thimble, name: Thimble Moss, crop: watermelon, seed: hybrid}\n',
  'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-15\nends_on: 2025-08-12\n',
  'seasons/2025/plantings.yaml': lines(
    spots,
    ({ variety, block }, index) =>
      `- {id: P${index + 1}, spot: M${index + 1}, ${block ? `block: ${block}, ` : ''}variety: ${variety}, planted_on: 2025-05-20, plants_set: 2}`,
  ),
  'seasons/2025/fruits.yaml': lines(
    spots.flatMap(({ pick }, index) => (pick === null ? [] : [{ pick, index }])),
    ({ pick, index }) =>
      `- {id: F${index + 1}, planting: P${index + 1}, fate: picked, pick: {picked_on: 2025-08-12, ${pick}}}`,
  ),
  ...more,
});

const whole = (kg: number): string => `mass_kg: ${kg}, condition: whole`;
const six = (masses: readonly (number | null)[], blocks: readonly string[] = []): Spot[] =>
  masses.map((kg, index) => ({
    variety: index < 3 ? 'dapple' : 'thimble',
    ...(blocks[index] && { block: blocks[index] }),
    pick: kg === null ? null : whole(kg),
  }));

export const TRIAL_GARDENS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'a pair told apart': trial(six([10, 11, 12, 5, 6, 7])),
  'a pair not told apart': trial(six([10, 11, 12, 9, 11, 13])),
  'repeats that agree exactly': trial(six([4, 4, 4, 4, 4, 4])),
  'blocks that never meet': trial(six([10, 11, 12, 5, 6, 7], ['B1', 'B1', 'B1', 'B2', 'B2', 'B2'])),
  'as many blocks as spots allow': trial(six([10, 11, 12, 5, 6, 7], ['B1', 'B2', 'B3', 'B1', 'B2', 'B3'])),
  'spots nobody wrote of': trial(six([10, 11, 12, 5, null, null])),
  'nothing left over to tell repeats apart': trial(six([10, 11, 12, 5], ['B1', 'B2', 'B3', 'B1'])),
  'varieties nobody wrote of beside one nobody knows': trial([
    ...six([null, null, null, null, null, null]),
    { variety: 'unknown', pick: whole(4) },
  ]),
  'spots in which nothing was set': trial(six([10, 11, 12, 5, 6, 7]), {
    'seasons/2025/plantings.yaml': `${trial(six([10, 11, 12, 5, 6]))['seasons/2025/plantings.yaml']}- {id: P6, spot: M6, variety: thimble, planted_on: 2025-05-20, plants_set: 0}\n`,
  }),
  'self-sown vines only': trial(six([10, 11]), {
    'seasons/2025/plantings.yaml': String(trial(six([10, 11]))['seasons/2025/plantings.yaml']).replaceAll(
      'plants_set: 2',
      'plants_set: 0',
    ),
  }),
  'one spot not looked over': trial([...six([10, 11, 12, 5, 6]), { variety: 'thimble', pick: 'mass_kg: 7' }]),
  'tubs only': trial(six([10, 11, 12, 5, 6, 7]), {
    'garden.yaml': String(trial(six([10, 11, 12, 5, 6, 7]))['garden.yaml']).replaceAll('mound', 'tub'),
  }),
  'one variety alone': trial(six([10, 11, 12])),
  'a spot planted twice': trial(six([10, 11, 12, 5, 6, 7]), {
    'seasons/2025/pickings.yaml': '- {planting: P9, picked_on: 2025-08-01, count: 2}\n',
    'seasons/2025/plantings.yaml': `${trial(six([10, 11, 12, 5, 6, 7]))['seasons/2025/plantings.yaml']}- {id: P9, spot: M6, variety: dapple, planted_on: 2025-06-20, plants_set: 0}\n`,
  }),
  'two seasons, the later one empty': trial(six([10, 11, 12, 5, 6, 7]), {
    'seasons/2026/season.yaml': 'label: 2026\nstarts_on: 2026-04-15\nends_on: 2026-09-30\n',
    'seasons/2026/plantings.yaml': '- {id: Q1, spot: M1, variety: dapple, planted_on: 2026-05-20, plants_set: 2}\n',
  }),
  'a label with a stroke': trial(six([10, 11, 12, 5, 6, 7]), {
    'seasons/2025-26/season.yaml': 'label: 2025/26\nstarts_on: 2025-10-01\nends_on: 2026-04-30\n',
    'seasons/2025-26/plantings.yaml': '- {id: Q1, spot: M1, variety: dapple, planted_on: 2025-11-20, plants_set: 2}\n',
    'seasons/2025-26/pickings.yaml':
      '- {planting: Q1, picked_on: 2026-02-20, count: about 3, sound_count: 3, mass_lb: 20}\n',
  }),
  'only a wet-and-dry record of weather': trial(six([10, 11, 12, 5, 6, 7]), {
    'garden.yaml': String(trial(six([10, 11, 12, 5, 6, 7]))['garden.yaml']).replace(
      'beds:',
      'weather: {station: gate, read: evening}\nbeds:',
    ),
    'weather/gate.csv': 'date,rain\n2025-06-01,soaking\n2025-06-02,none\n',
  }),
};
