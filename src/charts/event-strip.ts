import type { TopLevelSpec } from 'vega-lite';
import { type Day, daysBetween } from '../day.ts';
import type { Format } from '../format.ts';
import { dayAxis } from './day-axis.ts';
import { type Part, rainPart, type SeasonStrip, xOf } from './season-strip.ts';
import { COLUMN_PX, GREY, INK, RIND, theme } from './theme.ts';

/** Something on a day, or between two days. */
export interface EventMark {
  readonly first: Day;
  readonly last: Day;
}

export interface EventLane {
  readonly label: string;
  readonly marks: readonly EventMark[];
}

export interface EventStrip {
  readonly first: Day;
  readonly last: Day;
  /** From above. */
  readonly lanes: readonly EventLane[];
  /** Rain under the lanes; null where nobody read a gauge. */
  readonly rain: Pick<SeasonStrip, 'days' | 'labelled_mm'> | null;
}

const LABELS_PX = 96;
const LANE_PX = 19;

/** What happened when: a lane a kind of work, an open mark a day, a line for a span, the rain beneath. */
export function eventStrip({ first, last, lanes, rain }: EventStrip, format: Format): TopLevelSpec {
  const width = COLUMN_PX - LABELS_PX;
  const axis = dayAxis(first, last, format);
  const rows = lanes.flatMap(({ label, marks }) =>
    marks.map((mark) => ({
      lane: label,
      from: daysBetween(first, mark.first),
      to: daysBetween(first, mark.last),
      middle: (daysBetween(first, mark.first) + daysBetween(first, mark.last)) / 2,
    })),
  );
  const y = {
    field: 'lane',
    type: 'nominal' as const,
    sort: lanes.map(({ label }) => label),
    axis: { title: null, ticks: false, domain: false, labelPadding: 6, labelColor: INK },
  };
  const x = (field: string) => xOf(field, axis, rain === null);
  const lanePart: Part = {
    width,
    height: LANE_PX * lanes.length,
    layer: [
      {
        data: { values: lanes.map(({ label }) => ({ lane: label, from: -0.5, to: axis.domain[1] })) },
        mark: { type: 'rule' as const, color: GREY, strokeWidth: 0.5, opacity: 0.5 },
        encoding: { x: x('from'), x2: { field: 'to' }, y },
      },
      {
        data: { values: rows.filter(({ from, to }) => to > from) },
        mark: { type: 'rule' as const, color: RIND, strokeWidth: 2.4 },
        encoding: { x: x('from'), x2: { field: 'to' }, y },
      },
      {
        data: { values: rows },
        mark: { type: 'point' as const, color: RIND, fill: 'white', strokeWidth: 1.4, size: 34, opacity: 1 },
        encoding: { x: x('middle'), y },
      },
    ],
  };
  return {
    padding: { left: 0, right: 0, top: 4, bottom: 4 },
    autosize: 'pad',
    config: { ...theme, concat: { spacing: 8 } },
    vconcat: [lanePart, ...(rain ? [rainPart(rain, axis, format, width)] : [])],
  } as TopLevelSpec;
}
