import type { TopLevelSpec } from 'vega-lite';
import type { FigureUnit } from '../figure.ts';
import type { Format } from '../format.ts';
import { rowHeight, rowNames } from './row-names.ts';
import { COLUMN_PX, GREY, INK, RIND, STRAW, theme } from './theme.ts';
import { scaleAround } from './value-axis.ts';

/** One row: how far it lies from what all are held against; null where that cannot be said. */
export interface DifferenceRow {
  readonly name: string;
  /** In SI. */
  readonly estimate: { readonly value: number; readonly low: number; readonly high: number } | null;
  /** Printed at the right end. */
  readonly words: string;
}

export interface DifferenceRows {
  /** From top to bottom. */
  readonly rows: readonly DifferenceRow[];
  readonly unit: FigureUnit;
  readonly axisTitle: string;
  /** Over the line at no difference. */
  readonly against: string;
}

const ROW_PX = 26;
const ROW_GAP_PX = 6;
const LABEL_PX = 132;
const WORDS_PX = 58;
const TICKS = 6;

/** Rows of differences with their ranges, on one axis with a line where there is none. */
export function differenceRows({ rows, unit, axisTitle, against }: DifferenceRows, format: Format): TopLevelSpec {
  const told = rows.flatMap(({ name, estimate }) => (estimate ? [{ name, ...estimate }] : []));
  const ends = [0, ...told.flatMap(({ low, high }) => [low, high])];
  const zero = format.toPrint(0, unit);
  // A difference takes the scale of its unit and not the zero.
  const print: Format = { ...format, toPrint: (value, of) => format.toPrint(value, of) - zero };
  const scale = scaleAround({ smallest: Math.min(...ends), largest: Math.max(...ends), ticks: TICKS }, unit, print);
  const names = rows.map(({ name }) => name);
  const width = COLUMN_PX - LABEL_PX - WORDS_PX;
  const y = {
    field: 'name',
    type: 'nominal' as const,
    scale: { domain: names, paddingInner: 0, paddingOuter: 0 },
    axis: null,
  };
  const x = (field: string) => ({
    field,
    type: 'quantitative' as const,
    scale: { domain: [...scale.domain], nice: false, zero: false },
    axis: { values: [...scale.values], labelExpr: scale.labelExpr, title: axisTitle },
  });
  return {
    width,
    height: rowHeight(names, ROW_PX, ROW_GAP_PX) * rows.length,
    padding: { left: 0, right: 0, top: 2, bottom: 8 },
    autosize: 'pad',
    config: theme,
    layer: [
      {
        data: { values: [{ at: 0 }] },
        mark: { type: 'rule' as const, color: STRAW, strokeWidth: 1.6 },
        encoding: { x: x('at') },
      },
      {
        data: { values: [{ at: 0, text: against }] },
        mark: { type: 'text' as const, y: -8, align: 'center' as const, color: INK },
        encoding: { x: x('at'), text: { field: 'text' } },
      },
      {
        data: { values: told },
        mark: { type: 'rule' as const, color: RIND, strokeWidth: 2.6 },
        encoding: { x: x('low'), x2: { field: 'high' }, y },
      },
      {
        data: { values: told },
        mark: {
          type: 'point' as const,
          shape: 'circle',
          size: 62,
          filled: true,
          fill: '#ffffff',
          stroke: RIND,
          strokeWidth: 2.2,
          opacity: 1,
        },
        encoding: { x: x('value'), y },
      },
      ...rowNames(names, y, 0),
      {
        data: { values: rows.map(({ name, words }) => ({ name, words })) },
        mark: { type: 'text' as const, align: 'left' as const, color: GREY, x: width + 10 },
        encoding: { y, text: { field: 'words' } },
      },
    ],
  } as TopLevelSpec;
}
