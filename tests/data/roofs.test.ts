import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { type RoofRecord, roofSchema } from '../../src/records/roof.ts';
import { ROOFS } from '../../src/records/tank.ts';
import { PRINTED_SHARES } from '../published/water/roof-runoff.ts';

const written: unknown[] = parse(readFileSync('data/reference/roofs.yaml', 'utf8'), { schema: 'failsafe' });
const roofs: readonly RoofRecord[] = written.map((one) => roofSchema.parse(one));
const shareOf = (id: string): readonly (number | null)[] => {
  const roof = roofs.find((one) => one.id === id);
  return [roof?.runoff_low ?? null, roof?.runoff_high ?? null];
};

test('every roof a tank may name is told, once, and cites a source', () => {
  expect(roofs.map(({ id }) => id).sort()).toEqual([...ROOFS].sort());
  for (const { id, sources } of roofs) expect(sources.length, id).toBeGreaterThan(0);
});

test.each(Object.entries(PRINTED_SHARES))('%s runs off as the least and the most that is printed', (id, printed) => {
  expect(shareOf(id)).toEqual([Math.min(...printed), Math.max(...printed)]);
});

test('a roof nobody wrote down may be any of them', () => {
  const all = Object.values(PRINTED_SHARES).flat();
  expect(shareOf('unknown')).toEqual([Math.min(...all), Math.max(...all)]);
});

test('a share is of one, not of a hundred', () => {
  const [first] = written;
  expect(roofSchema.safeParse({ ...(first as object), runoff_low: '80' }).success).toBe(false);
});
