import { expect, test } from 'vitest';
import type { Day } from '../../src/day.ts';
import { openLedger } from '../../src/ledger/ledger.ts';
import type { VarietyMaturity } from '../../src/ledger/maturity/variety-maturity.ts';
import { planting, smallGarden } from './small-garden.ts';

const fruit = (id: string, parts: string, fate = 'picked', of = 'P1'): string =>
  `- {id: ${id}, planting: ${of}, fate: ${fate}, ${parts}}\n`;
const set = (on: string): string => `set: {set_on: ${on}}`;
const pick = (on: string, more = ''): string => `pick: {picked_on: ${on}${more && `, ${more}`}}`;
const cut = (on: string, state: string): string => `cut: {cut_on: ${on}, state: ${state}}`;

const DEFAULT = planting('P1', 'S1');

function ripening(fruits: readonly string[], rows: { plantings?: string; weather?: string } = {}): VarietyMaturity {
  const garden = smallGarden({ plantings: DEFAULT, fruits: fruits.join(''), ...rows });
  const found = openLedger(garden, '2025-09-30' as Day).maturity[0]?.crops[0]?.varieties[0];
  if (!found) throw new Error('no maturity');
  return found;
}

test('earliest, middle and last of fruits cut just ripe or prime, by hand', () => {
  const found = ripening([
    fruit('F1', `${set('2025-07-01')}, ${pick('2025-08-02')}, ${cut('2025-08-02', 'prime')}`), // 32
    fruit('F2', `${set('2025-07-01')}, ${pick('2025-08-10')}, ${cut('2025-08-11', 'just-ripe')}`), // 40
    fruit('F3', `${set('2025-07-05')}, ${pick('2025-08-10')}`), // 36, called
  ]);
  const { earliest, middle, last, n, spots } = found.days.set;
  expect([earliest.value, middle.value, last.value, n, spots]).toEqual([32, 36, 40, 3, 1]);
  expect([found.set.value, found.ripened.value]).toEqual([3, 3]);
  // Planted 20 May: 74, 82 and 82 days.
  expect([found.days.planting.earliest.value, found.days.planting.last.value]).toEqual([74, 82]);
  expect(found.single_days).toEqual([32, 36, 40]);
});

test('lost, thinned and unripe fruits were not yet ripe, and push the middle out', () => {
  const ripe = [
    fruit('F1', `${set('2025-07-01')}, ${pick('2025-08-01')}`), // 31
    fruit('F2', `${set('2025-07-01')}, ${pick('2025-08-05')}`), // 35
    fruit('F3', `${set('2025-07-01')}, ${pick('2025-08-09')}`), // 39
  ];
  expect(ripening(ripe).days.set.middle.value).toBe(35);
  const unripe = [
    fruit('F4', `${set('2025-07-01')}, ${pick('2025-08-03', 'reason: damage')}, ${cut('2025-08-03', 'unripe')}`), // past 33
    fruit('F5', `${set('2025-07-01')}, end: {ended_on: 2025-08-06, lost_to: animal}`, 'lost'), // past 36
  ];
  // Product-limit by hand: 4/5 after 31, then 4/5 × 2/3 = 8/15 after 35, then 0 after 39.
  const found = ripening([...ripe, ...unripe]);
  expect(found.days.set.middle.value).toBe(39);
  expect([found.ripened.value, found.set.value]).toEqual([3, 5]);
});

test('a fruit found over was ripe some time before: no exact day of it', () => {
  const found = ripening([
    fruit('F1', `${set('2025-07-01')}, ${pick('2025-08-01')}, ${cut('2025-08-01', 'prime')}`),
    fruit('F2', `${set('2025-07-01')}, ${pick('2025-08-20')}, ${cut('2025-08-20', 'over')}`),
  ]);
  expect(found.single_days).toEqual([31]);
  expect(found.ripened.value).toBe(2);
  expect(found.days.set.last.value).toBeLessThanOrEqual(31);
});

