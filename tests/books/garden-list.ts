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
  garden('day-zero', 'home', [42, 55]),
  garden('eight-plants', 'home', [46, 60]),
  garden('notebook-years', 'home', [48, 64], { warnings: ['harvest-missing'] }),
  garden('no-instruments', 'home', [44, 58]),
  garden('ten-unblocked', 'community', [43, 78]),
  garden('southern', 'community', [53, 92]),
  garden('us-letter', 'community', [55, 96], { paper: 'Letter' }),
  garden('one-crop', 'community', [40, 74]),
];

export const folderOf = (name: string): string => `tests/books/gardens/${name}`;

const built = new Map<string, Promise<Site>>();

/** The site of one of these gardens, built once. */
export function siteOf(name: string): Promise<Site> {
  const site = built.get(name) ?? siteOfFolder(folderOf(name));
  built.set(name, site);
  return site;
}
