import { expect, test } from 'vitest';
import { keptInMemory } from '../../../src/kept.ts';
import { createBases } from '../../../src/ledger/bases.ts';
import { cropTrials } from '../../../src/ledger/trial/crop-trial.ts';
import { ballotsOf, type TasteQuestion, tasteOf } from '../../../src/ledger/trial/taste.ts';
import { fruit, onlyTrial, planted, trialGarden } from './trial-garden.ts';

const on = (id: string, told: string): string => `- {id: ${id}, tasted_on: 2025-08-14, ${told}}\n`;
const pair = (id: string, first: string, second: string, told: string): string =>
  on(id, `fruit: ${first}, against: ${second}, ${told}`);

/** Fruits A1 to A4 of amber and so on, each cut prime but those named unripe. */
function gardenOf(tastings: string, { unripe = [] as readonly string[] } = {}) {
  const varieties = ['amber', 'birch', 'copper', 'dusk'];
  const plantings =
    varieties.map((variety, at) => planted(2025, `P${at}`, `S${at + 1}`, variety)).join('') +
    planted(2025, 'P9', 'S9', 'unknown');
  const fruits = varieties.flatMap((variety, at) =>
    [1, 2, 3, 4].map((of) => {
      const id = `${variety[0]?.toUpperCase()}${of}`;
      const state = unripe.includes(id) ? 'unripe' : 'prime';
      return fruit(id, `P${at}`, `pick: {picked_on: 2025-08-12}, cut: {cut_on: 2025-08-13, state: ${state}}`);
    }),
  );
  const stranger = fruit('X1', 'P9', 'pick: {picked_on: 2025-08-12}');
  return trialGarden({ 2025: { plantings, fruits: fruits.join('') + stranger, tastings } });
}

const ballots = (tastings: string, question: TasteQuestion = 'better', more = {}) =>
  ballotsOf(gardenOf(tastings, more), 'globe', question);

const tasted = (tastings: string, yardstick = 'amber', question: TasteQuestion = 'better') =>
  tasteOf(ballots(tastings, question), yardstick)?.varieties ?? [];

const asked = (tastings: string, variety: string) => tasted(tastings).find((one) => one.variety === variety);

/** So many pairs of birch's first `birch` fruits and amber's first three, birch liked better in all but one. */
const pairs = (count: number, birch = 3): string =>
  Array.from({ length: count }, (_, at) =>
    pair(`T${at}`, `B${1 + (at % birch)}`, `A${1 + (at % 3)}`, `better: ${at === 0 ? 'less' : 'better'}`),
  ).join('');

test('three fruits and ten ballots of both, or no chance is told', () => {
  expect(asked(pairs(10), 'birch')).toMatchObject({ fruits: 3, ballots: 10, seasons: 1, cannot: null });
  expect(asked(pairs(10), 'birch')?.better).toBeGreaterThan(0.5);
  expect(asked(pairs(10), 'amber')).toMatchObject({ cannot: 'yardstick', better: null });
  expect(asked(pairs(9), 'birch')).toMatchObject({ ballots: 9, cannot: 'few-ballots', better: null });
  expect(asked(pairs(10, 2), 'birch')).toMatchObject({ fruits: 2, cannot: 'few-fruits', better: null });
  expect(tasted(pairs(10), 'copper').find(({ variety }) => variety === 'birch')).toMatchObject({
    cannot: 'yardstick-untasted',
    better: null,
  });
});

test('a yardstick of too few fruits is as good as untasted', () => {
  const few = pairs(12).replaceAll('against: A2', 'against: A1').replaceAll('against: A3', 'against: A1');
  expect(asked(few, 'birch')).toMatchObject({ fruits: 3, ballots: 12, cannot: 'yardstick-untasted', better: null });
});

test('one never tasted beside the others cannot be told from them', () => {
  const apart = Array.from({ length: 10 }, (_, at) =>
    pair(`U${at}`, `C${1 + (at % 3)}`, `D${1 + (at % 3)}`, 'better: better'),
  ).join('');
  expect(asked(pairs(10) + apart, 'copper')).toMatchObject({ cannot: 'not-joined', better: null });
  expect(asked(pairs(10) + apart, 'birch')?.cannot).toBeNull();
});

