import { type Day, daysBetween } from '../../day.ts';
import type { Station } from '../../garden/garden.ts';
import { correlation } from '../../statistics/correlation.ts';
import { meanTemperature } from '../weather/measure.ts';
import { eveWindowsOf } from '../weather/window.ts';
import { withinGroups } from './cells.ts';
import { pickingDays } from './picking-day.ts';
import type { SugarReading } from './reading.ts';

/** With fewer picking days a correlation of any size is luck. */
const FEWEST_DAYS = 6;
/** From here on half of how rain differs goes with the companion, and neither can be told from the other. */
export const TOGETHER = Math.SQRT1_2;

/** Something else that differs between picking days and may be what moved the sugar. */
export interface Companion {
  readonly kind: 'warmth' | 'lateness';
  /** Picking days on which both are known. */
  readonly days: number;
  /** Pearson's r with rain, each less its season's mean; null with too few days. */
  readonly r: number | null;
  /** Rain and it came together so closely that neither can be told from the other. */
  readonly together: boolean;
}

interface PickingDay {
  readonly season: string;
  readonly rain: number;
  readonly other: number;
}

/** What came with rain on the picking days: how warm the days of the same window were, and how late in the year. */
export function companionsOf(readings: readonly SugarReading[], station: Station, rainDays: number): Companion[] {
  const warmth = meanBefore(station);
  const days = pickingDays(readings);
  const paired = (of: (day: SugarReading) => number | null): PickingDay[] =>
    days.flatMap((day) => {
      const other = of(day);
      return other === null ? [] : [{ season: day.season, rain: day.rain_mm, other }];
    });
  const [first] = days;
  return [
    companion(
      'warmth',
      paired(({ picked_on }) => warmth(picked_on, rainDays)),
    ),
    companion(
      'lateness',
      paired(({ picked_on }) => (first ? daysBetween(first.picked_on, picked_on) : null)),
    ),
  ];
}

function companion(kind: Companion['kind'], days: readonly PickingDay[]): Companion {
  if (days.length < FEWEST_DAYS) return { kind, days: days.length, r: null, together: false };
  const r = correlation(
    withinSeasons(days, ({ rain }) => rain),
    withinSeasons(days, ({ other }) => other),
  );
  return { kind, days: days.length, r, together: Math.abs(r) >= TOGETHER };
}

const withinSeasons = (days: readonly PickingDay[], of: (day: PickingDay) => number): number[] =>
  withinGroups(days, ({ season }) => season, of);

/** Mean temperature over some days that end on the eve, °C; null when one was not read. */
function meanBefore(station: Station): (day: Day, days: number) => number | null {
  const before = eveWindowsOf(station);
  return (day, days) => {
    const read = before(day, days).days.flatMap((one) => meanTemperature(one) ?? []);
    return read.length < days ? null : read.reduce((sum, one) => sum + one, 0) / days;
  };
}
