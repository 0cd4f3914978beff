import type { TopLevelSpec } from 'vega-lite';
import { addDays, type Day, daysBetween } from '../day.ts';
import type { Format } from '../format.ts';
import { dayAxis } from './day-axis.ts';
import { type EndLabel, endLabelParts } from './end-labels.ts';
import { runsOf } from './runs.ts';
import { type Part, xOf } from './season-strip.ts';
import { COLUMN_PX, GREY, RIND, theme, WATER } from './theme.ts';
import { uprightAxis } from './upright-axis.ts';
import { scaleFromZero } from './value-axis.ts';

/** Seven days of a spot, litres. */
export interface WaterWeek {
  readonly first: Day;
  /** Null where it cannot be reckoned. */
  readonly wanted_l: number | null;
  readonly given_l: number;
  /** Null where some day's rain was not told. */
  readonly rain_l: number | null;
}

export interface GivenAndWanted {
  /** In their order, the same length of time apart. */
  readonly weeks: readonly WaterWeek[];
}

const DAYS_A_WEEK = 7;
const WIDTH = COLUMN_PX - 42 - 62;
const HEIGHT = 170;
/** Between two weeks’ bars, in days. */
const GAP_DAYS = 0.9;
const SWATCH_PX = 9;
const KEY_LINE_PX = 17;
const ABOVE_KEY_PX = HEIGHT - 2.5 * KEY_LINE_PX;

/**
 * Weeks as bars, solid for what was given with the rain as an outline on top of it; what was wanted as open marks on a
 * line. Throws RangeError without a week.
 */
export function givenAndWanted({ weeks }: GivenAndWanted, format: Format): TopLevelSpec {
  const [start, end] = [weeks[0], weeks.at(-1)];
  if (!start || !end) throw new RangeError('invalid weeks: there is none');
  const axis = dayAxis(start.first, addDays(end.first, DAYS_A_WEEK - 1), format);
  const placeOf = ({ first }: WaterWeek): number => daysBetween(start.first, first) - 0.5;
  const middle = DAYS_A_WEEK / 2;
  const rows = weeks.map((week) => ({
    from: placeOf(week) + GAP_DAYS / 2,
    to: placeOf(week) + DAYS_A_WEEK - GAP_DAYS / 2,
    zero: 0,
    given_l: week.given_l,
    top_l: week.given_l + (week.rain_l ?? 0),
    rain_l: week.rain_l,
  }));
  const wanted = runsOf(weeks.map(({ wanted_l }) => wanted_l)).map(({ place, value, run }) => ({
    day: placeOf(weeks[place] as WaterWeek) + middle,
    wanted_l: value,
    run,
  }));
  const scale = scaleFromZero(
    Math.max(...rows.map(({ top_l }) => top_l), ...wanted.map(({ wanted_l }) => wanted_l)),
    'l',
    format,
  );
  const y = (field: string) => uprightAxis(field, scale, `a week, ${format.unitLabel('l')}`);
  const x = (field: string) => xOf(field, axis, true);
  const bars = (values: object[], low: string, high: string, mark: object): Part => ({
    data: { values },
    mark: { type: 'rect', stroke: WATER, strokeWidth: 1, ...mark },
    encoding: { x: x('from'), x2: { field: 'to' }, y: y(low), y2: { field: high } },
  });
  const latest = wanted.at(-1);
  const beside: EndLabel[] = latest
    ? [{ lines: ['wanted'], middle_px: Math.min(heightOf(latest.wanted_l, scale.domain[1]), ABOVE_KEY_PX) }]
    : [];
  return {
    width: WIDTH,
    height: HEIGHT,
    padding: { left: 0, right: 0, top: 4, bottom: 4 },
    autosize: 'pad',
    config: theme,
    layer: [
      {
        data: { values: rows.filter(({ rain_l }) => rain_l === null) },
        mark: { type: 'rect', color: GREY, opacity: 0.3, y: 0, y2: HEIGHT },
        encoding: { x: x('from'), x2: { field: 'to' } },
      },
      bars(
        rows.filter(({ given_l }) => given_l > 0),
        'zero',
        'given_l',
        { fill: WATER },
      ),
      bars(
        rows.filter(({ rain_l }) => rain_l !== null && rain_l > 0),
        'given_l',
        'top_l',
        { fill: 'white' },
      ),
      {
        data: { values: wanted },
        mark: { type: 'line', color: RIND, strokeWidth: 1.6 },
        encoding: { x: x('day'), y: y('wanted_l'), detail: { field: 'run', type: 'nominal' } },
      },
      {
        data: { values: wanted },
        mark: { type: 'point', stroke: RIND, fill: 'white', strokeWidth: 1.5, size: 40, opacity: 1 },
        encoding: { x: x('day'), y: y('wanted_l') },
      },
      ...key(),
      ...endLabelParts(beside, WIDTH),
    ],
  } as TopLevelSpec;
}

const heightOf = (litres: number, top_l: number): number => HEIGHT * (1 - litres / top_l);

/** The two kinds of bar, named beside the last of them. */
const key = (): Part[] =>
  [
    { words: 'rain', fill: 'white', from_foot: 1.5 },
    { words: 'given', fill: WATER, from_foot: 0.5 },
  ].flatMap(({ words, fill, from_foot }) => {
    const y = HEIGHT - from_foot * KEY_LINE_PX;
    return [
      {
        data: { values: [{}] },
        mark: {
          type: 'rect',
          fill,
          stroke: WATER,
          strokeWidth: 1,
          x: WIDTH + 8,
          x2: WIDTH + 8 + SWATCH_PX,
          y: y - SWATCH_PX / 2,
          y2: y + SWATCH_PX / 2,
        },
      },
      {
        data: { values: [{}] },
        mark: { type: 'text', text: words, x: WIDTH + 12 + SWATCH_PX, y, align: 'left', baseline: 'middle' },
      },
    ];
  });
