import type { Reference } from '../book/chapter.ts';
import { readFolder } from '../disk/read-folder.ts';
import type { RecordFile } from '../reading/garden-records.ts';
import { type Listing, readListing } from '../reading/garden-records.ts';
import type { Kind } from '../reading/kinds.ts';
import type { CropRecord } from '../records/crop.ts';

export interface LoadedReference extends Reference {
  readonly crops: readonly CropRecord[];
}

/** The facts of the trade that come with the program. Throws Error when they do not read cleanly: a fault of the program. */
export function loadReference(folder: string): LoadedReference {
  const { files, refused } = readFolder(folder, { extensions: ['.yaml'], maxBytes: 2_000_000, maxFiles: 200 });
  const [unread] = refused;
  if (unread) throw new Error(`invalid reference: ${unread.path} ${unread.message}`);
  const read = <K extends Kind>(kind: K, file: RecordFile): Listing<K>['entries'] => {
    const { listing, problems } = readListing(kind, '', file);
    const [first] = problems;
    if (first) throw new Error(`invalid reference: ${first.file}:${first.line}:${first.column}: ${first.message}`);
    return listing.entries;
  };
  const named = <K extends Kind>(kind: K): Listing<K>['entries'] =>
    files.filter(({ path }) => path === `${kind}.yaml`).flatMap((file) => read(kind, file));
  return {
    sources: named('sources').map(({ record }) => record),
    cautions: named('cautions').map(({ record }) => record),
    materials: named('materials').map(({ record }) => record),
    soils: named('soils').map(({ record }) => record),
    roofs: named('roofs').map(({ record }) => record),
    methods: named('methods').map(({ record }) => record),
    crops: files
      .filter(({ path }) => path.startsWith('crops/'))
      .flatMap((file) => read('crops', file))
      .map(({ record }) => record),
  };
}