test('a fruit cut unripe is left out: a pair falls, an order closes up', () => {
  const rows = pair('T1', 'A1', 'B1', 'better: better') + on('T2', 'best_first: [B2, A1, C1]');
  expect(ballots(rows).tastings.pairs).toHaveLength(1);
  const { tastings } = ballots(rows, 'better', { unripe: ['A1'] });
  expect(tastings.pairs).toEqual([]);
  expect(tastings.orders.map(({ best_first }) => best_first)).toEqual([['2025/B2', '2025/C1']]);
  expect(ballots(rows, 'better', { unripe: ['A1', 'B2'] }).tastings.orders).toEqual([]);
});

test('an order is cut to the fruits of known varieties of the crop', () => {
  const { tastings, keys } = ballots(on('T1', 'best_first: [X1, B1, A1]') + on('T2', 'best_first: [X1, B1]'));
  expect(tastings.orders.map(({ best_first }) => best_first)).toEqual([['2025/B1', '2025/A1']]);
  expect(keys).toHaveLength(1);
});

test('a pair says the same whichever fruit stands first', () => {
  const turned = pairs(12).replace(/fruit: (\w+), against: (\w+), better: (\w+)/g, (_, first, second, said) => {
    const other = said === 'better' ? 'less' : 'better';
    return `fruit: ${second}, against: ${first}, better: ${other}`;
  });
  expect(turned).not.toBe(pairs(12));
  expect(asked(turned, 'birch')?.better).toBeCloseTo(asked(pairs(12), 'birch')?.better ?? 0, 10);
  const same = (first: string, second: string): string => pairs(12) + pair('T99', first, second, 'better: same');
  expect(asked(same('A1', 'B1'), 'birch')?.better).toBeCloseTo(asked(same('B1', 'A1'), 'birch')?.better ?? 0, 10);
});

test('each question has its own ballots; a blank answer is none', () => {
  const rows =
    pair('T1', 'A1', 'B1', 'better: better, sweeter: less') +
    pair('T2', 'A2', 'B2', 'sweeter: same') +
    on('T3', 'best_first: [A1, B1], sweetest_first: [B1, A1]') +
    on('T4', 'sweetest_first: [B1, A2]');
  const [better, sweeter] = [ballots(rows), ballots(rows, 'sweeter')];
  expect(better.tastings.pairs.map(({ said }) => said)).toEqual(['first']);
  expect(sweeter.tastings.pairs.map(({ said }) => said)).toEqual(['second', 'same']);
  expect(better.tastings.orders.map(({ best_first }) => best_first)).toEqual([['2025/A1', '2025/B1']]);
  expect(sweeter.tastings.orders.map(({ best_first }) => best_first)).toEqual([
    ['2025/B1', '2025/A1'],
    ['2025/B1', '2025/A2'],
  ]);
  expect(tasteOf(ballots(''), 'amber')).toBeNull();
  expect(tasteOf(ballots(pair('T1', 'A1', 'A2', 'better: better')), 'amber')).toBeNull();
});

test('both questions answered alike keep their own answer when fits are kept', () => {
  const rows = pairs(12).replace(/better: (\w+)\}/g, (_, said) => {
    return `better: ${said}, sweeter: ${said === 'better' ? 'sweeter' : 'less'}}`;
  });
  const garden = gardenOf(rows);
  const kept = keptInMemory();
  const told = () => cropTrials(garden, createBases(), kept).find(({ crop }) => crop.id === 'globe')?.tastes;
  expect(told()?.map(({ taste }) => taste.question)).toEqual(['better', 'sweeter']);
  expect(told()).toEqual(onlyTrial(garden).tastes);
});

test('told in twentieths, no surer than a summer allows, with fruits and ballots behind it', () => {
  const { tastes } = onlyTrial(gardenOf(pairs(40)));
  expect(tastes.map(({ taste }) => taste.question)).toEqual(['better']);
  const told = tastes[0]?.rows.find(({ variety }) => variety.id === 'birch');
  expect(told?.told.better).toBeGreaterThan(0.85);
  expect(told?.better).toMatchObject({
    id: 'variety.globe.taste.better.birch.better_of_twenty',
    value: 16,
    unit: 'of_twenty',
    n: 40,
    replicate: { kind: 'fruit', count: 3 },
    reach: 'another-spot-this-summer',
    source: 'rue-2009',
  });
  const none = onlyTrial(gardenOf(pairs(9))).tastes[0]?.rows.find(({ variety }) => variety.id === 'birch');
  expect(none?.better).toMatchObject({
    value: null,
    reason: { code: 'few-ballots', values: { fruits: 3, ballots: 9 } },
  });
});
