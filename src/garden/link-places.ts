import { naturally } from '../natural-order.ts';
import type { Problem } from '../reading/problem.ts';
import type { Entry } from '../reading/source.ts';
import type { BedRecord, GardenRecord, SpotRecord } from '../records/garden.ts';
import type { Spot } from './garden.ts';
import { type Index, indexById, lookUp } from './index-by-id.ts';

export interface Places {
  /** By id. */
  readonly spots: readonly Spot[];
  readonly index: Index<SpotRecord>;
  readonly problems: readonly Problem[];
}

/** The garden's spots, each with its share of ground. */
export function linkPlaces(garden: Entry<GardenRecord> | null): Places {
  const within = <T>(key: string, list: readonly T[] | null): Entry<T>[] =>
    (list ?? []).map((record, index) => ({
      record,
      source: (garden as Entry<GardenRecord>).source,
      path: [key, index],
    }));
  const bedEntries = within('beds', garden?.record.beds ?? null);
  const spotEntries = within('spots', garden?.record.spots ?? null);
  const readable = garden ? [] : null;
  const beds = indexById<BedRecord>([{ entries: bedEntries, spoilt: readable }], 'bed');
  const spots = indexById<SpotRecord>([{ entries: spotEntries, spoilt: readable }], 'spot');
  const dangling = spotEntries.flatMap((entry) => {
    if (entry.record.bed === null) return [];
    return lookUp(beds.index, entry.record.bed, entry, ['bed'], 'bed').problem ?? [];
  });
  const inBed = (bed: string): number => spotEntries.filter(({ record }) => record.bed === bed).length;
  const shareOf = (spot: SpotRecord): number | null => {
    if (spot.area_m2 !== null || spot.bed === null) return spot.area_m2;
    const area = beds.index.byId.get(spot.bed)?.record.area_m2 ?? null;
    return area === null ? null : area / inBed(spot.bed);
  };
  const textureOf = ({ soil, bed }: SpotRecord): Spot['texture'] =>
    soil ?? (bed === null ? null : (beds.index.byId.get(bed)?.record.soil ?? null));
  return {
    spots: [...spots.index.byId.values()]
      .map(({ record }) => ({ ...record, share_m2: shareOf(record), texture: textureOf(record) }))
      .sort((a, b) => naturally(a.id, b.id)),
    index: spots.index,
    problems: [...beds.problems, ...spots.problems, ...dangling],
  };
}