test('fewer than half ripe leaves the middle open; none ripe leaves all open', () => {
  const lost = (id: string): string => fruit(id, `${set('2025-07-01')}, end: {ended_on: 2025-07-10}`, 'aborted');
  const few = ripening([
    lost('F1'),
    lost('F2'),
    fruit('F3', `${set('2025-07-01')}, end: {ended_on: 2025-09-01}`, 'left'),
    fruit('F4', `${set('2025-07-20')}, ${pick('2025-08-20')}`),
    fruit('F5', `${set('2025-07-01')}, end: {ended_on: 2025-09-01}`, 'left'),
  ]);
  expect(few.days.set.middle).toMatchObject({ value: null, reason: { code: 'not-reached' } });
  expect(few.days.set.earliest.value).toBe(31);
  const none = ripening([lost('F1')]);
  expect(none.days.set.earliest).toMatchObject({ value: null, reason: { code: 'none-seen' } });
});

test('first seen at a size widens the day it set; a set day nobody knows leaves the planting day', () => {
  const seen = ripening([fruit('F1', `set: {first_seen_on: 2025-07-10, first_seen_size: egg}, ${pick('2025-08-10')}`)]);
  // Egg: 4 to 11 days before 10 July, so 35 to 42 days.
  expect(seen.days.set.middle).toMatchObject({ value: 38.5, reason: { code: 'about' } });
  expect(seen.single_days).toEqual([]);
  const unknown = ripening([fruit('F1', pick('2025-08-10'))]);
  expect(unknown.days.set.middle).toMatchObject({ value: null, reason: { code: 'days-unknown' } });
  expect(unknown.days.planting.middle.value).toBe(82);
});

test('an "about" in a fruit’s dates makes the time it gives an about, and no other', () => {
  const found = ripening([
    fruit('F1', `${set('2025-07-01')}, ${pick('2025-08-02')}`), // 32
    fruit('F2', `${set('about 2025-07-01')}, ${pick('2025-08-10')}`), // about 40
    fruit('F3', `${set('2025-07-05')}, ${pick('2025-08-10')}`), // 36
  ]);
  const { earliest, middle, last } = found.days.set;
  expect([earliest.reason, middle.reason, last.reason?.code]).toEqual([null, null, 'about']);
  expect(last.value).toBe(40);
  expect(found.single_days).toEqual([32, 36]);
  const planted = planting('P1', 'S1').replace('planted_on: ', 'planted_on: about ');
  const about = ripening([fruit('F1', pick('2025-08-10'))], { plantings: planted });
  expect(about.days.planting.middle).toMatchObject({ value: 82, reason: { code: 'about' } });
});

test('heat runs from the set day to the eve of the pick, by the garden’s own base', () => {
  const rows = Array.from({ length: 40 }, (_, index) => {
    const day = new Date(Date.UTC(2025, 6, 1 + index)).toISOString().slice(0, 10);
    return `${day},0,26,14`;
  });
  const weather = `date,rain_mm,tmax_c,tmin_c\n${rows.join('\n')}\n`;
  const fruits = [fruit('F1', `${set('2025-07-01')}, ${pick('2025-07-31')}`)];
  // Thirty days of mean 20 above a base of 10: 300 °C·days.
  expect(ripening(fruits, { weather }).heat.set.middle.value).toBeCloseTo(300, 9);
  expect(ripening(fruits).heat.set.middle).toMatchObject({ value: null, reason: { code: 'no-thermometer' } });
  const gap = weather.replace(/2025-07-1.*\n/g, '');
  expect(ripening(fruits, { weather: gap }).heat.set.middle.value).toBeNull();
});

test('a fruit still growing on the day of the book is not yet ripe', () => {
  const found = ripening([
    fruit('F1', set('2025-07-01'), 'growing'),
    fruit('F2', `${set('2025-07-01')}, ${pick('2025-08-10')}`),
  ]);
  expect([found.ripened.value, found.set.value, found.days.set.n]).toEqual([1, 2, 2]);
});
