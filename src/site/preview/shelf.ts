/** Files by their name below the site. */
export type Files = ReadonlyMap<string, string | Uint8Array>;

/** Addresses of the preview's own; no page of a book can begin so. */
export const OWN_FOLDER = '-/';
const LAST_GOOD = `${OWN_FOLDER}last-good/`;

/** What the preview shows now. */
export interface Shelf {
  /** The last handbook that could be made; null before the first. */
  readonly good: Files | null;
  /** The page that stands in for every other while the records or the program are at fault; null when all is well. */
  readonly fault: string | null;
  /** Style and faces for the pages of the preview's own. */
  readonly assets: Files;
  /** The page for an address without one. */
  readonly missing: string;
}

export type Found =
  | { readonly status: 200 | 404 | 503; readonly name: string; readonly content: string | Uint8Array }
  | { readonly status: 307; readonly location: string };

/** What stands at a name. While something is wrong the last good handbook stands below `/-/last-good/`. */
export function lookUp(shelf: Shelf, name: string): Found {
  const { good, fault, assets, missing } = shelf;
  const lost = { status: 404, name: 'missing.html', content: missing } as const;
  if (name.startsWith(LAST_GOOD)) {
    const path = name.slice(LAST_GOOD.length);
    const found = lookIn(good, path, LAST_GOOD) ?? lost;
    return fault === null && found.status === 200 ? moved(path) : found;
  }
  if (fault === null) return lookIn(good, name, '') ?? lookIn(assets, name, '') ?? lost;
  return lookIn(assets, name, '') ?? { status: 503, name: 'fault.html', content: fault };
}

function lookIn(files: Files | null, name: string, folder: string): Found | null {
  const content = files?.get(name);
  if (content !== undefined) return { status: 200, name, content };
  // Links in a page are relative to its folder, so a folder without its last stroke is sent there.
  return files?.has(`${name}/index.html`) ? moved(`${folder}${name}/`) : null;
}

const moved = (name: string): Found => ({
  status: 307,
  location: `/${name
    .replace(/(^|\/)index\.html$/, '$1')
    .split('/')
    .map(encodeURIComponent)
    .join('/')}`,
});

/** The address of the last good handbook, for the page that says what is wrong. */
export const lastGoodAddress = `/${LAST_GOOD}`;
