import type { TopLevelSpec } from 'vega-lite';
import type { Day } from '../day.ts';
import type { Format } from '../format.ts';
import { type DayAxis, dayAxis } from './day-axis.ts';
import { runsOf } from './runs.ts';
import { type Part, rainPart, type SeasonStrip, xOf } from './season-strip.ts';
import { COLUMN_PX, GREY, INK, theme, WATER } from './theme.ts';
import { uprightAxis } from './upright-axis.ts';
import { scaleFromZero } from './value-axis.ts';

/** One day of a spot. */
export interface LevelDay {
  /** Water left for its roots at the day's end, litres; null where nothing is reckoned. */
  readonly left_l: number | null;
  /** Nobody told the day's rain. */
  readonly unread: boolean;
}

export interface WaterLevel {
  readonly first: Day;
  readonly last: Day;
  /** From first to last, each day once. */
  readonly days: readonly LevelDay[];
  /** What the ground of its roots can hold. */
  readonly full_l: number;
  /** With less left than this, plants cannot drink their fill. */
  readonly harmed_below_l: number;
  /** Rain of the same days, under the level; null where nobody read a gauge. */
  readonly rain: Pick<SeasonStrip, 'days' | 'labelled_mm'> | null;
  /** Water given, litres, a number a day. */
  readonly given_l: readonly number[];
  /** What a can holds: the axes count in cans. */
  readonly can_l: number;
}

const WIDTH = COLUMN_PX - 42;
const LEVEL_PX = 140;
const GIVEN_PX = 52;

/** Water left in a spot, filled from nothing up to its level, with the cans given and the rain beneath. */
export function waterLevel(level: WaterLevel, format: Format): TopLevelSpec {
  const axis = dayAxis(level.first, level.last, format);
  const { rain } = level;
  const read = rain?.days.some(({ rain_mm }) => rain_mm !== null) ? rain : null;
  const parts = [
    ...(level.days.some(({ left_l }) => left_l !== null) ? [levelPart(level, axis, format)] : []),
    givenPart(level, axis, format, read === null),
    ...(read ? [rainPart(read, axis, format, WIDTH)] : []),
  ];
  return {
    padding: { left: 0, right: 0, top: 4, bottom: 4 },
    autosize: 'pad',
    config: { ...theme, concat: { spacing: 14 } },
    vconcat: parts,
  } as TopLevelSpec;
}

function levelPart({ days, full_l, harmed_below_l, can_l }: WaterLevel, axis: DayAxis, format: Format): Part {
  const rows = runsOf(days.map(({ left_l }) => left_l)).map(({ place, value, run }) => ({
    day: place,
    cans: value / can_l,
    run,
  }));
  const most_l = Math.max(full_l, ...days.map(({ left_l }) => left_l ?? 0));
  const y = uprightAxis('cans', scaleFromZero(most_l / can_l, 'cans', format), 'left for the roots, cans');
  const x = xOf('day', axis, false);
  const along = { x, detail: { field: 'run', type: 'nominal' } };
  const across = (cans: number, dashed: boolean): Part => ({
    data: { values: [{ cans }] },
    mark: { type: 'rule', color: INK, strokeWidth: 0.75, ...(dashed && { strokeDash: [5, 3] }) },
    encoding: { y },
  });
  return {
    width: WIDTH,
    height: LEVEL_PX,
    layer: [
      unreadBands(days, axis),
      {
        data: { values: rows },
        mark: { type: 'area', color: WATER, opacity: 0.2 },
        encoding: { ...along, y: { ...y, stack: null } },
      },
      across(full_l / can_l, false),
      across(harmed_below_l / can_l, true),
      {
        data: { values: rows },
        mark: { type: 'line', color: WATER, strokeWidth: 1.7 },
        encoding: { ...along, y },
      },
      words('full', full_l / can_l, { x: WIDTH, align: 'right', baseline: 'bottom', dy: -3 }, y),
      // Late in a season the level lies lower, and the place above the line is free.
      words(
        'plants go short below',
        harmed_below_l / can_l,
        { x: WIDTH, align: 'right', baseline: 'bottom', dy: -3 },
        y,
      ),
    ],
  };
}

/** Words on a line of the chart. Without a rim of paper: a stroked letter is no letter in a PDF. */
const words = (text: string, cans: number, place: object, y: object): Part => ({
  data: { values: [{ cans }] },
  mark: { type: 'text', text, ...place, color: INK },
  encoding: { y },
});

/** Stems with an open head: no bar of rain looks like it, in black and white either. */
function givenPart({ given_l, can_l }: WaterLevel, axis: DayAxis, format: Format, labelled: boolean): Part {
  const rows = given_l.flatMap((litres, day) => (litres > 0 ? [{ day, cans: litres / can_l, zero: 0 }] : []));
  const scale = scaleFromZero(Math.max(0, ...rows.map(({ cans }) => cans)), 'cans', format);
  const y = uprightAxis('cans', { ...scale, values: halved(scale.values) }, 'given, cans');
  const x = xOf('day', axis, labelled);
  return {
    width: WIDTH,
    height: GIVEN_PX,
    layer: [
      {
        data: { values: rows },
        mark: { type: 'rule', color: WATER, strokeWidth: 1 },
        encoding: { x, y: { ...y, field: 'zero' }, y2: { field: 'cans' } },
      },
      {
        data: { values: rows },
        mark: { type: 'point', stroke: WATER, fill: 'white', strokeWidth: 1.3, size: 24, opacity: 1 },
        encoding: { x, y },
      },
    ],
  };
}

/** A low strip has room for every other tick. */
const halved = (values: readonly number[]): number[] =>
  values.length < 4 ? [...values] : values.filter((_, index) => index % 2 === 0);

const unreadBands = (days: readonly LevelDay[], axis: DayAxis): Part => ({
  data: { values: days.flatMap(({ unread }, day) => (unread ? [{ from: day - 0.5, to: day + 0.5 }] : [])) },
  mark: { type: 'rect', color: GREY, opacity: 0.3, y: 0, y2: LEVEL_PX },
  encoding: { x: xOf('from', axis, false), x2: { field: 'to' } },
});
