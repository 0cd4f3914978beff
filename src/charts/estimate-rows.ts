import type { TopLevelSpec } from 'vega-lite';
import type { FigureUnit } from '../figure.ts';
import type { Format } from '../format.ts';
import { rowHeight, rowNames } from './row-names.ts';
import { COLUMN_PX, GREY, RIND, STRAW, theme } from './theme.ts';
import { scaleFromZero } from './value-axis.ts';

/** One row: its single values, and its estimate with a range where there is one. */
export interface EstimateRow {
  readonly name: string;
  /** Single values, in SI. */
  readonly values: readonly number[];
  /** In SI; null draws the single values alone. */
  readonly estimate: { readonly value: number; readonly low: number; readonly high: number } | null;
  /** Printed at the right end. */
  readonly count: string;
}

export interface EstimateRows {
  /** From top to bottom. */
  readonly rows: readonly EstimateRow[];
  readonly unit: FigureUnit;
  readonly axisTitle: string;
  /** Name of the row whose range is drawn as a strip behind all rows. */
  readonly strip: string | null;
  /** In SI: the largest value the axis has to hold, the same on facing charts. */
  readonly largest: number;
}

const ROW_PX = 38;
const LABEL_PX = 132;
const COUNT_PX = 46;
const ROW_GAP_PX = 10;
/** Names, rings and ranges stand above the middle of their row, single values below. */
const LIFT_PX = 3;

/** Rows of estimates with ranges, single values as open marks beneath, on one axis from zero. */
export function estimateRows({ rows, unit, axisTitle, strip, largest }: EstimateRows, format: Format): TopLevelSpec {
  const scale = scaleFromZero(largest, unit, format);
  const names = rows.map(({ name }) => name);
  const y = {
    field: 'name',
    type: 'nominal' as const,
    scale: { domain: names, paddingInner: 0, paddingOuter: 0 },
    axis: null,
  };
  const x = (field: string) => ({
    field,
    type: 'quantitative' as const,
    scale: { domain: [...scale.domain], nice: false },
    axis: { values: [...scale.values], labelExpr: scale.labelExpr, title: axisTitle },
  });
  const estimates = rows.flatMap(({ name, estimate }) => (estimate ? [{ name, ...estimate }] : []));
  const values = rows.flatMap(({ name, values: each }) => each.map((value) => ({ name, value })));
  const stripRow = estimates.find(({ name }) => name === strip);
  return {
    width: COLUMN_PX - LABEL_PX - COUNT_PX,
    height: rowHeight(names, ROW_PX, ROW_GAP_PX) * rows.length,
    padding: { left: 0, right: 0, top: 2, bottom: 8 },
    autosize: 'pad',
    config: theme,
    layer: [
      ...(stripRow
        ? [
            {
              data: { values: [stripRow] },
              mark: { type: 'rect' as const, color: STRAW, opacity: 0.16 },
              encoding: { x: x('low'), x2: { field: 'high' } },
            },
          ]
        : []),
      {
        data: { values },
        mark: {
          type: 'point' as const,
          shape: 'circle',
          size: 22,
          filled: false,
          color: GREY,
          strokeWidth: 1,
          yOffset: estimates.length > 0 ? 9 : -LIFT_PX,
        },
        encoding: { x: x('value'), y },
      },
      {
        data: { values: estimates },
        mark: { type: 'rule' as const, color: RIND, strokeWidth: 2.6, yOffset: -LIFT_PX, y2Offset: -LIFT_PX },
        encoding: { x: x('low'), x2: { field: 'high' }, y },
      },
      {
        data: { values: estimates },
        mark: {
          type: 'point' as const,
          shape: 'circle',
          size: 70,
          filled: true,
          fill: '#ffffff',
          stroke: RIND,
          strokeWidth: 2.2,
          opacity: 1,
          yOffset: -LIFT_PX,
        },
        encoding: { x: x('value'), y },
      },
      ...rowNames(names, y, LIFT_PX),
      {
        data: { values: rows.map(({ name, count }) => ({ name, count })) },
        mark: {
          type: 'text' as const,
          align: 'left' as const,
          color: GREY,
          x: COLUMN_PX - LABEL_PX - COUNT_PX + 10,
          yOffset: -LIFT_PX,
        },
        encoding: { y, text: { field: 'count' } },
      },
    ],
  } as TopLevelSpec;
}
