import { column, type Table } from '../../src/book/table.ts';
import type { CropWindow } from '../../src/ledger/window/crop-window.ts';
import type { Spread } from '../../src/ledger/window/fruit-window.ts';
import { dayAt } from './window-dates.ts';

const ENDS = ['middle', 'half_first', 'half_last', 'most_first', 'most_last'] as const;
const WORDS = ['middle', 'first of five in ten', 'last of five in ten', 'first of nine in ten', 'last of nine in ten'];

const spreadColumns = (key: string, title: string) =>
  ENDS.map((end, at) => column(`${key}_${end}`, `${title}, ${WORDS[at]}`));

/** Every fruit that hangs: the days on which it becomes ripe and over, by its age alone and with its last call. */
export const windowsTable = ({ crop, day, growing, clock, years }: CropWindow): Table => ({
  id: `ripe-windows-${crop.id}`.toLowerCase(),
  title: `When each fruit will be ripe, ${crop.id}`,
  columns: [
    column('fruit', 'Fruit'),
    column('spot', 'Spot'),
    column('variety', 'Variety'),
    column('seen_from', 'Seen from'),
    column('counted_in', 'Counted in'),
    column('years', 'Past years'),
    ...spreadColumns('ripe', 'Ripe'),
    ...spreadColumns('over', 'Over'),
    ...spreadColumns('ripe_called', 'Ripe, with its call'),
    ...spreadColumns('over_called', 'Over, with its call'),
    column('next_visit', 'Look again'),
    column('reason', 'Why not'),
  ],
  rows: growing.map(({ planting, fruit, window, cannot }) => {
    const dates = (spread: Spread | null | undefined) =>
      spread && day
        ? [spread.median, spread.half.low, spread.half.high, spread.most.low, spread.most.high].map((days) =>
            dayAt(day, days),
          )
        : ENDS.map(() => null);
    return [
      fruit.id,
      planting.spot.id,
      planting.variety?.id ?? null,
      day,
      clock.unit === 'days' ? 'days' : 'heat',
      clock.unit === 'days' ? null : years.length,
      ...dates(window?.line.ripe),
      ...dates(window?.line.over),
      ...dates(window?.called?.ripe),
      ...dates(window?.called?.over),
      window?.next_visit ?? null,
      cannot?.code ?? null,
    ];
  }),
});
