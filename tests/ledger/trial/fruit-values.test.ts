import { expect, test } from 'vitest';
import { fruit, onlyTrial, planted, trialGarden, valuesOf } from './trial-garden.ts';

const pick = (more = '', on = '2025-08-12'): string => `pick: {picked_on: ${on}${more && `, ${more}`}}`;
const cut = (state: string, more = ''): string => `cut: {cut_on: 2025-08-13${state && `, state: ${state}`}${more}}`;

const trialOf = (fruits: readonly string[], plantings = planted(2025, 'P1', 'S1', 'amber')) =>
  onlyTrial(trialGarden({ 2025: { plantings, fruits: fruits.join('') } }));

test('sugar and taste count of fruits found just ripe or prime; mass, size and looks of every fruit picked', () => {
  const told = ', brix_centre: 11, sweet: sweet, crisp: firm, juicy: moist, liked: yes';
  const states = ['just-ripe', 'prime', 'unripe', 'over', ''];
  const trial = trialOf(
    states.map((state, at) =>
      fruit(`F${at}`, 'P1', `${pick('mass_kg: 4, size: big, looks: plain')}, ${cut(state, told)}`),
    ),
  );
  for (const [trait, rung] of [
    ['brix', 11],
    ['sweet', 3],
    ['crisp', 3],
    ['juicy', 2],
    ['liked', 3],
  ] as const)
    expect(valuesOf(trial, trait)).toEqual([`F0 ${rung}`, `F1 ${rung}`]);
  for (const [trait, rung] of [
    ['mass_kg', 4],
    ['size', 3],
    ['looks', 2],
  ] as const)
    expect(valuesOf(trial, trait)).toEqual(states.map((_, at) => `F${at} ${rung}`));
});

test('a fruit not picked tells nothing, even when it was cut', () => {
  const end = 'end: {ended_on: 2025-08-12}';
  const trial = trialOf([
    fruit('F1', 'P1', `${end}, ${cut('prime', ', brix_centre: 9')}`, 'lost'),
    fruit('F2', 'P1', `${end}, ${cut('prime', ', brix_centre: 9')}`, 'thinned'),
    fruit('F3', 'P1', 'set: {set_on: 2025-07-01}', 'growing'),
    fruit('F4', 'P1', `${pick()}, ${cut('prime', ', brix_centre: 10')}`),
  ]);
  expect(valuesOf(trial, 'brix')).toEqual(['F4 10']);
  expect(trial.values.some(({ key }) => key.endsWith('/F3'))).toBe(false);
});

test('a mass of 0 is none, a sugar of 0 is a reading', () => {
  const trial = trialOf([fruit('F1', 'P1', `${pick('mass_kg: 0')}, ${cut('prime', ', brix_centre: 0')}`)]);
  expect(valuesOf(trial, 'mass_kg')).toEqual([]);
  expect(valuesOf(trial, 'brix')).toEqual(['F1 0']);
});

test('every word of a ladder is a step above the one before', () => {
  const ladders = {
    sweet: ['flat', 'faint', 'sweet', 'very-sweet'],
    crisp: ['mushy', 'soft', 'firm', 'crisp'],
    juicy: ['dry', 'moist', 'juicy', 'running'],
    liked: ['no', 'so-so', 'yes', 'very'],
    size: ['small', 'middling', 'big'],
    looks: ['poor', 'plain', 'good', 'handsome'],
  } as const;
  for (const [trait, words] of Object.entries(ladders)) {
    const trial = trialOf(
      words.map((word, at) =>
        trait === 'size' || trait === 'looks'
          ? fruit(`F${at}`, 'P1', pick(`${trait}: ${word}`))
          : fruit(`F${at}`, 'P1', `${pick()}, ${cut('prime', `, ${trait}: ${word}`)}`),
      ),
    );
    expect(valuesOf(trial, trait as keyof typeof ladders)).toEqual(words.map((_, at) => `F${at} ${at + 1}`));
  }
});

test('a fruit keeps its picking day where it is one, its block, its spot and its variety', () => {
  const days = ['2025-08-12', 'about 2025-08-12', '2025-08', '2025-08-10..2025-08-12'];
  const trial = trialOf(
    days.map((on, at) => fruit(`F${at}`, 'P1', pick('mass_kg: 4', on))),
    planted(2025, 'P1', 'S4', 'birch', ', block: B2'),
  );
  const found = trial.values.filter(({ trait }) => trait === 'mass_kg');
  expect(found.map(({ day }) => day)).toEqual(['2025-08-12', '2025-08-12', null, null]);
  expect(found[0]).toMatchObject({
    variety: 'birch',
    season: '2025',
    block: 'B2',
    spot: 'S4',
    key: expect.stringMatching(/2025\/F0$/),
  });
});

test('fruits of a spot planted twice still count; those of an unknown variety do not', () => {
  const plantings =
    planted(2025, 'P1', 'S1', 'amber') + planted(2025, 'P2', 'S1', 'birch') + planted(2025, 'P3', 'S2', 'unknown');
  const trial = trialOf(
    ['P1', 'P2', 'P3'].map((of, at) => fruit(`F${at}`, of, pick('mass_kg: 4'))),
    plantings,
  );
  expect(valuesOf(trial, 'mass_kg')).toEqual(['F0 4', 'F1 4']);
});
