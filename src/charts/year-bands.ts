import type { TopLevelSpec } from 'vega-lite';
import { type Day, daysBetween } from '../day.ts';
import type { Format } from '../format.ts';
import { dayAxis } from './day-axis.ts';
import { xOf } from './season-strip.ts';
import { COLUMN_PX, GREY, INK, RIND, theme } from './theme.ts';

/** One step of a year's work, between two days. */
export interface YearRow {
  readonly label: string;
  readonly first: Day;
  readonly last: Day;
  /** From this garden's own records; others are drawn as an outline. */
  readonly own: boolean;
}

export interface YearBands {
  readonly first: Day;
  readonly last: Day;
  /** From above. */
  readonly rows: readonly YearRow[];
  /** The day of the book, where it lies within. */
  readonly today: Day | null;
}

const LABELS_PX = 118;
const ROW_PX = 24;
const BAND_PX = 9;

/** The year's work from above to below: a bar a step with its dates, filled where it is the garden's own experience. */
export function yearBands({ first, last, rows, today }: YearBands, format: Format): TopLevelSpec {
  const axis = dayAxis(first, last, format);
  const values = rows.map((row) => ({
    label: row.label,
    from: daysBetween(first, row.first) - 0.5,
    to: daysBetween(first, row.last) + 0.5,
    own: row.own,
    dates: format.daySpan(row.first, row.last),
  }));
  const [, end] = axis.domain;
  const isLate = ({ to }: { readonly to: number }): boolean => to > 0.72 * end;
  const y = {
    field: 'label',
    type: 'nominal' as const,
    sort: rows.map(({ label }) => label),
    axis: { title: null, ticks: false, domain: false, labelPadding: 6, labelColor: INK, labelLimit: 2 * LABELS_PX },
  };
  const bar = (own: boolean) => ({
    data: { values: values.filter((row) => row.own === own) },
    mark: {
      type: 'bar' as const,
      height: BAND_PX,
      fill: own ? RIND : 'white',
      stroke: RIND,
      strokeWidth: 1.2,
    },
    encoding: { x: xOf('from', axis, true), x2: { field: 'to' }, y },
  });
  const dates = (late: boolean) => ({
    data: { values: values.filter((row) => isLate(row) === late) },
    mark: {
      type: 'text' as const,
      align: late ? ('right' as const) : ('left' as const),
      dx: late ? -6 : 6,
      fontSize: 11.5,
      color: INK,
    },
    encoding: { x: xOf(late ? 'from' : 'to', axis, true), y, text: { field: 'dates' } },
  });
  const isWithin = today !== null && today >= first && today <= last;
  return {
    padding: { left: 0, right: 0, top: 4, bottom: 4 },
    autosize: 'pad',
    config: theme,
    width: COLUMN_PX - LABELS_PX - 6,
    height: ROW_PX * rows.length,
    layer: [
      {
        data: { values: isWithin ? [{ day: daysBetween(first, today) }] : [] },
        mark: { type: 'rule' as const, color: GREY, strokeWidth: 0.75, strokeDash: [3, 3] },
        encoding: { x: xOf('day', axis, true) },
      },
      bar(true),
      bar(false),
      dates(false),
      dates(true),
    ],
  } as TopLevelSpec;
}
