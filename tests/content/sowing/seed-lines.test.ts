import { expect, test } from 'vitest';
import { type SeedLine, seedLines } from '../../../content/sowing/seed-lines.ts';
import { seedRows } from '../../../content/sowing/seed-rows.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

const reference = loadReference('data/reference');
const CROP = 'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n';
const SEED =
  'seed: {crosses: {en: x}, isolation_low_m: 150, isolation_high_m: 800, parents_low: 6, parents_high: 12, cleaning: {en: x}, germination_of_100: 70, sources: [trade-practice]}\n';

function linesOf(lots: string, crop: string, sowings = ''): SeedLine[] {
  const { garden, problems } = linkTexts({
    'garden.yaml': 'name: T\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\nspots: [{id: S1, kind: mound}]\n',
    'crops/globe.yaml': crop,
    'varieties.yaml':
      '- {id: amber, name: Amber, crop: globe, seed: unknown}\n- {id: birch, name: Birch, crop: globe, seed: unknown}\n',
    'lots.yaml': lots,
    'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-10-31\n',
    'seasons/2025/sowings.yaml': sowings,
  });
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid garden: ${JSON.stringify(errors)}`);
  return seedLines(bookOf({ reference }, garden, null).facts);
}

const seedsOf = (line: SeedLine | undefined) => line?.seeds.map(({ wanted, figure }) => [wanted, figure.value]);

/**
 * Binomial at 0.7. Two of four: 1 - 0.3^4 - 4·0.7·0.3^3 = 0.916, of three 0.784. Four of eight: 0.942, of seven 0.874.
 * Eight of fourteen: 0.907, of thirteen 0.835 (sums by hand).
 */
test('untested seed takes the law’s least share', () => {
  const [amber, birch] = linesOf('', CROP + SEED);
  expect(seedsOf(amber)).toEqual([
    [2, 4],
    [4, 8],
    [8, 14],
  ]);
  expect(amber?.seeds[0]?.figure).toMatchObject({
    id: 'sowing.variety.amber.seeds_for_2',
    method: 'seeds-by-law',
    reason: { code: 'untested' },
  });
  expect(birch?.test).toBeNull();
});

test('in print, varieties of which the same is said share a row, and those of which nothing is said have none', () => {
  expect(seedRows(linesOf('', CROP + SEED)).map(({ varieties }) => varieties)).toEqual([['Amber', 'Birch']]);
  expect(seedRows(linesOf('', CROP))).toEqual([]);
  const lots = '- {id: A-24, variety: amber, from: bought}\n- {id: A-23, variety: amber, from: bought}\n';
  expect(seedRows(linesOf(lots, CROP + SEED)).map(({ lot, varieties }) => [lot, varieties])).toEqual([
    ['A-23', ['Amber']],
    ['A-24', ['Amber']],
    [null, ['Birch']],
  ]);
});

test('a crop of which no law speaks has no number', () =>
  expect(seedsOf(linesOf('', CROP)[0])).toEqual([
    [2, null],
    [4, null],
    [8, null],
  ]));

test('tests and counted trays of a lot are added; a lot stands for its variety', () => {
  const lots =
    '- {id: A-24, variety: amber, from: bought, tests: [{tested_on: 2025-03-01, seeds: 10, sprouted: 9}]}\n- {id: A-20, variety: amber, from: saved}\n';
  const lines = linesOf(
    lots,
    CROP + SEED,
    '- {sown_on: 2025-04-20, lot: A-24, seeds: 12, emerged: 10}\n- {sown_on: 2025-04-21, lot: A-24, seeds: 5}\n- {sown_on: 2025-04-21, lot: A-20, seeds: 6, emerged: 0}\n',
  );
  expect(lines.map(({ variety, lot, test: counted }) => [variety, lot, counted])).toEqual([
    ['Amber', 'A-20', { sown: 6, came_up: 0 }],
    ['Amber', 'A-24', { sown: 22, came_up: 19 }],
    ['Birch', null, null],
  ]);
  expect(lines[1]?.seeds[0]?.figure).toMatchObject({ method: 'seeds-after-test', reason: null, n: 22 });
});

test('a small test asks for more seed than a large one of the same share', () => {
  const lotOf = (seeds: number, sprouted: number): string =>
    `- {id: L, variety: amber, from: bought, tests: [{tested_on: 2025-03-01, seeds: ${seeds}, sprouted: ${sprouted}}]}\n`;
  const [small, large] = [linesOf(lotOf(5, 4), CROP)[0], linesOf(lotOf(10_000, 8000), CROP)[0]];
  // 8,000 of 10,000 is as good as 0.8: four of six, for 1 - P(Bin(6, 0.8) < 4) = 0.901.
  expect(seedsOf(large)?.[1]).toEqual([4, 6]);
  expect(small?.seeds[1]?.figure.value ?? 0).toBeGreaterThan(6);
});
