import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { seasonGarden } from './garden.ts';
import { settingNamed } from './settings.ts';
import { writtenFruits, writtenVisits } from './written.ts';

const asText = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(asText);
  if (typeof value !== 'object' || value === null) return value === undefined ? undefined : String(value);
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, asText(one)]));
};

test('lines of register and visits are read here as a reader of YAML reads them', () => {
  const { texts } = seasonGarden(settingNamed('2 seasons of few mounds, much left unwritten'), 2);
  const options = { schema: 'failsafe' } as const;
  const fruits = writtenFruits(texts, '2025');
  expect(fruits.length).toBeGreaterThan(15);
  expect(fruits).toEqual(asText(parse(texts['seasons/2025/fruits.yaml'] ?? '', options)));
  const visits = parse(texts['seasons/2025/visits.yaml'] ?? '', options) as { id: string; recorded_on?: string }[];
  expect(writtenVisits(texts, '2025')).toEqual(
    visits.map(({ id: _, ...rest }) => ({ recorded_on: undefined, ...rest })),
  );
});
