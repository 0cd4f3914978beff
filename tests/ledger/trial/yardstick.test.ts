import { expect, test } from 'vitest';
import type { TraitValue } from '../../../src/ledger/trial/trait-value.ts';
import { yardstickOf } from '../../../src/ledger/trial/yardstick.ts';
import { trialGarden, value } from './trial-garden.ts';

const chosen = (values: readonly TraitValue[], marked?: string): string | null => {
  const of = marked ? { [marked]: ', yardstick: yes' } : {};
  const found = yardstickOf(trialGarden({ 2025: { plantings: '' } }, { of }).varieties, values);
  return found && `${found.variety.id} ${found.by}`;
};

const grown = (variety: string, season: string, spot: string): TraitValue => value('mass_kg', variety, season, spot, 3);

test('the marked one, if it was ever harvested; else the one of most seasons', () => {
  const values = [
    grown('amber', '2025', 'S1'),
    grown('amber', '2025', 'S2'),
    grown('birch', '2024', 'S1'),
    grown('birch', '2025', 'S3'),
  ];
  expect(chosen(values, 'amber')).toBe('amber marked');
  expect(chosen(values, 'copper')).toBe('birch longest');
  expect(chosen(values)).toBe('birch longest');
  expect(chosen([], 'amber')).toBeNull();
});

test('of equal seasons the one of most spots, of equal spots the first in the alphabet', () => {
  const pair = [grown('birch', '2025', 'S1'), grown('copper', '2025', 'S2')];
  expect(chosen(pair)).toBe('birch longest');
  expect(chosen(pair.toReversed())).toBe('birch longest');
  expect(chosen([...pair, grown('copper', '2025', 'S3')])).toBe('copper longest');
  // Many fruits of one spot are one spot.
  expect(chosen([...pair, grown('copper', '2025', 'S2'), grown('copper', '2025', 'S2')])).toBe('birch longest');
});
