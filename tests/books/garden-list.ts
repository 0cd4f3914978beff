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
  garden('day-zero', 'home', [9, 16]),
  garden('eight-plants', 'home', [13, 20]),
  garden('notebook-years', 'home', [13, 22], { warnings: ['harvest-missing'] }),
  garden('no-instruments', 'home', [11, 19]),
  garden('ten-unblocked', 'community', [14, 21]),
  garden('southern', 'community', [20, 27]),
  garden('us-letter', 'community', [20, 30], { paper: 'Letter' }),
  garden('one-crop', 'community', [16, 22]),
];

export const folderOf = (name: string): string => `tests/books/gardens/${name}`;

const built = new Map<string, Promise<Site>>();

/** The site of one of these gardens, built once. */
export function siteOf(name: string): Promise<Site> {
  const site = built.get(name) ?? siteOfFolder(folderOf(name));
  built.set(name, site);
  return site;
}
