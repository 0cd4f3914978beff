import type { GardenRecords } from '../reading/garden-records.ts';
import { listingsOf } from '../reading/garden-records.ts';
import { fileProblem, type Problem, sortProblems } from '../reading/problem.ts';
import type { CropRecord } from '../records/crop.ts';
import { checkConsent } from './check-consent.ts';
import { checkSettings } from './check-settings.ts';
import { checkTank } from './check-tank.ts';
import { checkWeights } from './check-weights.ts';
import type { Garden } from './garden.ts';
import { linkLots } from './link-lots.ts';
import { linkPeople } from './link-people.ts';
import { linkPlaces } from './link-places.ts';
import { linkSeasons } from './link-seasons.ts';
import { linkStations } from './link-stations.ts';
import { linkVarieties } from './link-varieties.ts';

export interface Linked {
  /** Null when garden.yaml is missing or refused. */
  readonly garden: Garden | null;
  /** Sorted; those of reading among them. */
  readonly problems: readonly Problem[];
}

/**
 * Joins all records of a garden by their ids and checks them against each other.
 * `crops` are the crops every garden has; a garden's own of the same id takes their place.
 */
export function linkGarden(records: GardenRecords, crops: readonly CropRecord[]): Linked {
  const about = listingsOf(records, 'garden')[0];
  const record = about?.entries[0]?.record ?? null;
  const people = linkPeople(listingsOf(records, 'people'));
  const places = linkPlaces(about?.entries[0] ?? null);
  const varieties = linkVarieties(listingsOf(records, 'varieties'), [...crops], listingsOf(records, 'crops'));
  const lots = linkLots(listingsOf(records, 'lots'), varieties);
  const seasons = linkSeasons(records, places, varieties, lots);
  const stations = linkStations(listingsOf(records, 'weather'), about?.entries[0] ?? null);
  const problems = [
    ...records.problems,
    ...(about ? [] : [gardenMissing]),
    ...people.problems,
    ...checkConsent(records.listings, people),
    ...places.problems,
    ...varieties.problems,
    ...lots.problems,
    ...seasons.problems,
    ...stations.problems,
    ...checkSettings(about?.entries[0] ?? null),
    ...checkWeights(about?.entries[0] ?? null),
    ...checkTank(
      about?.entries[0] ?? null,
      listingsOf(records, 'dips').flatMap(({ entries }) => entries),
    ),
  ];
  const garden = record && {
    about: record,
    people: people.people,
    crops: varieties.crops,
    varieties: varieties.varieties,
    lots: lots.lots,
    spots: places.spots,
    seasons: seasons.seasons,
    stations: stations.stations,
  };
  return { garden, problems: sortProblems(problems) };
}

const gardenMissing = fileProblem('garden.yaml', {
  code: 'garden-missing',
  message: 'there is no garden.yaml in this folder',
  hint: "name the garden's folder, or begin one with: groundspot new <folder>",
});
