import type { GardenRecord } from '../records/garden.ts';

interface Coordinates {
  /** Degrees, to a tenth: about 11 km from north to south. */
  readonly latitude: number;
  readonly longitude: number;
}

/** Where the garden lies, as near as the book tells; null when it does not say. */
export const publishedPlace = ({ place }: GardenRecord): Coordinates | null =>
  place && { latitude: toTenth(place.latitude), longitude: toTenth(place.longitude) };

/** Never a negative nought. */
const toTenth = (degrees: number): number => Math.round(degrees * 10) / 10 + 0;
