import { type Day, earlierOf } from '../../day.ts';
import type { Garden, Season, Station } from '../../garden/garden.ts';
import { thresholdsOf } from '../../garden/weather-settings.ts';
import { naturally } from '../../natural-order.ts';
import type { SoilRecord } from '../../records/soil.ts';
import { type DipAccount, dipAccount } from './dip-account.ts';
import { type Giving, givings } from './given.ts';
import { type SpotAccount, spotAccount } from './spot-account.ts';
import { type SpotWater, spotWater, type WaterPlace } from './spot-water.ts';
import type { TankFacts } from './tank-facts.ts';
import type { ThirstRecord } from './thirst-record.ts';

/** The water of one season, looked back on. */
export interface SeasonWater {
  readonly season: Season;
  /** Spots that can be reckoned, in the natural order of their ids. */
  readonly spots: readonly { readonly water: SpotWater; readonly account: SpotAccount }[];
  /** All water given, to spots that cannot be reckoned too, the first day first. */
  readonly givings: readonly Giving[];
  readonly dips: DipAccount | null;
}

/** What a garden has to reckon water with; null where it has none. */
export interface WaterMeans {
  readonly station: Station | null;
  readonly thirst: ThirstRecord | null;
  readonly tank: TankFacts | null;
  readonly soils: readonly SoilRecord[];
}

export function seasonWater(
  garden: Garden,
  season: Season,
  today: Day,
  { station, thirst, tank, soils }: WaterMeans,
): SeasonWater {
  const { soaking_day_mm } = thresholdsOf(garden.about);
  const given = givings(garden, season);
  const waters =
    station && thirst ? spotWaters({ station, thirst, soils, soaking_mm: soaking_day_mm }, season, today, given) : [];
  return {
    season,
    spots: waters.map((water) => ({ water, account: spotAccount(garden, water) })),
    givings: given,
    dips: tank && dipAccount(tank, season, given, station, soaking_day_mm),
  };
}

function spotWaters(place: WaterPlace, season: Season, today: Day, given: readonly Giving[]): SpotWater[] {
  const ids = [...new Set(season.plantings.map(({ spot }) => spot.id))].sort(naturally);
  return ids.flatMap(
    (id) =>
      spotWater(
        place,
        season,
        earlierOf(season.ends_on, today),
        season.plantings.filter(({ spot }) => spot.id === id),
        given.filter(({ spot }) => spot === id),
      ) ?? [],
  );
}
