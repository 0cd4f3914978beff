import type { TopLevelSpec } from 'vega-lite';
import { type Day, daysBetween } from '../day.ts';
import type { Format } from '../format.ts';
import { type DayAxis, dayAxis } from './day-axis.ts';
import { COLUMN_PX, GREY, INK, STRAW, theme, WATER } from './theme.ts';
import { uprightAxis } from './upright-axis.ts';
import { scaleAround, scaleFromZero } from './value-axis.ts';

/** One day of the strip, in SI; null where nobody read. */
export interface StripDay {
  readonly tmin_c: number | null;
  readonly tmax_c: number | null;
  readonly rain_mm: number | null;
  /** Nothing is known of the day's rain, not even in a word. */
  readonly rain_unknown: boolean;
}

/** Days drawn as a line under the rain, for instance a dry spell, with its words. */
export interface StripSpan {
  readonly first: Day;
  readonly last: Day;
  readonly words: string;
}

export interface SeasonStrip {
  readonly first: Day;
  readonly last: Day;
  /** From first to last, each day once. */
  readonly days: readonly StripDay[];
  /** Lines across the temperatures: the part of a day beyond one is drawn heavier. */
  readonly hot_c: number;
  readonly cool_c: number;
  /** Days whose rain is written above its bar. */
  readonly labelled_mm: number;
  readonly spans: readonly StripSpan[];
}

const WIDTH = COLUMN_PX - 42;
const TEMPERATURE_PX = 150;
const RAIN_PX = 74;
const SPAN_PX = 20;

/** A season day by day: temperatures as lines from the lowest to the highest, rain as bars below, unread days in grey. */
export function seasonStrip(strip: SeasonStrip, format: Format): TopLevelSpec {
  const axis = dayAxis(strip.first, strip.last, format);
  const parts = [
    ...(strip.days.some(({ tmin_c, tmax_c }) => tmin_c !== null && tmax_c !== null)
      ? [temperatures(strip, axis, format)]
      : []),
    ...(strip.days.some(({ rain_mm }) => rain_mm !== null) ? [rainPart(strip, axis, format)] : []),
    ...(strip.spans.length > 0 ? [spans(strip, axis)] : []),
  ];
  return {
    padding: { left: 0, right: 0, top: 4, bottom: 4 },
    autosize: 'pad',
    config: { ...theme, concat: { spacing: 10 } },
    vconcat: parts,
  } as TopLevelSpec;
}

export type Part = object;

export const xOf = (field: string, { domain, values, labelExpr }: DayAxis, shown: boolean) => ({
  field,
  type: 'quantitative' as const,
  scale: { domain: [...domain], nice: false, zero: false },
  axis: { values: [...values], title: null, labels: shown, labelExpr, ticks: true, domain: true },
});

function temperatures({ days, ...strip }: SeasonStrip, axis: DayAxis, format: Format): Part {
  const rows = days.flatMap(({ tmin_c, tmax_c }, day) =>
    tmin_c === null || tmax_c === null ? [] : [{ day, low: tmin_c, high: tmax_c }],
  );
  const edges = {
    smallest: Math.min(...rows.map(({ low }) => low)),
    largest: Math.max(...rows.map(({ high }) => high)),
  };
  const scale = scaleAround({ ...edges, ticks: 6 }, 'c', format);
  const title = `lowest to highest, ${format.unitLabel('c')}`;
  const x = xOf('day', axis, false);
  const unread = days.flatMap(({ tmin_c, tmax_c }, day) => (tmin_c === null || tmax_c === null ? [day] : []));
  const line = (value: number) => ({
    data: { values: [{ value }] },
    mark: { type: 'rule' as const, color: GREY, strokeWidth: 0.75, strokeDash: [3, 3] },
    encoding: { y: uprightAxis('value', scale, title) },
  });
  const beyond = (rowsBeyond: object[]) => ({
    data: { values: rowsBeyond },
    mark: { type: 'rule' as const, color: INK, strokeWidth: 2.4 },
    encoding: { x, y: uprightAxis('low', scale, title), y2: { field: 'high' } },
  });
  const hot = rows.filter(({ high }) => high >= strip.hot_c);
  const cool = rows.filter(({ low }) => low < strip.cool_c);
  return {
    width: WIDTH,
    height: TEMPERATURE_PX,
    layer: [
      unreadBands(unread, axis, TEMPERATURE_PX),
      line(strip.hot_c),
      line(strip.cool_c),
      {
        data: { values: rows },
        mark: { type: 'rule' as const, color: GREY, strokeWidth: 1.1 },
        encoding: { x, y: uprightAxis('low', scale, title), y2: { field: 'high' } },
      },
      beyond(hot.map(({ day, low, high }) => ({ day, low: Math.max(low, strip.hot_c), high }))),
      beyond(cool.map(({ day, low, high }) => ({ day, low, high: Math.min(high, strip.cool_c) }))),
    ],
  };
}

