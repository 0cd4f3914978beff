import { expect, test } from 'vitest';
import { firstPickOf } from '../../src/ledger/first-pick.ts';
import { planting, smallGarden } from './small-garden.ts';

const PLANTINGS = `${planting('P1', 'S1')}${planting('P2', 'S2')}`;
const fruit = (id: string, of: string, parts: string): string =>
  `- {id: ${id}, planting: ${of}, fate: picked, ${parts}}\n`;

const first = (rows: { fruits?: string; pickings?: string; plantings?: string }) => {
  const [season] = smallGarden({ plantings: PLANTINGS, ...rows }).seasons;
  return firstPickOf(season?.plantings ?? []);
};

test('the earliest ripe fruit of register and pickings, with its days from planting out', () => {
  const fruits = fruit('F1', 'P1', 'pick: {picked_on: 2025-08-09, reason: ripe}');
  expect(first({ fruits })).toMatchObject({
    picked_on: { text: '2025-08-09' },
    about: false,
    days_from_planting: 81,
    planting: { id: 'P1' },
  });
  const pickings = '- {planting: P2, picked_on: about 2025-08-04, count: 2}\n';
  expect(first({ fruits, pickings })).toMatchObject({
    picked_on: { kind: 'about', first: '2025-08-04' },
    about: true,
    days_from_planting: 76,
    planting: { id: 'P2' },
  });
});

test('a fruit taken for another reason, or found unripe, is no first pick', () => {
  const fruits = [
    fruit('F1', 'P1', 'pick: {picked_on: 2025-07-20, reason: damage}'),
    fruit('F2', 'P1', 'pick: {picked_on: 2025-07-25, reason: ripe}, cut: {cut_on: 2025-07-25, state: unripe}'),
    fruit('F3', 'P2', 'pick: {picked_on: 2025-08-01}, cut: {cut_on: 2025-08-02, state: prime}'),
    fruit('F5', 'P2', 'pick: {picked_on: 2025-07-30, reason: forecast}, cut: {cut_on: 2025-07-30, state: unripe}'),
    '- {id: F4, planting: P2, fate: lost, end: {ended_on: 2025-07-10, lost_to: animal}}\n',
  ].join('');
  expect(first({ fruits })).toMatchObject({
    picked_on: { text: '2025-08-01' },
    keys: ['plantings/2025/P2', 'fruits/2025/F3'],
  });
});

test('a basket of some day in August may have come before the first dated one', () => {
  const dated = fruit('F1', 'P2', 'pick: {picked_on: 2025-08-09}');
  const pickings = '- {planting: P1, picked_on: 2025-08, count: 3}\n';
  expect(first({ fruits: dated, pickings })).toMatchObject({
    picked_on: { kind: 'span', first: '2025-08-01', last: '2025-08-09' },
    planting: null,
    days_from_planting: null,
  });
  const later = '- {planting: P1, picked_on: 2025-08-20..2025-08-30, count: 3}\n';
  expect(first({ fruits: dated, pickings: later })).toMatchObject({ picked_on: { text: '2025-08-09' } });
});

test('a month alone is told as a month, and gives no days', () => {
  const pickings = '- {planting: P1, picked_on: 2025-08, count: 3}\n';
  expect(first({ pickings })).toMatchObject({
    picked_on: { kind: 'month' },
    planting: { id: 'P1' },
    days_from_planting: null,
  });
});

test('a basket of none is no pick, an unknown day no first, and a planting month gives no days', () => {
  const none = '- {planting: P2, picked_on: 2025-08-01, count: 0}\n- {planting: P1, picked_on: unknown, count: 2}\n';
  expect(first({ pickings: none })).toBeNull();
  const plantings = planting('P1', 'S1').replace('2025-05-20', '2025-05');
  const fruits = fruit('F1', 'P1', 'pick: {picked_on: 2025-08-09}');
  expect(first({ plantings, fruits })).toMatchObject({ picked_on: { text: '2025-08-09' }, days_from_planting: null });
});

test('a fruit picked before rain and found prime was ripe all the same', () => {
  const cut = 'pick: {picked_on: 2025-07-30, reason: forecast}, cut: {cut_on: 2025-07-30, state: prime}';
  expect(first({ fruits: fruit('F1', 'P1', cut) })).toMatchObject({ picked_on: { text: '2025-07-30' } });
});

test('of one day the planting first in the alphabet’s order', () => {
  const on = 'pick: {picked_on: 2025-08-09}';
  expect(first({ fruits: `${fruit('F1', 'P2', on)}${fruit('F2', 'P1', on)}` })?.planting?.id).toBe('P1');
});
