import type { TopLevelSpec } from 'vega-lite';
import { addDays, type Day, daysBetween } from '../day.ts';
import type { Format } from '../format.ts';
import { dayAxis } from './day-axis.ts';
import { type EndLabel, endLabelParts } from './end-labels.ts';
import { type Part, xOf } from './season-strip.ts';
import { COLUMN_PX, INK, theme, WATER } from './theme.ts';
import { uprightAxis } from './upright-axis.ts';
import { scaleFromZero } from './value-axis.ts';

export interface TankBand {
  /** Day of the first of the levels. */
  readonly first: Day;
  /** Litres in the tank at the end of each day, over past years; at least one day. */
  readonly levels: readonly { readonly lowest_l: number; readonly middle_l: number; readonly highest_l: number }[];
  /** What the stick said this season, before the levels begin or after; may be empty. */
  readonly dips: readonly { readonly on: Day; readonly litres: number }[];
  readonly holds_l: number;
  /** Litres below the tap. */
  readonly below_tap_l: number;
}

const WIDTH = COLUMN_PX - 50 - 62;
const HEIGHT = 170;

/** Litres in the tank: past years as a band with its middle as a line, this season's dips as open marks. */
export function tankBand({ first, levels, dips, holds_l, below_tap_l }: TankBand, format: Format): TopLevelSpec {
  const last = addDays(first, levels.length - 1);
  const days = [first, last, ...dips.map(({ on }) => on)].sort();
  const [start, end] = [days[0] ?? first, days.at(-1) ?? last];
  const offset = daysBetween(start, first);
  const rows = levels.map((level, index) => ({ ...level, day: offset + index }));
  const marks = dips.map(({ on, litres }) => ({ day: daysBetween(start, on), litres }));
  const scale = scaleFromZero(holds_l, 'l', format);
  const y = (field: string) => uprightAxis(field, scale, `in the tank, ${format.unitLabel('l')}`);
  const x = xOf('day', dayAxis(start, end, format), true);
  const across = (litres: number, dashed: boolean): Part => ({
    data: { values: [{ litres }] },
    mark: { type: 'rule', color: INK, strokeWidth: 0.75, ...(dashed && { strokeDash: [5, 3] }) },
    encoding: { y: y('litres') },
  });
  const label = (lines: readonly string[], litres: number): EndLabel => ({
    lines,
    middle_px: HEIGHT * (1 - litres / scale.domain[1]),
  });
  const latest = levels.at(-1);
  return {
    width: WIDTH,
    height: HEIGHT,
    padding: { left: 0, right: 0, top: 4, bottom: 4 },
    autosize: 'pad',
    config: theme,
    layer: [
      {
        data: { values: rows },
        mark: { type: 'area', color: WATER, opacity: 0.14 },
        encoding: { x, y: { ...y('lowest_l'), stack: null }, y2: { field: 'highest_l' } },
      },
      across(holds_l, false),
      ...(below_tap_l > 0 ? [across(below_tap_l, true)] : []),
      {
        data: { values: rows },
        mark: { type: 'line', color: WATER, strokeWidth: 1.7 },
        encoding: { x, y: y('middle_l') },
      },
      {
        data: { values: marks },
        mark: { type: 'point', stroke: INK, fill: 'white', strokeWidth: 1.3, size: 42, opacity: 1 },
        encoding: { x, y: y('litres') },
      },
      ...endLabelParts(
        [
          label(['full'], holds_l),
          ...(latest ? [label(['middle', 'year'], latest.middle_l)] : []),
          ...(below_tap_l > 0 ? [label(['tap'], below_tap_l)] : []),
        ],
        WIDTH,
      ),
    ],
  } as TopLevelSpec;
}
