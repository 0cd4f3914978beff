import { expect, test } from 'vitest';
import { byHand } from './by-hand.ts';
import { departure } from './departure.ts';
import { gardensOf, watched } from './gardens.ts';
import { settingNamed } from './settings.ts';
import { shareBelow } from './share-below.ts';
import { writtenFruits } from './written.ts';

const BLOCKED = settingNamed('3 seasons in blocks');
const GARDENS = gardensOf(BLOCKED, 20);
const DAY_MS = 86_400_000;

const SEASONS = GARDENS.flatMap(({ texts, truth }) =>
  truth.seasons.map(({ slug, fruits }) => {
    const known = new Map(fruits.map((fruit) => [fruit.id, fruit]));
    return writtenFruits(texts, slug).flatMap((row) => {
      const fruit = known.get(row.id);
      return fruit ? [{ row, fruit }] : [];
    });
  }),
);
const ROWS = SEASONS.flat();
const CUTS = ROWS.flatMap(({ row: { cut }, fruit: { pick } }) => (cut && pick ? [{ cut, pick }] : []));
const average = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;

test.each([
  ['split', 0.7],
  ['rotten', 0.5],
])('of fruits found %s, a share of %d is taken in and told so', (what, claimed) => {
  const quiet = watched(BLOCKED);
  const losses = { ...quiet.losses, rot_days: BLOCKED.losses.rot_days };
  // Nobody picks a fruit before it splits, or rots.
  const setting = what === 'split' ? { ...quiet, storm: BLOCKED.storm } : { ...quiet, losses };
  const found = gardensOf(setting, 5).flatMap(({ texts, truth }) =>
    truth.seasons.flatMap(({ slug, fruits }) => {
      const ids = new Set(fruits.filter(({ befell }) => befell?.what === what).map(({ id }) => id));
      return writtenFruits(texts, slug).filter(({ id }) => ids.has(id));
    }),
  );
  expect(found.length).toBeGreaterThan(100);
  expect(
    Math.abs(
      departure(
        found.map(({ fate }) => Number(fate === 'picked')),
        claimed,
      ),
    ),
  ).toBeLessThan(4);
  for (const { pick, end } of found)
    if (pick) expect([pick.condition, pick.reason]).toEqual([what, 'damage']);
    else expect(end?.lost_to).toBe(what === 'split' ? 'split' : 'rot');
});

test('half the losses nobody saw are dated by the walks they lie between', () => {
  const unseen = ROWS.filter(({ fruit }) => fruit.fate === 'lost' && fruit.lost_to !== 'frost');
  const spans = unseen.map(({ row, fruit }) => ({ days: (row.end?.ended_on ?? '').split('..'), fruit }));
  expect(
    Math.abs(
      departure(
        spans.map(({ days }) => Number(days.length === 2)),
        0.5,
      ),
    ),
  ).toBeLessThan(4);
  for (const { days, fruit } of spans) {
    expect(days.at(-1)).toBe(fruit.ended_on);
    expect((fruit.befell?.on ?? '') < fruit.ended_on).toBe(true);
    if (days.length === 1) continue;
    // On a walk on the day it was lost the fruit still hung, and walks are at most four days apart.
    expect((days[0] ?? '') <= (fruit.befell?.on ?? '')).toBe(true);
    expect((Date.parse(fruit.ended_on) - Date.parse(days[0] ?? '')) / DAY_MS).toBeLessThanOrEqual(4);
  }
});

test('tongues tell sugar with an error of half a °Brix, from flat to very sweet', () => {
  for (const [from, words] of [
    [7.5, ['faint', 'sweet', 'very-sweet']],
    [9, ['sweet', 'very-sweet']],
    [11, ['very-sweet']],
  ] as const) {
    const surprise = CUTS.map(
      ({ cut, pick }) =>
        Number((words as readonly (string | undefined)[]).includes(cut.sweet)) - shareBelow((pick.brix - from) / 0.5),
    );
    expect(Math.abs(departure(surprise, 0))).toBeLessThan(4);
  }
});

test('riper flesh is softer, and prime fruit the juiciest and best liked', () => {
  const score = (word: 'crisp' | 'juicy' | 'liked', words: readonly string[], state: string): number =>
    average(CUTS.filter(({ pick }) => pick.state === state).map(({ cut }) => words.indexOf(cut[word] ?? '')));
  const each = (word: 'crisp' | 'juicy' | 'liked', words: readonly string[]): number[] =>
    ['unripe', 'just-ripe', 'prime', 'over'].map((state) => score(word, words, state));
  const crisp = each('crisp', ['mushy', 'soft', 'firm', 'crisp']);
  expect(crisp).toEqual([...crisp].sort((a, b) => b - a));
  for (const scores of [
    each('juicy', ['dry', 'moist', 'juicy', 'running']),
    each('liked', ['no', 'so-so', 'yes', 'very']),
  ])
    expect(scores.indexOf(Math.max(...scores))).toBe(2);
});

test('a fruit is compared with the one of its kind cut before it', () => {
  const differences: { word: string; by: number }[] = [];
  for (const rows of SEASONS) {
    const cuts = rows.filter(({ row, fruit }) => row.cut && fruit.pick);
    const inOrder = cuts.sort((a, b) => ((a.row.cut?.cut_on ?? '') < (b.row.cut?.cut_on ?? '') ? -1 : 1));
    const last = new Map<string, number>();
    for (const { row, fruit } of inOrder) {
      const brix = fruit.pick?.brix ?? Number.NaN;
      const before = last.get(fruit.variety);
      if (before !== undefined) differences.push({ word: row.cut?.than_last ?? '', by: brix - before });
      last.set(fruit.variety, brix);
    }
    // The first of each kind has none before it.
    const wordless = cuts.filter(({ row }) => row.cut?.than_last === undefined).length;
    expect(wordless).toBe(last.size);
  }
  const mean = (which: string): number => average(differences.filter(({ word }) => word === which).map(({ by }) => by));
  expect(mean('sweeter')).toBeGreaterThan(0.6);
  expect(mean('less')).toBeLessThan(-0.6);
  expect(Math.abs(mean('same'))).toBeLessThan(0.2);
});

test('a fruit first seen late is as big as it had grown by then', () => {
  let seen = 0;
  for (const { texts, truth } of gardensOf(settingNamed('2 seasons of few mounds, much left unwritten'), 20)) {
    const { heat } = byHand(truth);
    for (const { slug, fruits } of truth.seasons) {
      const known = new Map(fruits.map((fruit) => [fruit.id, fruit]));
      for (const { id, set } of writtenFruits(texts, slug)) {
        const fruit = known.get(id);
        if (!fruit || !set.first_seen_on) continue;
        // A fruit that came to nothing grew no more.
        const until = [set.first_seen_on, fruit.befell?.on ?? set.first_seen_on].sort()[0] ?? '';
        const grown = Math.min(1, heat(fruit.set_on, until) / (0.85 * fruit.heats.just_ripe)) ** 2.5;
        const kg = Math.exp(fruit.traits.log_mass) * grown;
        const size = [0.005, 0.03, 0.12, 0.6].filter((from) => kg >= from).length;
        expect(set.first_seen_size).toBe(['pea', 'walnut', 'egg', 'fist', 'head'][size]);
        seen++;
      }
    }
  }
  expect(seen).toBeGreaterThan(100);
});
