import type { Listing } from '../reading/garden-records.ts';
import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';
import type { CropRecord } from '../records/crop.ts';
import type { VarietyRecord } from '../records/variety.ts';
import type { Crop, Variety } from './garden.ts';
import { type Index, indexById, lookUp } from './index-by-id.ts';

export interface Varieties {
  readonly crops: ReadonlyMap<string, Crop>;
  /** In the alphabet's order of their names, then by id. */
  readonly varieties: readonly Variety[];
  readonly index: Index<VarietyRecord>;
  readonly problems: readonly Problem[];
}

/** Varieties with their crops; a garden's own crop file takes the place of the shared one. */
export function linkVarieties(
  listings: readonly Listing<'varieties'>[],
  shared: readonly CropRecord[],
  own: readonly Listing<'crops'>[],
): Varieties {
  const { index, problems } = indexById<VarietyRecord>(listings, 'variety');
  const crops = indexCrops(shared, own);
  const misnamed = own.flatMap(({ entries, part }) =>
    entries.filter(({ record }) => record.id !== part).map((entry) => misnamedCrop(entry, part)),
  );
  const linked = [...index.byId.values()].map((entry) => ({
    entry,
    ...lookUp(crops, entry.record.crop, entry, ['crop'], 'crop'),
  }));
  return {
    crops: new Map([...crops.byId].map(([id, { record }]) => [id, record])),
    varieties: linked.flatMap(({ entry, found }) => (found ? [{ ...entry.record, crop: found }] : [])).sort(byName),
    index,
    problems: [...problems, ...misnamed, ...linked.flatMap(({ problem }) => problem ?? [])],
  };
}

function indexCrops(shared: readonly CropRecord[], own: readonly Listing<'crops'>[]): Index<CropRecord> {
  const byId = new Map<string, Entry<CropRecord>>();
  for (const record of shared) byId.set(record.id, { record, source: NOWHERE, path: [] });
  for (const entry of own.flatMap(({ entries }) => entries)) byId.set(entry.record.id, entry);
  return {
    byId,
    spoilt: new Set(own.filter(({ entries }) => entries.length === 0).map(({ part }) => part)),
    complete: true,
  };
}

const NOWHERE = { file: '', text: '', tree: [], locate: () => ({ line: 1, column: 1 }) };

const misnamedCrop = (entry: Entry<CropRecord>, part: string): Problem =>
  problemIn(entry, ['id'], {
    code: 'file-name',
    message: `the file of crop "${entry.record.id}" is called ${part}.yaml`,
    hint: `call it ${entry.record.id}.yaml`,
  });

/** The alphabet's order, the same on every machine. */
function byName(a: Variety, b: Variety): number {
  return a.name.localeCompare(b.name, 'en') || (a.id < b.id ? -1 : 1);
}