/** Rain day by day as bars, as wide as asked; soaking days carry their figure. */
export function rainPart(
  { days, labelled_mm }: Pick<SeasonStrip, 'days' | 'labelled_mm'>,
  axis: DayAxis,
  format: Format,
  width = WIDTH,
): Part {
  const rows = days.flatMap(({ rain_mm }, day) =>
    rain_mm === null || rain_mm === 0 ? [] : [{ day, rain_mm, zero: 0 }],
  );
  const scale = scaleFromZero(Math.max(0, ...rows.map(({ rain_mm }) => rain_mm)), 'mm', format);
  const y = uprightAxis(
    'rain_mm',
    { ...scale, values: scale.values.filter((_, index) => index % 2 === 0) },
    `rain, ${format.unitLabel('mm')}`,
  );
  const unread = days.flatMap(({ rain_unknown }, day) => (rain_unknown ? [day] : []));
  const heavy = rows
    .filter(({ rain_mm }) => rain_mm >= labelled_mm)
    .map((row) => ({ ...row, label: format.digits(row.rain_mm, 'mm') }));
  return {
    width,
    height: RAIN_PX,
    layer: [
      unreadBands(unread, axis, RAIN_PX),
      {
        data: { values: rows },
        mark: { type: 'rule' as const, color: WATER, strokeWidth: 2.2 },
        encoding: { x: xOf('day', axis, true), y: { ...y, field: 'zero' }, y2: { field: 'rain_mm' } },
      },
      {
        data: { values: heavy },
        mark: { type: 'text' as const, color: INK, dy: -3, baseline: 'bottom' as const, fontSize: 11 },
        encoding: { x: xOf('day', axis, true), y, text: { field: 'label' } },
      },
    ],
  };
}

/** Lines under the axis with their words at the middle. */
function spans({ spans: all, first }: SeasonStrip, axis: DayAxis): Part {
  const rows = all.map((span) => {
    const [from, to] = [daysBetween(first, span.first), daysBetween(first, span.last)];
    return { from: from - 0.4, to: to + 0.4, middle: (from + to) / 2, words: span.words };
  });
  const x = { ...xOf('from', axis, false), axis: null };
  return {
    width: WIDTH,
    height: SPAN_PX,
    layer: [
      {
        data: { values: rows },
        mark: { type: 'rule' as const, color: STRAW, strokeWidth: 3, y: 2 },
        encoding: { x, x2: { field: 'to' } },
      },
      {
        data: { values: rows },
        mark: { type: 'text' as const, color: INK, y: 7, baseline: 'top' as const, fontSize: 11 },
        encoding: { x: { ...x, field: 'middle' }, text: { field: 'words' } },
      },
    ],
  };
}

const unreadBands = (days: readonly number[], axis: DayAxis, height: number): Part => ({
  data: { values: days.map((day) => ({ from: day - 0.5, to: day + 0.5 })) },
  mark: { type: 'rect' as const, color: GREY, opacity: 0.3, y: 0, y2: height },
  encoding: { x: xOf('from', axis, height === RAIN_PX), x2: { field: 'to' } },
});
