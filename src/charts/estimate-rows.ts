import type { TopLevelSpec } from 'vega-lite';
import type { FigureUnit } from '../figure.ts';
import type { Format } from '../format.ts';
import { COLUMN_PX, GREY, INK, RIND, STRAW, theme } from './theme.ts';
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
/** Longest line of a name at the caption's size in the label's width. */
const LABEL_LETTERS = 20;
const COUNT_PX = 46;
const LINE_PX = 14;
const ROW_GAP_PX = 10;

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
    height:
      Math.max(ROW_PX, LINE_PX * Math.max(0, ...nameLayers(names).map(({ lines }) => lines)) + ROW_GAP_PX) *
      rows.length,
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
          yOffset: estimates.length > 0 ? 9 : -3,
        },
        encoding: { x: x('value'), y },
      },
      {
        data: { values: estimates },
        mark: { type: 'rule' as const, color: RIND, strokeWidth: 2.6, yOffset: -3, y2Offset: -3 },
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
          yOffset: -3,
        },
        encoding: { x: x('value'), y },
      },
      ...nameLayers(names).map(({ lines, values: named }) => ({
        data: { values: named },
        mark: {
          type: 'text' as const,
          align: 'right' as const,
          color: INK,
          x: -10,
          yOffset: -3 - ((lines - 1) * LINE_PX) / 2,
          lineBreak: '\n',
          lineHeight: LINE_PX,
        },
        encoding: { y, text: { field: 'text' } },
      })),
      {
        data: { values: rows.map(({ name, count }) => ({ name, count })) },
        mark: {
          type: 'text' as const,
          align: 'left' as const,
          color: GREY,
          x: COLUMN_PX - LABEL_PX - COUNT_PX + 10,
          yOffset: -3,
        },
        encoding: { y, text: { field: 'count' } },
      },
    ],
  } as TopLevelSpec;
}

/** Names by how many lines they take: each number of lines is centred on its row in its own way. */
function nameLayers(names: readonly string[]): { lines: number; values: { name: string; text: string }[] }[] {
  const texts = names.map((name) => ({ name, text: folded(name) }));
  const count = (text: string): number => text.split('\n').length;
  const counts = [...new Set(texts.map(({ text }) => count(text)))].sort();
  return counts.map((lines) => ({ lines, values: texts.filter(({ text }) => count(text) === lines) }));
}

/** A name in lines short enough for the label's width: text widths are only estimated when a chart is drawn. */
function folded(name: string): string {
  return name.split(' ').reduce((lines, word) => {
    const last = lines.slice(lines.lastIndexOf('\n') + 1);
    return `${lines}${lines === '' ? '' : last.length + word.length < LABEL_LETTERS ? ' ' : '\n'}${word}`;
  }, '');
}
