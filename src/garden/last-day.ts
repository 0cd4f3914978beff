import type { Dated } from '../dated.ts';
import type { Day } from '../day.ts';
import { knownOn } from './as-of.ts';
import { allEvents } from './event.ts';
import type { Garden, Season } from './garden.ts';

/** The day of the last event or written date of the garden's records; weather, which runs by itself, is left out. */
export function lastDay(garden: Pick<Garden, 'seasons'>): Day | null {
  const days = garden.seasons.flatMap(daysOfSeason).filter((day) => day !== null);
  return days.reduce<Day | null>((latest, day) => (latest === null || day > latest ? day : latest), null);
}

function daysOfSeason(season: Season): (Day | null)[] {
  const ofPlantings = season.plantings.flatMap(({ sown_on, planted_on, fruits, pickings }) => [
    lastOf(sown_on),
    lastOf(planted_on),
    ...pickings.map((picking) => knownOn(picking.picked_on, picking)),
    ...fruits.flatMap(({ set, pick, cut, end }) => [
      knownOn(set?.set_on ?? set?.first_seen_on ?? null, set),
      knownOn(pick?.picked_on ?? null, pick),
      knownOn(cut?.cut_on ?? null, cut),
      knownOn(end?.ended_on ?? null, end),
    ]),
  ]);
  const ofEvents = allEvents(season.events).map(({ event, day }) => knownOn(day, event));
  return [...ofPlantings, ...ofEvents, ...season.visits.map((visit) => visit.recorded_on ?? visit.visited_on)];
}

const lastOf = (date: Dated | null): Day | null => date?.last ?? null;
