import { expect, test } from 'vitest';
import type { Day } from '../../src/day.ts';
import { asOf } from '../../src/garden/as-of.ts';
import { lastDay } from '../../src/garden/last-day.ts';
import { planting, smallGarden } from '../ledger/small-garden.ts';

const fruits = [
  '- {id: F1, planting: P1, fate: picked, set: {set_on: 2025-07-01}, pick: {picked_on: 2025-08-12, recorded_on: 2025-08-20}, cut: {cut_on: 2025-08-13}}\n',
  '- {id: F2, planting: P1, fate: lost, set: {set_on: 2025-07-10}, end: {ended_on: 2025-08-01}}\n',
  '- {id: F3, planting: P1, fate: picked, pick: {picked_on: unknown}}\n',
].join('');
const pickings = '- {planting: P1, picked_on: 2025-08-10..2025-08-25, count: 3}\n';
const whole = smallGarden({ plantings: planting('P1', 'S1'), fruits, pickings });
const on = (day: string) => asOf(whole, day as Day).seasons[0]?.plantings[0];

test('the last day is that of the last event or written date', () => {
  expect(lastDay(whole)).toBe('2025-08-25');
});

test('a part counts from the day it was written down, else from its own last day', () => {
  const fate = (day: string, id: string) => on(day)?.fruits.find((fruit) => fruit.id === id)?.fate ?? null;
  expect(fate('2025-06-30', 'F1')).toBeNull();
  expect(fate('2025-07-01', 'F1')).toBe('growing');
  expect(fate('2025-08-19', 'F1')).toBe('growing');
  expect(fate('2025-08-20', 'F1')).toBe('picked');
  expect(fate('2025-07-31', 'F2')).toBe('growing');
  expect(fate('2025-08-01', 'F2')).toBe('lost');
  expect(fate('2025-06-01', 'F3')).toBe('picked');
  expect(on('2025-08-24')?.pickings).toHaveLength(0);
  expect(on('2025-08-25')?.pickings).toHaveLength(1);
});

test('a fruit that a known visit looked at hung there, whatever was written of it later', () => {
  const visits =
    '- {id: V1, visited_on: 2025-07-20, fruits: [{fruit: F1, call: not-yet}, {fruit: F2, call: not-yet}]}\n';
  const late = [
    '- {id: F1, planting: P1, fate: picked, pick: {picked_on: 2025-08-12}}\n',
    '- {id: F2, planting: P1, fate: picked, cut: {cut_on: 2025-08-13}}\n',
  ].join('');
  const garden = smallGarden({ plantings: planting('P1', 'S1'), fruits: late, visits });
  const fates = (day: string) =>
    asOf(garden, day as Day).seasons[0]?.plantings[0]?.fruits.map(({ id, fate, pick, cut }) => [id, fate, pick ?? cut]);
  expect(fates('2025-07-19')).toEqual([]);
  expect(fates('2025-07-20')).toEqual([
    ['F1', 'growing', null],
    ['F2', 'growing', null],
  ]);
  expect(asOf(garden, '2025-08-13' as Day)).toEqual(garden);
});

test('one whose end nobody dated hung till it was cut', () => {
  const late = '- {id: F1, planting: P1, fate: picked, set: {set_on: 2025-07-01}, cut: {cut_on: 2025-08-13}}\n';
  const garden = smallGarden({ plantings: planting('P1', 'S1'), fruits: late });
  const fate = (day: string) => asOf(garden, day as Day).seasons[0]?.plantings[0]?.fruits[0]?.fate;
  expect([fate('2025-08-12'), fate('2025-08-13')]).toEqual(['growing', 'picked']);
});

test('nothing later than the day is in it, and nothing before it is lost', () => {
  expect(on('2025-05-19')).toBeUndefined();
  expect(asOf(whole, '2025-08-25' as Day)).toEqual(whole);
});
