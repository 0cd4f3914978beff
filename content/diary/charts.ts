import type { Facts } from '../../src/book/chapter.ts';
import type { Chart } from '../../src/book/chart.ts';
import { eventStrip } from '../../src/charts/event-strip.ts';
import type { Day } from '../../src/day.ts';
import type { Season } from '../../src/garden/garden.ts';
import { ownStation } from '../../src/garden/own-station.ts';
import { readDay } from '../../src/ledger/weather/read-day.ts';
import type { SeasonWeather } from '../../src/ledger/weather/season-weather.ts';
import { windowsOf } from '../../src/ledger/weather/window.ts';
import { type Entry, LANES, type Lane } from './entry.ts';
import { diaryTable } from './tables.ts';

const LABELS: Readonly<Record<Lane, string>> = {
  sown: 'sown',
  planted: 'planted out',
  ground: 'fed, mulched',
  watered: 'watered',
  flowers: 'flowers',
  looked: 'looked over',
  picked: 'picked, lost',
  cut: 'cut, shared',
};

/** The season's work as a strip; null when nothing of it has a day within the season. */
export function diaryChart(
  { garden, today, format }: Facts,
  season: Season,
  entries: readonly Entry[],
  weather: SeasonWeather | null,
): Chart | null {
  const last = today !== null && today < season.ends_on ? today : season.ends_on;
  const lanes = LANES.map((lane) => ({ label: LABELS[lane], marks: marksOf(entries, lane, season.starts_on, last) }));
  const shown = lanes.filter(({ marks }) => marks.length > 0);
  if (shown.length === 0) return null;
  const station = ownStation(garden);
  const days = station && weather?.has_readings ? windowsOf(station)(season.starts_on, last).days : [];
  return {
    id: `diary-${season.slug.toLowerCase()}`,
    title: `What was done when, ${season.label}`,
    description: shown.map(({ label, marks }) => `${label} on ${marks.length} days or spans`).join('; '),
    spec: eventStrip(
      {
        first: season.starts_on,
        last,
        lanes: shown,
        rain: days.some((day) => day !== null && day.rain_mm !== null)
          ? {
              days: days.map(readDay),
              labelled_mm: weather?.settings.thresholds.soaking_day_mm ?? Number.POSITIVE_INFINITY,
            }
          : null,
      },
      format,
    ),
    table: diaryTable(season, entries),
  };
}

/** Days and spans of a lane that lie within the season, each once. */
function marksOf(entries: readonly Entry[], lane: Lane, from: Day, to: Day): { first: Day; last: Day }[] {
  const within = entries.flatMap(({ lane: of, date }) =>
    of === lane && date.first !== null && date.first >= from && date.last <= to
      ? [{ first: date.first, last: date.last }]
      : [],
  );
  return [...new Map(within.map((mark) => [`${mark.first} ${mark.last}`, mark])).values()];
}
