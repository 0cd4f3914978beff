import type { Listing } from '../reading/garden-records.ts';
import type { Kind } from '../reading/kinds.ts';
import type { Problem } from '../reading/problem.ts';
import type { Entry } from '../reading/source.ts';
import type { FruitRecord } from '../records/fruit.ts';
import type { PickingRecord } from '../records/picking.ts';
import type { PlantingRecord } from '../records/planting.ts';
import type { SeasonRecord } from '../records/season.ts';
import { checkCounts } from './check-counts.ts';
import { checkFruit } from './check-fruit.ts';
import { checkLikely } from './check-likely.ts';
import { checkManure } from './check-manure.ts';
import { checkBlocks, checkPicking, checkPickingTwice, checkPlanting, checkReplanted } from './check-planting.ts';
import { checkVisit } from './check-visit.ts';
import type { Fruit, Picking, Planting, Season, Visit } from './garden.ts';
import { type Index, indexById, lookUp } from './index-by-id.ts';
import { keyByName } from './key-by-name.ts';
import { linkEvents } from './link-events.ts';
import type { Lots } from './link-lots.ts';
import type { Places } from './link-places.ts';
import type { Varieties } from './link-varieties.ts';

type Listings = <K extends Kind>(kind: K) => Listing<K>[];

interface LinkedSeason {
  /** Null when season.yaml is missing or refused. */
  readonly found: Season | null;
  readonly problems: readonly Problem[];
}

/** One season's plantings with their fruits and pickings, and every contradiction among them. */
export function linkSeason(
  slug: string,
  season: SeasonRecord | null,
  of: Listings,
  places: Places,
  varieties: Varieties,
  lots: Lots,
): LinkedSeason {
  const plantings = indexById<PlantingRecord>(of('plantings'), 'planting');
  const fruits = indexById<FruitRecord>(of('fruits'), 'fruit');
  const visits = indexById(of('visits'), 'visit');
  const pickingEntries = of('pickings').flatMap(({ entries }) => entries);
  const ofPlantings = indexedIds(pickingEntries);
  const diary = linkEvents(slug, season, of, {
    planting: plantings.index,
    fruit: fruits.index,
    spot: places.index,
    variety: varieties.index,
    lot: lots.index,
  });
  const problems = [
    ...plantings.problems,
    ...fruits.problems,
    ...visits.problems,
    ...indexById(ofPlantings, 'picking').problems,
    ...checkPlantings(plantings.index, season, places, varieties),
    ...checkHarvest([...fruits.index.byId.values()], pickingEntries, plantings.index, season, varieties),
    ...[...visits.index.byId.values()].flatMap((entry) => checkVisit(entry, fruits.index, season)),
    ...diary.problems,
  ];
  const linked = sortedById(plantings.index).flatMap(
    (record) => linkPlanting(slug, record, sortedById(fruits.index), pickingEntries, places, varieties) ?? [],
  );
  const visitList: Visit[] = sortedById(visits.index).map((record) => ({
    ...record,
    key: `visits/${slug}/${record.id}`,
  }));
  return {
    found: season && {
      ...season,
      slug,
      plantings: linked,
      visits: visitList.sort((a, b) => (a.visited_on < b.visited_on ? -1 : a.visited_on > b.visited_on ? 1 : 0)),
      events: diary.events,
    },
    problems: [
      ...problems,
      ...checkCounts([...plantings.index.byId.values()], linked),
      ...checkManure(
        of('feeding').flatMap(({ entries }) => entries),
        linked,
        season?.ends_on ?? null,
      ),
    ],
  };
}

const indexedIds = (entries: readonly Entry<PickingRecord>[]) => [
  {
    entries: entries.filter((entry): entry is Entry<PickingRecord & { id: string }> => entry.record.id !== null),
    spoilt: [],
  },
];

const sortedById = <T extends { id: string }>(index: Index<T>): T[] =>
  [...index.byId.values()].map(({ record }) => record).sort((a, b) => (a.id < b.id ? -1 : 1));

function checkPlantings(
  plantings: Index<PlantingRecord>,
  season: SeasonRecord | null,
  places: Places,
  varieties: Varieties,
): Problem[] {
  const entries = [...plantings.byId.values()];
  const references = entries.flatMap((entry) => {
    const spot = lookUp(places.index, entry.record.spot, entry, ['spot'], 'spot').problem;
    const unknown = entry.record.variety === 'unknown';
    const variety = unknown
      ? null
      : lookUp(varieties.index, entry.record.variety, entry, ['variety'], 'variety').problem;
    return [...(spot ? [spot] : []), ...(variety ? [variety] : [])];
  });
  return [
    ...references,
    ...entries.flatMap((entry) => checkPlanting(entry, season)),
    ...checkReplanted(entries),
    ...checkBlocks(entries),
  ];
}

function checkHarvest(
  fruits: readonly Entry<FruitRecord>[],
  pickings: readonly Entry<PickingRecord>[],
  plantings: Index<PlantingRecord>,
  season: SeasonRecord | null,
  varieties: Varieties,
): Problem[] {
  const cropOf = (planting: PlantingRecord | null) => {
    const crop = planting && varieties.index.byId.get(planting.variety)?.record.crop;
    return (crop && varieties.crops.get(crop)) || null;
  };
  return [
    ...fruits.flatMap((entry) => {
      const { found, problem } = lookUp(plantings, entry.record.planting, entry, ['planting'], 'planting');
      return [...(problem ? [problem] : []), ...checkFruit(entry, found, season), ...checkLikely(entry, cropOf(found))];
    }),
    ...pickings.flatMap((entry) => {
      const { found, problem } = lookUp(plantings, entry.record.planting, entry, ['planting'], 'planting');
      return [...(problem ? [problem] : []), ...checkPicking(entry, found, season)];
    }),
    ...checkPickingTwice(pickings),
  ];
}

/** Null when its spot or variety could not be found. */
function linkPlanting(
  slug: string,
  record: PlantingRecord,
  fruits: readonly FruitRecord[],
  pickings: readonly Entry<PickingRecord>[],
  places: Places,
  varieties: Varieties,
): Planting | null {
  const spot = places.spots.find(({ id }) => id === record.spot);
  const variety = varieties.varieties.find(({ id }) => id === record.variety) ?? null;
  if (!spot || (!variety && record.variety !== 'unknown')) return null;
  const ownFruits: Fruit[] = fruits
    .filter(({ planting }) => planting === record.id)
    .map((fruit) => ({ ...fruit, key: `fruits/${slug}/${fruit.id}` }));
  const own = pickings.map((entry) => entry.record).filter(({ planting }) => planting === record.id);
  return {
    ...record,
    key: `plantings/${slug}/${record.id}`,
    spot,
    variety,
    fruits: ownFruits,
    pickings: keyPickings(slug, own),
  };
}

/** Pickings by date; one without an id is named by its planting and date, further ones of that day by a number. */
function keyPickings(slug: string, pickings: readonly PickingRecord[]): Picking[] {
  const order = (picking: PickingRecord): string =>
    `${picking.picked_on.text} ${picking.id ?? ''} ${JSON.stringify(picking)}`;
  const sorted = [...pickings].sort((a, b) => (order(a) < order(b) ? -1 : 1));
  return keyByName(
    'pickings',
    slug,
    sorted.map((picking) => [picking.id ?? `${picking.planting} ${picking.picked_on.text}`, picking]),
  );
}
