/** One kept fruit: the day of August 2025 it was picked, days until its end, how that was, and more of its entry. */
export type Kept = readonly [picked: number, days: number, ended: string, more?: string];

const day = (number: number): string => new Date(Date.UTC(2025, 7, number)).toISOString().slice(0, 10);

/** Texts of a garden of one mound of an own crop with the fruit laid by as told. */
export const keptGarden = (
  kept: readonly Kept[],
  { edition = 'community', units = 'metric', crop = '', shares = '' }: Readonly<Record<string, string>> = {},
): Record<string, string> => ({
  'garden.yaml': `name: Test plot\nedition: ${edition}\nunits: ${units}\npaper: A4\nlocale: en-GB\nspots:\n  - {id: S1, kind: mound}\n`,
  'crops/globe.yaml': `id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n${crop}`,
  'varieties.yaml': '- {id: amber, name: Amber, crop: globe, seed: unknown}\n',
  'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-10-31\n',
  'seasons/2025/plantings.yaml': '- {id: P1, spot: S1, variety: amber, planted_on: 2025-05-20, plants_set: 4}\n',
  ...(kept.length > 0 && {
    'seasons/2025/fruits.yaml': kept
      .map(([picked], index) => `- {id: F${index}, planting: P1, fate: picked, pick: {picked_on: ${day(picked)}}}\n`)
      .join(''),
    'seasons/2025/keeping.yaml': kept
      .map(
        ([picked, days, ended, more = ''], index) =>
          `- {fruit: F${index}, ended_on: ${day(picked + days)}, ended: ${ended}${more}}\n`,
      )
      .join(''),
  }),
  ...(shares && { 'seasons/2025/shares.yaml': shares }),
});

/** Seven fruits, four of them eaten sound or given away, two rotten, one soft. */
export const SEVEN: readonly Kept[] = [
  [10, 3, 'eaten-sound', ', place: kitchen'],
  [10, 7, 'given-away'],
  [12, 8, 'rotted', ', place: shed'],
  [12, 14, 'eaten-soft', ', place: kitchen'],
  [14, 20, 'eaten-sound', ', place: cellar, store_c: 14'],
  [14, 25, 'rotted', ', place: cellar'],
  [16, 30, 'eaten-sound', ', place: cellar'],
];
