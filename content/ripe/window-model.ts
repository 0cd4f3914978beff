import type { Facts } from '../../src/book/chapter.ts';
import type { Chart } from '../../src/book/chart.ts';
import { windowStrip } from '../../src/charts/window-strip.ts';
import type { Day } from '../../src/day.ts';
import type { Reason } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { CropWindow, GrowingWindow } from '../../src/ledger/window/crop-window.ts';
import { FEWEST_OVER } from '../../src/statistics/ripe-states/seen-fruit.ts';
import { bandDays, dayAt, printedLine } from './window-dates.ts';
import { windowsTable } from './window-tables.ts';

/** A longer strip would not stay on its page. */
const MOST_ROWS = 24;

export interface WindowModel {
  readonly names: { readonly one: string; readonly many: string };
  readonly day: Day | null;
  readonly running: boolean;
  readonly unit: 'days' | 'c_days';
  readonly days_because: CropWindow['days_because'];
  readonly cut: number;
  readonly unripe: number;
  readonly over: number;
  /** Fewest cut over from which a window tells when it is too late. */
  readonly need_over: number;
  readonly by_planting: number;
  readonly years: number;
  /** Why no window can be told, of any fruit; null where one can. */
  readonly cannot: Reason | null;
  readonly growing: number;
  readonly told: number;
  /** Of those told, likelier ripe than not on the day of the book. */
  readonly ripe_now: number;
  /** The first of the others, and the day from which it is; null where none is within the season. */
  readonly next: { readonly fruit: string; readonly day: Day } | null;
  /** Fruits on the strip. */
  readonly drawn: number;
  /** Fruits without a window, by the reason, with their ids. */
  readonly without: readonly { readonly reason: Reason; readonly fruits: readonly string[] }[];
  readonly calls: CropWindow['calls'];
  readonly chart: string | null;
}

export function windowModel({ garden }: Facts, found: CropWindow): WindowModel {
  const told = found.growing.filter(({ window }) => window !== null);
  const codes = [...new Set(found.growing.flatMap(({ cannot }) => cannot?.code ?? []))];
  return {
    names: cropNames(found.crop, garden.about.locale),
    day: found.day,
    running: found.season !== null,
    unit: found.clock.unit,
    days_because: found.days_because,
    cut: found.cut.length,
    unripe: found.counts.U,
    over: found.counts.O,
    need_over: FEWEST_OVER,
    by_planting: found.by_planting,
    years: found.years.length,
    cannot: found.cannot,
    growing: found.growing.length,
    told: told.length,
    ripe_now: told.filter((one) => middleOf(one) === one.window?.day).length,
    next: nextOf(told),
    drawn: Math.min(told.length, MOST_ROWS),
    without: codes.flatMap((code) => {
      const own = found.growing.filter(({ cannot }) => cannot?.code === code);
      const reason = own[0]?.cannot;
      return reason ? [{ reason, fruits: own.map(({ fruit }) => fruit.id) }] : [];
    }),
    calls: found.calls,
    chart: told.length > 0 ? chartId(found) : null,
  };
}

/** The day from which a fruit is likelier ripe than not; null without a window, or where that is beyond the season. */
const middleOf = ({ window }: GrowingWindow): Day | null =>
  window && dayAt(window.day, printedLine(window).ripe.median);

function nextOf(told: readonly GrowingWindow[]): WindowModel['next'] {
  const ahead = told.flatMap((one) => {
    const day = middleOf(one);
    return day && day !== one.window?.day ? [{ fruit: one.fruit.id, day }] : [];
  });
  return ahead.sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))[0] ?? null;
}

const chartId = ({ crop }: CropWindow): string => `windows-${crop.id.toLowerCase()}`;

/** The windows of a crop's fruits on one axis of days, the soonest first; null where none can be told. */
export function windowChart({ garden, format }: Facts, found: CropWindow): Chart | null {
  const { day, season } = found;
  if (!day || !season) return null;
  const rows = soonest(found.growing)
    .slice(0, MOST_ROWS)
    .flatMap(({ fruit, window }) => {
      if (!window) return [];
      const { ripe, over } = printedLine(window);
      return [
        {
          name: fruit.id,
          half: bandDays(day, ripe, 'half'),
          most: bandDays(day, ripe, 'most'),
          over: over && bandDays(day, over, 'half'),
        },
      ];
    });
  if (rows.length === 0) return null;
  const { many } = cropNames(found.crop, garden.about.locale);
  return {
    id: chartId(found),
    title: `When the ${many} on the vine will be ripe`,
    description: `${format.count(rows.length)} fruits, seen from ${format.day(day)}: days between which each becomes ripe, five and nine times in ten.`,
    spec: windowStrip({ first: day, last: season.ends_on, today: day, rows }, format),
    table: windowsTable(found),
  };
}

/** Those that should long be ripe, then by the day to look next and the middle of the window; others without one last. */
export const soonest = (growing: readonly GrowingWindow[]): GrowingWindow[] =>
  [...growing].sort((a, b) => (keyOf(a) < keyOf(b) ? -1 : keyOf(a) > keyOf(b) ? 1 : 0));

const keyOf = (one: GrowingWindow): string => {
  const { window, cannot } = one;
  if (!window) return cannot?.code === 'outgrown' ? '' : '9999';
  return `${window.next_visit} ${middleOf(one) ?? '9999'}`;
};
