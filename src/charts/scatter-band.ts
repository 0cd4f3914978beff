import type { TopLevelSpec } from 'vega-lite';
import type { FigureUnit } from '../figure.ts';
import type { Format } from '../format.ts';
import { shapeScale } from './shapes.ts';
import { COLUMN_PX, GREY, INK, RIND, theme } from './theme.ts';
import { uprightAxis } from './upright-axis.ts';
import { scaleAround, scaleFromZero } from './value-axis.ts';

/** One mark, in SI; `kind` chooses its shape and is named in the key. */
export interface ScatterPoint {
  readonly x: number;
  readonly y: number;
  readonly kind: string;
  /** Written above or below the mark; null for most. */
  readonly label: { readonly text: string; readonly side: 'above' | 'below' } | null;
  /** Filled instead of open: shown, and no part of the line. */
  readonly apart: boolean;
}

export interface ScatterBand {
  readonly points: readonly ScatterPoint[];
  readonly xUnit: FigureUnit;
  readonly yUnit: FigureUnit;
  readonly xTitle: string;
  readonly yTitle: string;
  /** A line with the band it may turn within; null draws the marks alone. */
  readonly line:
    | readonly { readonly x: number; readonly y: number; readonly low: number; readonly high: number }[]
    | null;
}

const HEIGHT = 230;

/** Open marks by kind, filled ones apart, over an axis from zero, with a line and its band where one is given. */
export function scatterBand({ points, line, ...axes }: ScatterBand, format: Format): TopLevelSpec {
  const kinds = [...new Set(points.map(({ kind }) => kind))].sort();
  const xs = scaleFromZero(Math.max(1, ...points.map(({ x }) => x)), axes.xUnit, format);
  const ends = [...points.map(({ y }) => y), ...(line ?? []).flatMap(({ low, high }) => [low, high])];
  const ys = scaleAround({ smallest: Math.min(...ends), largest: Math.max(...ends), ticks: 6 }, axes.yUnit, format);
  const x = {
    field: 'x',
    type: 'quantitative' as const,
    scale: { domain: [...xs.domain], nice: false },
    axis: { values: [...xs.values], labelExpr: xs.labelExpr, title: axes.xTitle },
  };
  const y = (field: string) => uprightAxis(field, ys, axes.yTitle);
  const shape = {
    field: 'kind',
    type: 'nominal' as const,
    scale: shapeScale(kinds),
    legend: {
      title: null,
      orient: 'bottom' as const,
      columns: 3,
      symbolStrokeColor: INK,
      labelFontSize: 12,
      labelColor: INK,
    },
  };
  return {
    width: COLUMN_PX - 46,
    height: HEIGHT,
    padding: { left: 0, right: 0, top: 4, bottom: 4 },
    autosize: 'pad',
    config: theme,
    layer: [
      ...(line
        ? [
            {
              data: { values: [...line] },
              mark: { type: 'area' as const, color: RIND, opacity: 0.14 },
              encoding: { x, y: y('low'), y2: { field: 'high' } },
            },
            {
              data: { values: [...line] },
              mark: { type: 'line' as const, color: RIND, strokeWidth: 2 },
              encoding: { x, y: y('y') },
            },
          ]
        : []),
      {
        data: { values: [...points] },
        mark: { type: 'point' as const, filled: false, color: INK, size: 42, strokeWidth: 1.1 },
        encoding: {
          x,
          y: y('y'),
          shape,
          fill: { condition: { test: 'datum.apart', value: INK }, value: 'transparent' },
        },
      },
      ...(['above', 'below'] as const).map((side) => ({
        data: { values: points.filter(({ label }) => label?.side === side) },
        mark: { type: 'text' as const, color: GREY, dy: side === 'above' ? -10 : 11, fontSize: 11 },
        encoding: { x, y: y('y'), text: { field: 'label.text' } },
      })),
    ],
  } as TopLevelSpec;
}
