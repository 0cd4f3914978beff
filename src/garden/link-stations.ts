import { addDays } from '../day.ts';
import type { Listing } from '../reading/garden-records.ts';
import { nearest } from '../reading/nearest.ts';
import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';
import type { GardenRecord } from '../records/garden.ts';
import type { WeatherDayRecord } from '../records/weather-day.ts';
import { checkWeather } from './check-weather.ts';
import type { Station, WeatherDay } from './garden.ts';
import { isReadInMorning, NOTHING_OF_DAY, NOTHING_OF_MORNING, partsOf } from './morning-station.ts';

interface Stations {
  readonly stations: readonly Station[];
  readonly problems: readonly Problem[];
}

/** The weather of each station by the day it fell on. */
export function linkStations(listings: readonly Listing<'weather'>[], garden: Entry<GardenRecord> | null): Stations {
  const ids = [...new Set(listings.map(({ part }) => part))].sort();
  const stations = ids.map((id) => {
    const entries = listings.filter(({ part }) => part === id).flatMap((listing) => listing.entries);
    return {
      id,
      days: filed(
        id,
        entries.map(({ record }) => record),
        garden !== null && isReadInMorning(garden.record, id),
      ),
    };
  });
  const problems = ids.flatMap((id) =>
    checkWeather(listings.filter(({ part }) => part === id).flatMap((listing) => listing.entries)),
  );
  return { stations, problems: [...problems, ...unknownStation(garden, ids)] };
}

/** Rows as days of weather, each part with the day it tells of. */
function filed(station: string, rows: readonly WeatherDayRecord[], morning: boolean): WeatherDay[] {
  const days = new Map<string, WeatherDay>();
  const put = (date: WeatherDayRecord['date'], part: Partial<WeatherDayRecord>): void => {
    const day = days.get(date) ?? { ...NOTHING_OF_MORNING, ...NOTHING_OF_DAY, date, key: `weather/${station}/${date}` };
    days.set(date, { ...day, ...part });
  };
  for (const row of rows) {
    const { date, ...reading } = row;
    const { of_day, of_morning } = partsOf(reading);
    put(morning ? addDays(date, -1) : date, of_day);
    put(date, of_morning);
  }
  return [...days.values()].sort((a, b) => (a.date < b.date ? -1 : 1));
}

function unknownStation(garden: Entry<GardenRecord> | null, ids: readonly string[]): Problem[] {
  const wanted = garden?.record.weather?.station;
  if (!garden || !wanted || ids.includes(wanted)) return [];
  const near = nearest(wanted, ids);
  const hint = near ? `did you mean ${near}?` : `add weather/${wanted}.csv, or take weather: away`;
  return [
    problemIn(garden, ['weather', 'station'], {
      code: 'dangling-id',
      message: `there is no file weather/${wanted}.csv`,
      hint,
    }),
  ];
}
