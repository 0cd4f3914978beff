import type { Garden, Station } from './garden.ts';

/** The station garden.yaml names; null when it names none. */
export const ownStation = ({ about, stations }: Garden): Station | null =>
  stations.find(({ id }) => id === about.weather?.station) ?? null;
