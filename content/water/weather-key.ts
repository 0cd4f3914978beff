import type { Facts } from '../../src/book/chapter.ts';
import { ownStation } from '../../src/garden/own-station.ts';

/** The whole record of the station stands under what is reckoned from it; none without a station. */
export function weatherKey({ garden }: Pick<Facts, 'garden'>): string[] {
  const station = ownStation(garden);
  const [first, last] = [station?.days[0]?.date, station?.days.at(-1)?.date];
  return station && first && last ? [`weather/${station.id}/${first}..${last}`] : [];
}
