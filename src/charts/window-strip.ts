import type { TopLevelSpec } from 'vega-lite';
import { type Day, daysBetween } from '../day.ts';
import type { Format } from '../format.ts';
import { weekAxis } from './day-axis.ts';
import { type Part, xOf } from './season-strip.ts';
import { COLUMN_PX, GREY, INK, RIND, theme } from './theme.ts';

/** Days between which something falls; a null end lies beyond the strip. */
export interface DayBand {
  readonly first: Day | null;
  readonly last: Day | null;
}

export interface WindowRow {
  readonly name: string;
  /** When it becomes ripe: half of such fruits, and nine in ten. */
  readonly half: DayBand;
  readonly most: DayBand;
  /** When half of such fruits are past their best; null where nobody can say. */
  readonly over: DayBand | null;
}

export interface WindowStrip {
  readonly first: Day;
  readonly last: Day;
  /** Drawn through all rows. */
  readonly today: Day;
  /** From above. */
  readonly rows: readonly WindowRow[];
}

const LABELS_PX = 84;
const ROW_PX = 20;
/** A band of one day still shows. */
const LEAST_DAYS = 0.8;
const RIPE_LIFT_PX = -3;
const OVER_DROP_PX = 5;

/** One row a fruit: a broad bar for five in ten, a thin one for nine, a broken line below for when it is past its best. */
export function windowStrip({ first, last, today, rows }: WindowStrip, format: Format): TopLevelSpec {
  const axis = weekAxis(first, last, format);
  const end = daysBetween(first, last) + 0.5;
  const placed = (of: (row: WindowRow) => DayBand | null) =>
    rows.flatMap((row) => {
      const band = of(row);
      if (!band?.first || band.first > last) return [];
      const from = daysBetween(first, band.first) - LEAST_DAYS / 2;
      const to = band.last && band.last <= last ? daysBetween(first, band.last) + LEAST_DAYS / 2 : end;
      return [{ name: row.name, from, to, open: !band.last || band.last > last }];
    });
  const y = {
    field: 'name',
    type: 'nominal' as const,
    sort: rows.map(({ name }) => name),
    axis: { title: null, ticks: false, domain: false, labelPadding: 6, labelColor: INK },
  };
  const x = (field: string) => xOf(field, axis, true);
  const bar = (values: object[], mark: object): Part => ({
    data: { values },
    mark: { type: 'rule' as const, ...mark },
    encoding: { x: x('from'), x2: { field: 'to' }, y },
  });
  const most = placed((row) => row.most);
  return {
    width: COLUMN_PX - LABELS_PX,
    height: ROW_PX * rows.length,
    padding: { left: 0, right: 6, top: 4, bottom: 4 },
    autosize: 'pad',
    config: theme,
    layer: [
      {
        data: { values: [{ at: daysBetween(first, today) }] },
        mark: { type: 'rule' as const, color: INK, strokeWidth: 0.9 },
        encoding: { x: x('at') },
      },
      bar(
        rows.map(({ name }) => ({ name, from: -0.5, to: end })),
        { color: GREY, strokeWidth: 0.4, opacity: 0.4 },
      ),
      bar(most, { color: RIND, strokeWidth: 1.6, yOffset: RIPE_LIFT_PX, y2Offset: RIPE_LIFT_PX }),
      bar(
        placed((row) => row.half),
        { color: RIND, strokeWidth: 6, yOffset: RIPE_LIFT_PX, y2Offset: RIPE_LIFT_PX },
      ),
      bar(
        placed((row) => row.over),
        {
          color: GREY,
          strokeWidth: 1.8,
          strokeDash: [2, 2],
          yOffset: OVER_DROP_PX,
          y2Offset: OVER_DROP_PX,
        },
      ),
      {
        data: { values: most.filter(({ open }) => open) },
        mark: {
          type: 'point' as const,
          shape: 'triangle-right',
          filled: true,
          color: RIND,
          size: 34,
          opacity: 1,
          yOffset: RIPE_LIFT_PX,
        },
        encoding: { x: x('to'), y },
      },
    ],
  } as TopLevelSpec;
}
