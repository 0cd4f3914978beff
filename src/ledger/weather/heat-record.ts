import { type Day, dayNumber } from '../../day.ts';
import type { Station } from '../../garden/garden.ts';
import type { HeatSettings } from '../../garden/weather-settings.ts';
import { ENOUGH_READ } from './long-record.ts';
import { heatOf } from './measure.ts';

/** Taken to be like its neighbours a day is off by some 5 °C·days, so three are by the heat of one. A judgement, no source. */
const FEW_UNREAD = 3;

/**
 * Heat from one day to another at a station, in °C·days: the first day counts, the last does not. Unread days are taken
 * to be like the read ones of the stretch; null when more than three and more than 5 in 100 were not read, or most.
 */
export type HeatBetween = (from: Day, to: Day) => number | null;

export function heatRecord(station: Station, settings: HeatSettings): HeatBetween {
  const first = station.days[0] ? dayNumber(station.days[0].date) : 0;
  const last = dayNumber(station.days.at(-1)?.date ?? ('1970-01-01' as Day));
  const heat = new Map(station.days.map((day) => [dayNumber(day.date), heatOf(day, settings.method, settings)]));
  const sums = [0];
  const reads = [0];
  for (let day = first; day <= last; day++) {
    const value = heat.get(day) ?? null;
    sums.push((sums.at(-1) ?? 0) + (value ?? 0));
    reads.push((reads.at(-1) ?? 0) + (value === null ? 0 : 1));
  }
  const upTo = (list: readonly number[], day: number): number =>
    list[Math.min(Math.max(day - first, 0), list.length - 1)] ?? 0;
  return (from, to) => {
    const [start, end] = [dayNumber(from), dayNumber(to)];
    if (end <= start) return end === start ? 0 : null;
    const read = upTo(reads, end) - upTo(reads, start);
    const unread = end - start - read;
    if ((unread > FEW_UNREAD && read < ENOUGH_READ * (end - start)) || unread > read) return null;
    return ((upTo(sums, end) - upTo(sums, start)) * (end - start)) / read;
  };
}
