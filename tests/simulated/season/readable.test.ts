import { expect, test } from 'vitest';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { linkGarden } from '../../../src/garden/link.ts';
import { readGardenRecords } from '../../../src/reading/garden-records.ts';
import { seasonGarden } from './garden.ts';
import { SEASON_SETTINGS } from './settings.ts';

const { crops } = loadReference('data/reference');

/** Warnings a keeper of such a garden might well get. */
const LIKELY = ['unlikely', 'harvest-missing', 'counts-differ', 'cut-long-after-pick'];

test.each(SEASON_SETTINGS)('$name: its records read without an error, and every fruit is found', (setting) => {
  for (const seed of [1, 2]) {
    const { texts, truth } = seasonGarden(setting, seed);
    const files = Object.entries(texts).map(([path, text]) => ({ path, bytes: new TextEncoder().encode(text) }));
    const { garden, problems } = linkGarden(readGardenRecords(files), crops);
    expect(problems.filter(({ severity, code }) => severity === 'error' || !LIKELY.includes(code))).toEqual([]);
    expect(garden?.seasons.map(({ slug }) => slug)).toEqual(truth.seasons.map(({ slug }) => slug));
    for (const [index, season] of truth.seasons.entries()) {
      const found = garden?.seasons[index]?.plantings.flatMap(({ fruits }) => fruits) ?? [];
      const known = new Map(season.fruits.map((fruit) => [fruit.id, fruit]));
      expect(found.map(({ id }) => id).sort()).toEqual(season.fruits.map(({ id }) => id).sort());
      expect(found.length).toBeGreaterThan(10);
      for (const fruit of found) expect(fruit.fate, fruit.id).toBe(known.get(fruit.id)?.fate);
    }
  }
});
