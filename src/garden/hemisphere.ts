import { monthOf } from '../day.ts';
import type { Garden } from './garden.ts';

/** Whether the garden's summer runs over New Year: by its latitude, else by the month its first season starts in. */
export function isSouthern({ about, seasons }: Pick<Garden, 'about' | 'seasons'>): boolean {
  const latitude = about.place?.latitude ?? null;
  if (latitude !== null) return latitude < 0;
  const starts = seasons[0]?.starts_on;
  return starts !== undefined && monthOf(starts) >= 8;
}
