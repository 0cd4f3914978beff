import { column, type Table } from '../../src/book/table.ts';
import type { CropRipeness } from '../../src/ledger/ripeness/crop-ripeness.ts';
import type { Evidence } from '../../src/ledger/ripeness/evidence.ts';

/** What the cuts say of every sign of every crop; blank where they are too few. */
export function signsTable(crops: readonly CropRipeness[]): Table {
  const rowOf = (crop: string, sign: string, { ripe, unripe }: Evidence) => [
    crop,
    sign,
    ripe.n,
    ripe.value,
    unripe.n,
    unripe.value,
  ];
  return {
    id: 'ripe-signs',
    title: 'Outside signs against what the knife found',
    columns: [
      column('crop', 'Crop'),
      column('sign', 'Sign'),
      column('ripe_fruits', 'Ripe fruits looked at', 'fruits'),
      column('ripe_of_ten', 'Of ten ripe, showed it'),
      column('unripe_fruits', 'Unripe fruits looked at', 'fruits'),
      column('unripe_of_ten', 'Of ten unripe, showed it'),
    ],
    rows: crops.flatMap(({ crop, days, signs }) => [
      ...(days ? [rowOf(crop.id, 'days', days)] : []),
      ...signs.map((one) => rowOf(crop.id, one.sign.id, one)),
    ]),
    primaryKey: ['crop', 'sign'],
  };
}
