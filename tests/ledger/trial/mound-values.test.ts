import { expect, test } from 'vitest';
import { fruit, onlyTrial, planted, trialGarden, valuesOf } from './trial-garden.ts';

const pick = (more: string, on = '2025-08-12'): string => `pick: {picked_on: ${on}, ${more}}`;
const P1 = planted(2025, 'P1', 'S1', 'amber');

function trialOf(rows: { plantings?: string; fruits?: readonly string[]; pickings?: string; weather?: string }) {
  const { plantings = P1, fruits = [], pickings = '', weather } = rows;
  const season = { plantings, fruits: fruits.join(''), pickings };
  return onlyTrial(trialGarden({ 2025: season }, weather ? { weather } : {}));
}

test('sound mass and ripe fruits a plant set, by hand', () => {
  const trial = trialOf({
    fruits: [
      fruit('F1', 'P1', pick('mass_kg: 3, condition: whole')),
      fruit('F2', 'P1', pick('mass_kg: 4, condition: split')),
      fruit('F3', 'P1', `${pick('mass_kg: 5, condition: whole')}, cut: {cut_on: 2025-08-13, state: unripe}`),
      fruit('F4', 'P1', `${pick('mass_kg: 2, condition: whole')}, cut: {cut_on: 2025-08-13, state: over}`),
      fruit('F5', 'P1', pick('mass_kg: 1, condition: whole, reason: frost')),
    ],
  });
  // Whole: 3 + 5 + 2 + 1 = 11 kg of 2 plants. Ripe: F1, F2 and F4; F3 was not when cut, F5 picked for frost.
  expect(valuesOf(trial, 'sound_kg_per_plant')).toEqual(['P1 5.5']);
  expect(valuesOf(trial, 'ripe_fruits_per_plant')).toEqual(['P1 1.5']);
});

test('a fruit still growing: the mound has not told what it gave, but has told its first', () => {
  const trial = trialOf({
    fruits: [
      fruit('F1', 'P1', pick('mass_kg: 3, condition: whole')),
      fruit('F2', 'P1', 'set: {set_on: 2025-07-20}', 'growing'),
    ],
  });
  expect(valuesOf(trial, 'sound_kg_per_plant')).toEqual([]);
  expect(valuesOf(trial, 'ripe_fruits_per_plant')).toEqual([]);
  // 20 May to 12 August: 11 + 30 + 31 + 12.
  expect(valuesOf(trial, 'first_ripe_days')).toEqual(['P1 84']);
});

test('a whole fruit not weighed leaves the mass untold and the fruits counted', () => {
  const trial = trialOf({
    fruits: [fruit('F1', 'P1', pick('condition: whole')), fruit('F2', 'P1', pick('mass_kg: 4, condition: whole'))],
  });
  expect(valuesOf(trial, 'sound_kg_per_plant')).toEqual([]);
  expect(valuesOf(trial, 'ripe_fruits_per_plant')).toEqual(['P1 1']);
});

test('a spot planted twice, an unknown variety and a mound nobody wrote of tell nothing', () => {
  const plantings =
    P1 +
    planted(2025, 'P2', 'S1', 'birch') +
    planted(2025, 'P3', 'S2', 'unknown') +
    planted(2025, 'P4', 'S3', 'amber') +
    planted(2025, 'P5', 'S4', 'amber');
  const fruits = ['P1', 'P2', 'P3', 'P5'].map((of) => fruit(`F${of}`, of, pick('mass_kg: 3, condition: whole')));
  const trial = trialOf({ plantings, fruits });
  for (const trait of ['sound_kg_per_plant', 'ripe_fruits_per_plant', 'first_ripe_days'] as const)
    expect(valuesOf(trial, trait).map((one) => one.split(' ')[0])).toEqual(['P5']);
});

test('a mound whose plants all died gave nothing, and has no first day', () => {
  const trial = trialOf({ plantings: planted(2025, 'P1', 'S1', 'amber', ', plants_alive: 0') });
  expect(valuesOf(trial, 'sound_kg_per_plant')).toEqual(['P1 0']);
  expect(valuesOf(trial, 'ripe_fruits_per_plant')).toEqual(['P1 0']);
  expect(valuesOf(trial, 'first_ripe_days')).toEqual([]);
});

test('a mound told by its pickings counts all its fruits as ripe', () => {
  const pickings =
    '- {id: K1, planting: P1, picked_on: 2025-08-10, count: 3, sound_count: 3, mass_kg: 9}\n' +
    '- {id: K2, planting: P1, picked_on: 2025-08-20, count: 2, sound_count: 0, mass_kg: 5}\n';
  const trial = trialOf({ pickings });
  expect(valuesOf(trial, 'sound_kg_per_plant')).toEqual(['P1 4.5']);
  expect(valuesOf(trial, 'ripe_fruits_per_plant')).toEqual(['P1 2.5']);
  expect(valuesOf(trial, 'first_ripe_days')).toEqual(['P1 82']);
});

test('the first ripe fruit: unripe ones before it do not count; a day not known to the day is none', () => {
  const unripe = fruit('F1', 'P1', `${pick('reason: other', '2025-08-02')}`);
  const ripe = fruit('F2', 'P1', pick('reason: ripe', '2025-08-12'));
  expect(valuesOf(trialOf({ fruits: [unripe, ripe] }), 'first_ripe_days')).toEqual(['P1 84']);
  expect(valuesOf(trialOf({ fruits: [unripe] }), 'first_ripe_days')).toEqual([]);
  const month = fruit('F3', 'P1', pick('reason: ripe', '2025-08'));
  expect(valuesOf(trialOf({ fruits: [month] }), 'first_ripe_days')).toEqual([]);
  const plantings = P1.replace('planted_on: 2025-05-20', 'planted_on: 2025-05');
  expect(valuesOf(trialOf({ plantings, fruits: [ripe] }), 'first_ripe_days')).toEqual([]);
});

test('heat to the first ripe fruit: 84 days of a mean of 20 above a base of 10; none without all its days', () => {
  const rows = Array.from({ length: 100 }, (_, at) => {
    const day = new Date(Date.UTC(2025, 4, 20 + at)).toISOString().slice(0, 10);
    return `${day},0,26,14`;
  });
  const weather = `date,rain_mm,tmax_c,tmin_c\n${rows.join('\n')}\n`;
  const fruits = [fruit('F1', 'P1', pick('reason: ripe'))];
  const [told] = trialOf({ fruits, weather }).values.filter(({ trait }) => trait === 'first_ripe_c_days');
  expect(told?.value).toBeCloseTo(840, 9);
  const gap = weather.replace(/2025-07-1.*\n/g, '');
  expect(valuesOf(trialOf({ fruits, weather: gap }), 'first_ripe_c_days')).toEqual([]);
  expect(valuesOf(trialOf({ fruits }), 'first_ripe_c_days')).toEqual([]);
});
