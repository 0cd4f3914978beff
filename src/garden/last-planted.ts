import type { Garden, Season } from './garden.ts';

/** Seasons in which anything was planted, the first first. */
export const plantedSeasons = ({ seasons }: Pick<Garden, 'seasons'>): Season[] =>
  seasons.filter(({ plantings }) => plantings.length > 0);

/** The last of them; null before the first planting. */
export const lastPlanted = (garden: Pick<Garden, 'seasons'>): Season | null => plantedSeasons(garden).at(-1) ?? null;
