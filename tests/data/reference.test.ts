import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { loadGarden } from '../../src/cli/load-garden.ts';
import { inLanguage } from '../../src/garden/in-language.ts';
import { PARTED, SIGN_KEYS, SIGNS } from '../../src/records/sign.ts';
import { bookOfFolder } from '../site/built.ts';

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

const FIELDS = [...SIGN_KEYS, 'parted'] as const;
const ladderOf = (field: (typeof FIELDS)[number]): readonly string[] =>
  Object.values(field === 'parted' ? PARTED.codes : SIGNS[field].codes);

const signed = reference.crops.flatMap((crop) => (crop.signs ?? []).map((sign) => ({ ...sign, of: crop.id })));

test('every sign of a crop, and its days to ripe, cite a source that is there', () => {
  expect(signed.length).toBeGreaterThan(15);
  for (const { of, id, sources: cited } of signed) {
    expect(cited.length, `${of} ${id}`).toBeGreaterThan(0);
    expect(
      cited.filter((source) => !sources.has(source)),
      `${of} ${id}`,
    ).toEqual([]);
  }
  const days = reference.crops.flatMap(({ ripe_days }) => ripe_days ?? []);
  expect(days).toHaveLength(reference.crops.length);
  for (const { sources: cited, set_days_low, set_days_high } of days) {
    expect(cited.length).toBeGreaterThan(0);
    expect(cited.filter((id) => !sources.has(id))).toEqual([]);
    expect(set_days_low).toBeLessThan(set_days_high);
  }
});

test('every sign has its drawing and English words, and its ids are its own', () => {
  for (const { of, drawing, names, helps } of signed) {
    expect(existsSync(join('layouts', 'drawings', `${drawing}.svg`)), `${of}: ${drawing}`).toBe(true);
    expect([inLanguage(names, 'en'), inLanguage(helps, 'en')].every(Boolean), `${of}: ${drawing}`).toBe(true);
  }
  expect(existsSync(join('layouts', 'drawings', 'days.svg'))).toBe(true);
  expect(new Set(signed.map(({ of, id }) => `${of} ${id}`)).size).toBe(signed.length);
});

test('a sign counts steps of one ladder, and not all of them', () => {
  for (const { of, id, shown } of signed) {
    const counted = FIELDS.flatMap((field) => {
      const steps: readonly string[] | null = shown?.[field] ?? null;
      return steps ? [{ ladder: ladderOf(field), steps }] : [];
    });
    expect(counted.length, `${of} ${id}`).toBeLessThanOrEqual(1);
    for (const { ladder, steps } of counted) {
      expect(
        steps.filter((step) => !ladder.includes(step)),
        `${of} ${id}`,
      ).toEqual([]);
      expect(steps.length, `${of} ${id}`).toBeGreaterThan(0);
      expect(new Set(steps).size, `${of} ${id}`).toBe(steps.length);
      expect(steps.length, `${of} ${id}`).toBeLessThan(ladder.length);
    }
  }
});

/** Crops known by a colour that hangs on the kind: no record tells it, so that their cards count fewer rows. */
const BY_COLOUR = ['tomato'];

test('a card has three rows that records tell before the picking, so that three ticks can be had', () => {
  const few = reference.crops.filter(({ signs, ripe_days }) => {
    const told = (signs ?? []).filter(({ on_card, shown }) => on_card && shown && shown.parted === null);
    return told.length + (ripe_days ? 1 : 0) < 3;
  });
  expect(few.map(({ id }) => id)).toEqual(BY_COLOUR);
});

test('a card has six rows at most, days among them, and how the fruit parts is the last', () => {
  for (const { id, signs } of reference.crops) {
    const onCard = (signs ?? []).filter(({ on_card }) => on_card);
    expect(onCard.length + 1, id).toBeLessThanOrEqual(6);
    const parting = onCard.findIndex(({ shown }) => shown !== null && shown.parted !== null);
    expect([-1, onCard.length - 1], id).toContain(parting);
  }
});

test('no person has checked a caution until one is named', () => {
  expect(reference.cautions.filter(({ checked_by }) => checked_by !== null)).toEqual([]);
});

test('every figure of the demo names a method and a formula source that have words', () => {
  const { figures } = bookOfFolder('data/garden');
  expect(figures.length).toBeGreaterThan(100);
  expect(figures.filter(({ method }) => !methods.has(method)).map(({ id }) => id)).toEqual([]);
  expect(figures.filter(({ source }) => source !== null && !sources.has(source)).map(({ id }) => id)).toEqual([]);
});

test('a figure has a value, or a reason; an interval holds its value', () => {
  const { figures } = bookOfFolder('data/garden');
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
