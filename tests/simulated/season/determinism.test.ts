import { afterEach, expect, test, vi } from 'vitest';
import { seasonGarden } from './garden.ts';
import { SEASON_SETTINGS } from './settings.ts';

afterEach(() => vi.unstubAllEnvs());

test.each(SEASON_SETTINGS)('$name: one seed, the same bytes, whatever was drawn between', (setting) => {
  const before = JSON.stringify(setting);
  const first = JSON.stringify(seasonGarden(setting, 7));
  const other = seasonGarden(setting, 8);
  vi.stubEnv('TZ', 'Pacific/Kiritimati');
  expect(JSON.stringify(seasonGarden(setting, 7))).toBe(first);
  expect(JSON.stringify(setting)).toBe(before);
  const { texts, truth } = JSON.parse(first) as typeof other;
  for (const [path, text] of Object.entries(texts))
    if (/weather|fruits|visits|pickings/.test(path)) expect(other.texts[path], path).not.toBe(text);
  expect(other.truth.varieties).not.toEqual(truth.varieties);
  expect(other.truth.observers).not.toEqual(truth.observers);
});

test('a garden handed out shares nothing with the next of the same seed', () => {
  for (const setting of SEASON_SETTINGS) {
    const [a, b] = [seasonGarden(setting, 3), seasonGarden(setting, 3)];
    const seen = new Set<unknown>();
    walk(a.truth, (part) => seen.add(part));
    const shared: unknown[] = [];
    walk(b.truth, (part) => seen.has(part) && shared.push(part));
    expect(shared).toEqual([]);
    expect(seen.size).toBeGreaterThan(500);
  }
});

function walk(part: unknown, meet: (part: object) => void): void {
  if (typeof part !== 'object' || part === null) return;
  meet(part);
  for (const one of Object.values(part)) walk(one, meet);
}
