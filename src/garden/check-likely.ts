import { daysBetween } from '../day.ts';
import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn, type TreePath } from '../reading/source.ts';
import type { CropRecord } from '../records/crop.ts';
import type { FruitRecord } from '../records/fruit.ts';
import { writtenKey } from './written-key.ts';

/** Warnings for measures outside what the crop's file calls likely. The record stands all the same. */
export function checkLikely(entry: Entry<FruitRecord>, crop: CropRecord | null): Problem[] {
  const bounds = crop?.bounds;
  if (!bounds) return [];
  const { pick, cut, set } = entry.record;
  const check = (
    part: 'pick' | 'cut',
    key: string,
    value: number | null | undefined,
    low: number,
    high: number,
    unit: string,
  ): Problem[] => outside(entry, [part, writtenKey(entry.record[part], key)], value, low, high, unit);
  const days =
    set?.set_on?.kind === 'day' && pick?.picked_on.kind === 'day'
      ? daysBetween(set.set_on.first, pick.picked_on.first)
      : null;
  return [
    ...check('pick', 'mass_kg', pick?.mass_kg, bounds.mass_kg_low, bounds.mass_kg_high, 'kg'),
    ...check('pick', 'girth_cm', pick?.girth_cm, 0, bounds.girth_cm_high, 'cm'),
    ...(['brix_centre', 'brix_spot_side', 'brix_upper_side'] as const).flatMap((key) =>
      check('cut', key, cut?.[key], bounds.brix_low, bounds.brix_high, '°Brix'),
    ),
    ...check(
      'pick',
      'picked_on',
      days !== null && days >= 0 ? days : null,
      bounds.days_set_to_pick_low,
      bounds.days_set_to_pick_high,
      'days from set to pick',
    ),
  ];
}

function outside(
  entry: Entry<FruitRecord>,
  field: TreePath,
  value: number | null | undefined,
  low: number,
  high: number,
  unit: string,
): Problem[] {
  if (value === null || value === undefined || (value >= low && value <= high)) return [];
  return [
    problemIn(entry, field, {
      severity: 'warning',
      code: 'unlikely',
      message: `${Number(value.toFixed(2))} ${unit} is unlikely for this crop (${low} to ${high})`,
      hint: 'check the number and its unit; if it is true, leave it',
    }),
  ];
}
