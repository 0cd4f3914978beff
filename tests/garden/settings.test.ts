import { expect, test } from 'vitest';
import { linkGarden } from '../../src/garden/link.ts';
import { heatSettingsOf, thresholdsOf } from '../../src/garden/weather-settings.ts';
import { readGardenRecords } from '../../src/reading/garden-records.ts';

const linked = (settings: string) => {
  const text = `name: Test plot\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\n${settings}spots: []\n`;
  return linkGarden(readGardenRecords([{ path: 'garden.yaml', bytes: new TextEncoder().encode(text) }]), []);
};

const complaints = (settings: string): string[] =>
  linked(settings).problems.map(({ code, line, column }) => `${code} ${line}:${column}`);

test('a garden that says nothing takes the house’s figures', () => {
  const about = linked('').garden?.about;
  expect(about && thresholdsOf(about)).toEqual({
    hot_day_c: 30,
    cool_night_c: 12,
    wet_day_mm: 1,
    soaking_day_mm: 20,
    dry_spell_days: 7,
  });
  expect(about && heatSettingsOf(about)).toEqual({ method: 'sine', base_c: 10, cap_c: 32 });
});

test('what a garden sets stands, in either unit, and the rest stays', () => {
  const about = linked('thresholds: {hot_day_f: 95}\nheat_units: {base_f: 55, method: triangle}\n').garden?.about;
  expect(about && thresholdsOf(about)).toMatchObject({ hot_day_c: 35, cool_night_c: 12 });
  expect(about && heatSettingsOf(about).base_c).toBeCloseTo(12.7778, 4);
  expect(about && heatSettingsOf(about)).toMatchObject({ method: 'triangle', cap_c: 32 });
});

test.each([
  ['heat_units: {base_c: 20, cap_c: 18}\n', 'cap-below-base 6:33'],
  ['heat_units: {cap_f: 50}\n', 'cap-below-base 6:21'],
  ['thresholds: {soaking_day_mm: 2, wet_day_mm: 5}\n', 'soaking-below-wet 6:30'],
  ['thresholds: {hot_day_c: 10}\n', 'hot-below-cool 6:25'],
  ['thresholds: {dry_spell_days: 1}\n', 'spell-too-short 6:30'],
  ['thresholds: {hot_day_c: 30, hot_day_f: 86}\n', 'two-units 6:40'],
  ['heat_units: {method: sinus}\n', 'unknown-word 6:22'],
  ['weights: {sweet: 0, big: 0}\n', 'weights-all-zero 6:1'],
  ['weights: {}\n', 'weights-all-zero 6:1'],
  ['weights:\n  sweet: 4\n', 'out-of-range 7:10'],
  ['weights: {swet: 2}\n', 'unknown-key 6:11'],
])('%s is refused where it stands', (settings, complaint) => {
  expect(complaints(settings)).toEqual([complaint]);
});

test('weights stand as they were written; a garden that weighs nothing has none', () => {
  expect(linked('weights: {sweet: 3, big: 0}\n').garden?.about.weights).toMatchObject({
    sweet: 3,
    big: 0,
    liked: null,
  });
  expect(linked('').garden?.about.weights).toBeNull();
});

test('settings at their edges are taken', () => {
  expect(complaints('weights: {sweet: 0, big: 1}\n')).toEqual([]);
  expect(complaints('heat_units: {base_c: 20, cap_c: 20.5}\n')).toEqual([]);
  expect(complaints('thresholds: {dry_spell_days: 2, wet_day_mm: 5, soaking_day_mm: 5}\n')).toEqual([]);
});
