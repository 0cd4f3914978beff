import type { Garden, Season } from '../../src/garden/garden.ts';

/** Keys of waterings drawn from the tank: told so, or not told. */
export const tankWaterings = ({ about }: Garden, { events }: Season): string[] =>
  about.tank === null ? [] : events.waterings.flatMap(({ from, key }) => ((from ?? 'tank') === 'tank' ? [key] : []));
