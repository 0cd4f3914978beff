import type { TopLevelSpec } from 'vega-lite';
import type { FigureUnit } from '../figure.ts';
import type { Format } from '../format.ts';
import { rowHeight, rowNames } from './row-names.ts';
import { COLUMN_PX, GREY, INK, RIND, theme } from './theme.ts';
import { scaleAround } from './value-axis.ts';

/** Single values of one row in one season, and their mean. */
export interface PanelValues {
  readonly name: string;
  readonly season: string;
  /** In SI. */
  readonly values: readonly number[];
  /** In SI; null draws the single values alone. */
  readonly mean: number | null;
}

export interface SeasonPanels {
  /** From top to bottom. */
  readonly names: readonly string[];
  /** From left to right. */
  readonly seasons: readonly string[];
  readonly cells: readonly PanelValues[];
  readonly unit: FigureUnit;
  readonly axisTitle: string;
}

const ROW_PX = 24;
const ROW_GAP_PX = 4;
const LABEL_PX = 132;
const GAP_PX = 16;
const TICKS = 3;

/** A panel a season, all on one scale: open marks for single values, an upright stroke for their mean. */
export function seasonPanels({ names, seasons, cells, unit, axisTitle }: SeasonPanels, format: Format): TopLevelSpec {
  const all = cells.flatMap(({ values }) => values);
  const range = { smallest: Math.min(...all), largest: Math.max(...all), ticks: TICKS };
  const scale = scaleAround(range, unit, format);
  const width = Math.floor((COLUMN_PX - LABEL_PX - GAP_PX * (seasons.length - 1)) / seasons.length);
  const y = {
    field: 'name',
    type: 'nominal' as const,
    scale: { domain: [...names], paddingInner: 0, paddingOuter: 0 },
    axis: null,
  };
  const panel = (season: string, index: number) => {
    const own = cells.filter((cell) => cell.season === season);
    const x = (field: string) => ({
      field,
      type: 'quantitative' as const,
      scale: { domain: [...scale.domain], nice: false, zero: false },
      axis: { values: [...scale.values], labelExpr: scale.labelExpr, title: index === 0 ? axisTitle : null },
    });
    return {
      width,
      height: rowHeight(names, ROW_PX, ROW_GAP_PX) * names.length,
      layer: [
        {
          data: { values: [{ text: season }] },
          mark: { type: 'text' as const, x: 0, y: -8, align: 'left' as const, color: INK, fontWeight: 600 },
          encoding: { text: { field: 'text' } },
        },
        {
          data: { values: own.flatMap(({ name, values }) => values.map((value) => ({ name, value }))) },
          mark: { type: 'point' as const, shape: 'circle', size: 20, filled: false, color: GREY, strokeWidth: 1 },
          encoding: { x: x('value'), y },
        },
        {
          data: { values: own.flatMap(({ name, mean }) => (mean === null ? [] : [{ name, mean }])) },
          mark: { type: 'tick' as const, orient: 'vertical' as const, size: 15, thickness: 2.2, color: RIND },
          encoding: { x: x('mean'), y },
        },
        ...(index === 0 ? rowNames(names, y, 0) : []),
      ],
    };
  };
  return {
    padding: { left: 0, right: 0, top: 2, bottom: 8 },
    autosize: 'pad',
    config: theme,
    spacing: GAP_PX,
    hconcat: seasons.map(panel),
  } as TopLevelSpec;
}
