import { addDays, type Day, dateOf, dayFromNumber, dayNumber, dayOf, daysBetween, monthOf, yearOf } from '../../day.ts';
import type { Station, WeatherDay } from '../../garden/garden.ts';

/** The days from one date to another at one station, in a row: null for a day nobody wrote of. */
export interface Window {
  /** The year it lies in, or both: `2025`, `2025/26`. */
  readonly label: string;
  readonly first: Day;
  readonly last: Day;
  readonly days: readonly (WeatherDay | null)[];
}

type Open = (first: Day, last: Day) => Window;

/** Every season looks at the same dates of all years: a station's windows are opened once and shared. */
const opened = new WeakMap<Station, Open>();

/** Opens windows on one station's record. */
export function windowsOf(station: Station): Open {
  const open = opened.get(station) ?? remembered(openOn(station));
  opened.set(station, open);
  return open;
}

function openOn({ days }: Station): Open {
  const byDate = new Map(days.map((day) => [day.date, day]));
  return (first, last) => {
    const [start, length] = [dayNumber(first), daysBetween(first, last) + 1];
    const dayAt = (index: number): WeatherDay | null => byDate.get(dayFromNumber(start + index)) ?? null;
    return { label: labelOf(first, last), first, last, days: Array.from({ length }, (_, index) => dayAt(index)) };
  };
}

function remembered(open: Open): Open {
  const known = new Map<string, Window>();
  return (first, last) => {
    const dates = `${first} ${last}`;
    const window = known.get(dates) ?? open(first, last);
    known.set(dates, window);
    return window;
  };
}

/** Opens windows of some days that end on the eve of one: what a picking looks back on. */
export function eveWindowsOf(station: Station): (day: Day, days: number) => Window {
  const open = windowsOf(station);
  return (day, days) => open(addDays(day, -days), addDays(day, -1));
}

/** The same dates in every year the station's record reaches into, the first year first; the window itself among them. */
export function sameDates(station: Station, first: Day, last: Day): Window[] {
  const open = windowsOf(station);
  const [oldest, newest] = [station.days[0]?.date, station.days.at(-1)?.date];
  if (!oldest || !newest) return [];
  const years = Array.from({ length: yearOf(newest) - yearOf(oldest) + 2 }, (_, index) => yearOf(oldest) - 1 + index);
  return years
    .map((year) => open(inYear(first, year), inYear(last, year + yearOf(last) - yearOf(first))))
    .filter(({ days }) => days.some((day) => day !== null));
}

/** 29 February becomes 1 March where there is none. */
const inYear = (day: Day, year: number): Day => dayOf(year, monthOf(day), dateOf(day));

const labelOf = (first: Day, last: Day): string =>
  yearOf(first) === yearOf(last) ? first.slice(0, 4) : `${first.slice(0, 4)}/${last.slice(2, 4)}`;
