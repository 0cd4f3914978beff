import { expect, test } from 'vitest';
import type { CropModel } from '../../../content/seed/crop-model.ts';
import type { MarkedFruit } from '../../../content/seed/marked-fruit.ts';
import type { SavedLot } from '../../../content/seed/saved-lot.ts';
import type { SeedVariety } from '../../../content/seed/seed-variety.ts';
import { barePage, PLANTINGS, seedPage } from './saved-garden.ts';

interface Model {
  readonly varieties: readonly SeedVariety[];
  readonly crops: readonly CropModel[];
  readonly marked: readonly MarkedFruit[];
  readonly bitter: readonly string[];
  readonly lots: readonly SavedLot[];
  readonly few_names: readonly string[];
  readonly packets: readonly { readonly variety: string | null; readonly by_hand: boolean }[];
}

const modelOf = (...files: Parameters<typeof seedPage>): Model => seedPage(...files).model as Model;
const worthOf = ({ varieties }: Model) => varieties.map(({ name, worth }) => [name, worth]);

test('others of the kind beside it: only what was closed by hand', () => {
  const model = modelOf();
  // Cloud stands in the list and not in the ground.
  expect(worthOf(model)).toEqual([
    ['Amber', 'close-first'],
    ['Birch', 'none'],
  ]);
  expect(model.varieties[0]).toMatchObject({ beside: ['Birch'], unknown_beside: false, closed: 0 });
  // 2 + 3 plants set, of the 6 the crop's file asks at the least.
  expect(model.varieties[0]?.plants).toMatchObject({ id: 'seed.2025.amber.plants', value: 5, unit: 'plants', n: 2 });
  expect(model.few_names).toEqual(['Amber']);
});

test('alone of its kind, or not: a planting nobody knows may be of its kind', () => {
  const alone = PLANTINGS.split('\n').slice(0, 2).join('\n');
  expect(worthOf(modelOf({ 'seasons/2025/plantings.yaml': `${alone}\n` }))).toEqual([['Amber', 'alone']]);
  const unknown = `${alone}\n- {id: P9, spot: S3, variety: unknown, planted_on: 2025-05-20, plants_set: 2}\n`;
  expect(worthOf(modelOf({ 'seasons/2025/plantings.yaml': unknown }))).toEqual([['Amber', 'close-first']]);
});

test('closed flowers count, each entry at least one; those of another variety do not', () => {
  const flowering =
    '- {seen_on: 2025-06-30, planting: P1, what: closed-for-seed, flowers: 3}\n- {seen_on: 2025-07-01, planting: P2, what: closed-for-seed}\n- {seen_on: 2025-07-01, planting: P1, what: tagged, flowers: 5}\n';
  const model = modelOf({ 'seasons/2025/flowering.yaml': flowering });
  expect(model.varieties[0]).toMatchObject({ closed: 4, worth: 'closed' });
  expect(model.packets).toEqual([expect.objectContaining({ variety: 'Amber', by_hand: true })]);
  const other = modelOf({
    'seasons/2025/flowering.yaml': '- {seen_on: 2025-06-30, planting: P3, what: closed-for-seed}\n',
  });
  // A hybrid's closed flower is a hybrid's still.
  expect(worthOf(other)).toEqual([
    ['Amber', 'close-first'],
    ['Birch', 'none'],
  ]);
});

test('a flower that takes its own pollen may be kept beside others', () => {
  const crop =
    'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\nflowering: {sexes: together, carried_by: shaking, sources: [trade-practice]}\n';
  expect(worthOf(modelOf({}, crop))[0]).toEqual(['Amber', 'itself']);
});

test('before the first season the list stands for the ground, and nothing is counted', () => {
  const model = modelOf({ 'seasons/2025/plantings.yaml': '' });
  expect(worthOf(model)).toEqual([
    ['Amber', 'close-first'],
    ['Birch', 'none'],
    ['Cloud', 'trial'],
  ]);
  expect(model.varieties[0]?.plants).toMatchObject({ value: null, reason: { code: 'not-planted' } });
});

const fruit = (id: string, of: string, cut: string, more = ''): string =>
  `- {id: ${id}, planting: ${of}, fate: picked, pick: {picked_on: 2025-08-20}, cut: {cut_on: 2025-08-21, ${cut}}${more}}\n`;

test('what speaks against a marked fruit', () => {
  const fruits = [
    fruit('F1', 'P1', 'keep_seed: yes', ', plant: a, set: {set_on: 2025-07-10}'),
    // 20 July to 20 August are 31 days; its seed needs 35.
    fruit('F2', 'P1', 'keep_seed: yes', ', plant: a, set: {set_on: 2025-07-20}'),
    fruit('F3', 'P1', 'bitter: yes', ', plant: b'),
    fruit('F4', 'P1', 'keep_seed: yes'),
    fruit('F5', 'P2', 'keep_seed: yes'),
    fruit('F6', 'P3', 'keep_seed: yes'),
    fruit('F7', 'P1', 'keep_seed: no', ', plant: a'),
  ].join('');
  const { marked, bitter } = modelOf({
    'seasons/2025/fruits.yaml': fruits,
    'seasons/2025/scouting.yaml': '- {looked_on: 2025-08-01, spots: [S2], found: wilt}\n',
  });
  expect(marked.map(({ id, against }) => [id, against])).toEqual([
    ['F1', null],
    ['F2', 'young'],
    // Nobody wrote which plant bore it, and one of that spot was bitter.
    ['F4', 'bitter'],
    ['F5', 'sick'],
    ['F6', 'hybrid'],
  ]);
  expect(bitter).toEqual(['S1']);
});

test('only saved lots, their tests added, and how long they live', () => {
  const lots =
    '- {id: L1, variety: amber, from: saved, year: 2024, parents: 4, isolation: 150-to-800-m, tests: [{tested_on: 2025-03-01, seeds: 10, sprouted: 8}, {tested_on: 2025-03-20, seeds: 20, sprouted: 19}]}\n- {id: L2, variety: amber, from: bought, year: 2024}\n- {id: L3, variety: amber, from: saved, isolation: closed-by-hand}\n';
  const { lots: saved } = modelOf({ 'lots.yaml': lots });
  expect(saved.map(({ id }) => id)).toEqual(['L1', 'L3']);
  // 8 + 19 of 10 + 20; 2024 and 4 to 5 years.
  expect(saved[0]).toMatchObject({
    came_up: { id: 'seed.lot.L1.came_up', value: 27, n: 30 },
    sown: 30,
    apart: { by_hand: false, low_m: 150, high_m: 800 },
    until: { low: '2028', high: '2029' },
  });
  expect(saved[1]).toMatchObject({
    came_up: { value: null, reason: { code: 'untested' } },
    apart: { by_hand: true },
    until: null,
  });
});

test('the soonest ripe seed: the first fruit to set, and the days past flower', () => {
  // First set 85 - 45 = 40 days after 20 May, and 35 more: 75 days, 11 + 30 + 31 + 3 is 3 August; 75 / 7 = 10.7 weeks.
  expect(modelOf().crops[0]?.soonest).toMatchObject({
    first: '2025-08-03',
    weeks: { low: 11, high: 11, side: 'after' },
    basis: 'sources',
  });
});

test('a crop without traits has its page', () => {
  const model = barePage().model as Model;
  expect(model.crops[0]).toMatchObject({ seed: null, soonest: null, cleaning: null, crosses: null });
  expect(worthOf(model)[0]).toEqual(['Amber', 'close-first']);
  expect(model.few_names).toEqual([]);
});
