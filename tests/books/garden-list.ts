import { type Site, siteOfFolder } from '../site/built.ts';

/** What a garden of this folder is, and how much paper its whole book may take: every page printed by itself. */
export interface GardenOf {
  readonly name: string;
  readonly edition: 'home' | 'community';
  readonly paper: 'A4' | 'Letter';
  readonly sheets: { readonly least: number; readonly most: number };
  /** Codes of the warnings its records mean to give. */
  readonly warnings: readonly string[];
}

const garden = (
  name: string,
  edition: GardenOf['edition'],
  [least, most]: [number, number],
  more: Partial<GardenOf> = {},
): GardenOf => ({ name, edition, paper: 'A4', sheets: { least, most }, warnings: [], ...more });

export const GARDENS: readonly GardenOf[] = [
  garden('day-zero', 'home', [13, 20]),
  garden('eight-plants', 'home', [17, 25]),
  garden('notebook-years', 'home', [22, 31], { warnings: ['harvest-missing'] }),
  garden('no-instruments', 'home', [16, 24]),
  garden('ten-unblocked', 'community', [18, 27]),
  garden('southern', 'community', [26, 36]),
  garden('us-letter', 'community', [26, 38], { paper: 'Letter' }),
  garden('one-crop', 'community', [19, 28]),
];

export const folderOf = (name: string): string => `tests/books/gardens/${name}`;

const built = new Map<string, Promise<Site>>();

/** The site of one of these gardens, built once. */
export function siteOf(name: string): Promise<Site> {
  const site = built.get(name) ?? siteOfFolder(folderOf(name));
  built.set(name, site);
  return site;
}
