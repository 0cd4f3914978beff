import type { Chance } from '../chance.ts';
import type { Ending } from './ending.ts';
import type { Misfortune } from './misfortune.ts';
import type { Walk } from './walk.ts';

/** Shares of damaged fruits that are still taken in. */
const TAKEN_IN = { split: 0.7, rotten: 0.5, animal: 0.25 };

/** What the keeper finds and does on the first walk after a misfortune. */
export function found({ what }: Misfortune, { day, observer }: Walk, since: number | null, chance: Chance): Ending {
  const by = observer.code;
  const lot = chance();
  const lost = (lost_to: 'animal' | 'theft' | 'rot' | 'split'): Ending => ({ fate: 'lost', day, since, lost_to, by });
  const takenIn = (condition: 'split' | 'rotten' | 'gnawed'): Ending => ({
    fate: 'picked',
    day,
    reason: 'damage',
    condition,
    by_lot: false,
    by,
  });
  if (what === 'aborted') return { fate: 'aborted', day, since, lost_to: null, by };
  if (what === 'theft') return lost('theft');
  if (what === 'split') return lot < TAKEN_IN.split ? takenIn('split') : lost('split');
  if (what === 'rotten') return lot < TAKEN_IN.rotten ? takenIn('rotten') : lost('rot');
  return lot < TAKEN_IN.animal ? takenIn('gnawed') : lost('animal');
}

/** Shares of the fruits still on that are picked, or lost, on the last day. */
const AT_FROST = { picked: 0.35, lost: 0.25 };
const AT_THE_END = { picked: 0.5 };

/** What becomes of a fruit still on when the season closes. */
export function closedOn({ day, observer, closing }: Walk, since: number | null, chance: Chance): Ending {
  const by = observer.code;
  const lot = chance();
  const picked = (reason: 'frost' | 'season-end'): Ending => ({
    fate: 'picked',
    day,
    reason,
    condition: 'whole',
    by_lot: false,
    by,
  });
  const left: Ending = { fate: 'left', day, since, lost_to: null, by };
  if (closing !== 'frost') return lot < AT_THE_END.picked ? picked('season-end') : left;
  if (lot < AT_FROST.picked) return picked('frost');
  return lot < AT_FROST.picked + AT_FROST.lost ? { ...left, fate: 'lost', lost_to: 'frost' } : left;
}
