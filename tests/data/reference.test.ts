import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { bookOf } from '../../src/cli/make-book.ts';
import { loadGarden } from '../../src/cli/load-garden.ts';
import type { Garden } from '../../src/garden/garden.ts';

const demo = loadGarden('data/garden');
const { reference } = demo;
const sources = new Set(reference.sources.map(({ id }) => id));
const methods = new Set(reference.methods.map(({ id }) => id));

test('every caution, method and crop bound cites a source that is there', () => {
  const cited = [
    ...reference.cautions.flatMap((caution) => caution.sources),
    ...reference.methods.flatMap((method) => method.sources),
    ...reference.crops.flatMap(({ bounds }) => bounds?.source ?? []),
  ];
  expect(cited.length).toBeGreaterThan(10);
  expect(cited.filter((id) => !sources.has(id))).toEqual([]);
  expect(reference.cautions.filter((caution) => caution.sources.length === 0 || caution.at.length === 0)).toEqual([]);
});

test('no person has checked a caution until one is named', () => {
  expect(reference.cautions.filter(({ checked_by }) => checked_by !== null)).toEqual([]);
});

test('every figure of the demo names a method and a formula source that have words', () => {
  const { figures } = bookOf(demo, demo.garden as Garden, null);
  expect(figures.length).toBeGreaterThan(100);
  expect(figures.filter(({ method }) => !methods.has(method)).map(({ id }) => id)).toEqual([]);
  expect(figures.filter(({ source }) => source !== null && !sources.has(source)).map(({ id }) => id)).toEqual([]);
});

test('a figure has a value, or a reason; an interval holds its value', () => {
  const { figures } = bookOf(demo, demo.garden as Garden, null);
  for (const { id, value, interval, reason } of figures) {
    if (value === null) expect(reason, id).not.toBeNull();
    else expect(Number.isFinite(value), id).toBe(true);
    if (interval && value !== null) expect(interval.low <= value && value <= interval.high, id).toBe(true);
  }
});

test('every locale a garden may name has its messages', () => {
  const files = readdirSync(join('layouts', 'messages'));
  for (const locale of ['en', 'en-GB', 'en-US', 'en-NZ', 'en-AU']) expect(files).toContain(`${locale}.yaml`);
});

test('demo and starter hold no error', () => {
  for (const folder of ['data/garden', 'data/starter']) {
    expect(loadGarden(folder).problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  }
});
