import type { Dated } from '../dated.ts';
import type { Day } from '../day.ts';
import { eventsWhere } from './event.ts';
import type { Fruit, Garden, Picking, Planting, Season, Station } from './garden.ts';

/**
 * The garden as it was known on a day: what happened later, or was written down later, is not in it.
 * A part counts from its recorded date, else from its own last day; a part of unknown date counts always. Of a fruit that
 * a known visit looked at it is known that it hung there; one whose end nobody dated hung till it was cut.
 */
export function asOf(garden: Garden, today: Day): Garden {
  return {
    ...garden,
    seasons: garden.seasons.filter(({ starts_on }) => starts_on <= today).map((season) => seasonAsOf(season, today)),
    stations: garden.stations.map((station) => stationAsOf(station, today)),
  };
}

interface Written {
  readonly recorded_on: Day | null;
}

/** The day a part became known; null when nobody knows. */
export const knownOn = (date: Dated | null, part: Written | null): Day | null =>
  part?.recorded_on ?? date?.last ?? null;

const isKnown = (day: Day | null, today: Day): boolean => day === null || day <= today;

function seasonAsOf(season: Season, today: Day): Season {
  const visits = season.visits.filter((visit) => isKnown(visit.recorded_on ?? visit.visited_on, today));
  const looks = { known: lookedAt(visits), ever: lookedAt(season.visits) };
  return {
    ...season,
    plantings: season.plantings
      .filter(({ planted_on }) => isKnown(planted_on.last, today))
      .map((planting) => plantingAsOf(planting, looks, today)),
    visits,
    events: eventsWhere(season.events, (event, day) => isKnown(knownOn(day, event), today)),
  };
}

/** Ids of fruits that somebody looked at. */
interface Looks {
  readonly known: ReadonlySet<string>;
  /** By the day or later. */
  readonly ever: ReadonlySet<string>;
}

const lookedAt = (visits: Season['visits']): ReadonlySet<string> =>
  new Set(visits.flatMap(({ fruits }) => fruits.map(({ fruit }) => fruit)));

function plantingAsOf(planting: Planting, looks: Looks, today: Day): Planting {
  const pickingKnown = (picking: Picking): boolean => isKnown(knownOn(picking.picked_on, picking), today);
  return {
    ...planting,
    fruits: planting.fruits.flatMap((fruit) => fruitAsOf(fruit, looks, today) ?? []),
    pickings: planting.pickings.filter(pickingKnown),
  };
}

/** Null when nothing of the fruit was known yet. */
function fruitAsOf(fruit: Fruit, looks: Looks, today: Day): Fruit | null {
  const part = <P extends Written>(value: P | null, date: Dated | null | undefined): P | null =>
    value && isKnown(knownOn(date ?? null, value), today) ? value : null;
  const set = part(fruit.set, fruit.set?.set_on ?? fruit.set?.first_seen_on);
  const pick = part(fruit.pick, fruit.pick?.picked_on);
  const end = part(fruit.end, fruit.end?.ended_on);
  const cut = part(fruit.cut, fruit.cut?.cut_on);
  const told = fruit.pick ?? fruit.end;
  const isDated = fruit.set !== null || told !== null || fruit.cut !== null || looks.ever.has(fruit.id);
  if (isDated && !set && !pick && !end && !cut && !looks.known.has(fruit.id)) return null;
  const stillGrowing = !pick && !end && (told !== null || (fruit.cut !== null && !cut));
  return { ...fruit, set, pick, end, cut, fate: stillGrowing ? 'growing' : fruit.fate };
}

function stationAsOf(station: Station, today: Day): Station {
  return { ...station, days: station.days.filter(({ date }) => date <= today) };
}
