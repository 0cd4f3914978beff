import { expect, test } from 'vitest';
import { cautionsAt } from '../../src/book/cautions-at.ts';
import { loadReference } from '../../src/cli/load-reference.ts';
import { STEPS } from '../../src/records/caution.ts';

const reference = loadReference('data/reference');
const { cautions, sources } = reference;

/** Letters a caution may take, so that a few fit a page in full. */
const LONGEST = 500;
/** Cautions at one step; more are not read. */
const MOST = 5;

test.each(STEPS)('a step of the year has a caution, and not too many to read: %s', (step) => {
  const found = cautionsAt(reference, step);
  expect(found.length).toBeGreaterThan(0);
  expect(found.length).toBeLessThanOrEqual(MOST);
});

test('every caution prints at a step, at each once, and has an id of its own', () => {
  const steps: readonly string[] = STEPS;
  for (const { id, at } of cautions) {
    expect(at.length, id).toBeGreaterThan(0);
    expect(new Set(at).size, id).toBe(at.length);
    expect(
      at.filter((step) => !steps.includes(step)),
      id,
    ).toEqual([]);
  }
  expect(new Set(cautions.map(({ id }) => id)).size).toBe(cautions.length);
});

test('a caution is short, tells whom to ask, and where it comes from in few words', () => {
  for (const { id, says, ask, sources: cited } of cautions) {
    expect(says.length, id).toBeLessThanOrEqual(LONGEST);
    expect(ask.length, id).toBeGreaterThan(5);
    const found = cited.map((one) => sources.find((source) => source.id === one));
    expect(
      found.filter((source) => !source?.short).map((source) => source?.id),
      id,
    ).toEqual([]);
  }
});

/** The emergency number differs from country to country. */
test('no caution names a product, a dose or an emergency number', () => {
  for (const { id, says, ask } of cautions) {
    expect(`${says} ${ask}`, id).not.toMatch(/\b(911|999|112|000|111)\b|\bml\b|millilit|teaspoon|tablespoon|®|™/i);
  }
});

test.each([
  ['planting', 'raw-manure', /120 days/],
  ['feeding', 'raw-manure', /tea/],
  ['sowing', 'lamps-and-mats', /residual-current/],
  ['ground', 'old-ground', /lead/],
  ['ground', 'soil-and-cuts', /[Tt]etanus/],
  ['mulching', 'straw-residue', /beans/],
  ['watering', 'tank-water', /never for drinking/],
  ['tank', 'tank-inside', /[Nn]ever climb/],
  ['tank', 'tank-shut', /mosquito/],
  ['scouting', 'spraying', /label is the law/],
  ['seed', 'bitter-seed', /bitter/],
  ['away', 'neighbour', /bitter/],
  ['cutting', 'cut-fruit', /2 hours/],
] as const)('at %s stands %s with its point', (step, id, point) => {
  expect(cautionsAt(reference, step)).toContain(id);
  expect(cautions.find((caution) => caution.id === id)?.says).toMatch(point);
});
