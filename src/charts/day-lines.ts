import type { TopLevelSpec } from 'vega-lite';
import { type Day, daysBetween } from '../day.ts';
import type { Format } from '../format.ts';
import { dayAxis } from './day-axis.ts';
import { xOf } from './season-strip.ts';
import { shapeScale } from './shapes.ts';
import { COLUMN_PX, INK, RIND, theme } from './theme.ts';
import { uprightTitle } from './upright-axis.ts';

/** Marks on days, joined in the order of their days. */
export interface DayLine {
  /** Named in the key; each once. */
  readonly name: string;
  readonly marks: readonly { readonly on: Day; readonly value: number }[];
}

export interface DayLines {
  readonly first: Day;
  readonly last: Day;
  /** At most eight are told apart. */
  readonly lines: readonly DayLine[];
  /** A scale of whole steps from 0. */
  readonly top: number;
  readonly yTitle: string;
}

const HEIGHT = 150;

/** Steps of a scale over days: an open mark a look, straight lines between, one shape a line. */
export function dayLines({ first, last, lines, top, yTitle }: DayLines, format: Format): TopLevelSpec {
  const rows = lines.flatMap(({ name, marks }) =>
    marks.map(({ on, value }) => ({ name, day: daysBetween(first, on), value })),
  );
  const names = lines.map(({ name }) => name);
  const x = xOf('day', dayAxis(first, last, format), true);
  const y = {
    field: 'value',
    type: 'quantitative' as const,
    scale: { domain: [0, top], nice: false },
    axis: {
      values: Array.from({ length: top + 1 }, (_, step) => step),
      ...uprightTitle(yTitle, 6),
    },
  };
  const shape = {
    field: 'name',
    type: 'nominal' as const,
    scale: shapeScale(names),
    legend: {
      title: null,
      orient: 'bottom' as const,
      columns: 1,
      labelFontSize: 12,
      labelColor: INK,
      labelLimit: 0,
    },
  };
  return {
    width: COLUMN_PX - 46,
    height: HEIGHT,
    padding: { left: 0, right: 0, top: 4, bottom: 4 },
    autosize: 'pad',
    config: theme,
    layer: [
      {
        data: { values: rows },
        mark: { type: 'line' as const, color: RIND, strokeWidth: 1.4 },
        encoding: { x, y, detail: { field: 'name', type: 'nominal' as const } },
      },
      {
        data: { values: rows },
        mark: { type: 'point' as const, size: 46, strokeWidth: 1.2, opacity: 1 },
        encoding: { x, y, shape, fill: { value: '#ffffff' }, stroke: { value: INK } },
      },
    ],
  } as TopLevelSpec;
}
