import { expect, test } from 'vitest';
import { loadReference } from '../../src/cli/load-reference.ts';
import { MATERIALS, RAW_MANURES } from '../../src/records/material-id.ts';

const { materials, sources } = loadReference('data/reference');
const known = new Set(sources.map(({ id }) => id));

test('every material a feeding may name is told, once', () => {
  expect(materials.map(({ id }) => id).sort()).toEqual([...MATERIALS].sort());
});

/** 7 CFR 205.203(c): the days run from raw manure; composted by the rule it is free, and so is processed manure (OMRI). */
test('the manure clock runs from raw and from dried manure alone', () => {
  expect(materials.filter(({ manure_clock }) => manure_clock).map(({ id }) => id)).toEqual([...RAW_MANURES]);
  for (const { id, kind, state, manure_clock } of materials) {
    expect(manure_clock, id).toBe(kind === 'manure' && (state === 'raw' || state === 'dried'));
  }
});

test('every material cites sources that are there, and a bought one waits for its label', () => {
  for (const { id, sources: cited } of materials) {
    expect(cited.length, id).toBeGreaterThan(0);
    expect(
      cited.filter((source) => !known.has(source)),
      id,
    ).toEqual([]);
  }
  const labelled = materials.filter(({ id }) => ['bought-feed', 'liquid-feed', 'manure-pellets'].includes(id));
  expect(labelled.map(({ n_of_100_low }) => n_of_100_low)).toEqual([null, null, null]);
});

/**
 * Elements of the compost table (feedlot and dairy; yard waste and crop residue), of 100 parts, to oxides by molar
 * masses: P₂O₅ = P / 0.4364, K₂O = K / 0.8301.
 */
test.each([
  ['manure-composted', { p: [0.5, 1.5], k: [1, 2] }],
  ['compost', { p: [0.2, 0.5], k: [0.5, 2] }],
] as const)('%s was converted from elements to oxides', (id, { p, k }) => {
  const found = materials.find((material) => material.id === id);
  const tenth = (value: number): number => Math.round(10 * value) / 10;
  expect([found?.p2o5_of_100_low, found?.p2o5_of_100_high]).toEqual(p.map((one) => tenth(one / 0.4364)));
  expect([found?.k2o_of_100_low, found?.k2o_of_100_high]).toEqual(k.map((one) => tenth(one / 0.8301)));
});
