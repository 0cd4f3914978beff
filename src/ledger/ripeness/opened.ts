import type { Day } from '../../day.ts';
import type { Fruit } from '../../garden/garden.ts';
import type { StateInside } from '../../statistics/signs/likelihood-ratio.ts';

/** What the knife found of a fruit, and the days between which it came off. */
export interface Opened {
  readonly state: StateInside;
  readonly off: { readonly first: Day; readonly last: Day };
}

/** Null for a fruit without a state or a day, and for one cut young to thin the vine, which anybody can see is unripe. */
export function openedOf({ cut, pick, fate }: Fruit): Opened | null {
  const off = pick?.picked_on ?? cut?.cut_on ?? null;
  if (!cut?.state || !off?.first || fate === 'thinned' || cut.why === 'thinned') return null;
  return { state: cut.state, off: { first: off.first, last: off.last } };
}
