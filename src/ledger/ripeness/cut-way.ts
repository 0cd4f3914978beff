import type { Fruit } from '../../garden/garden.ts';

/**
 * How a fruit came to be cut. Only cuts by lot show fruit as it hangs there; a free cut (split, damaged, left at the
 * season's end) was not chosen for its looks either, but came about by what spoilt it.
 */
export type CutWay = 'looked-ripe' | 'lot' | 'free' | 'other';

export const CUT_WAYS: readonly CutWay[] = ['looked-ripe', 'lot', 'free', 'other'];

/** By what the cut says of itself, else by the pick. */
export function cutWay({ cut, pick }: Pick<Fruit, 'cut' | 'pick'>): CutWay {
  switch (cut?.why ?? null) {
    case 'ripe':
      return 'looked-ripe';
    case 'lot':
      return 'lot';
    case 'damaged':
    case 'season-end':
      return 'free';
    case null:
      return wayOfPick(pick);
    default:
      return 'other';
  }
}

function wayOfPick(pick: Fruit['pick']): CutWay {
  if (pick?.reason === 'ripe') return 'looked-ripe';
  const isSpoilt = pick?.condition !== null && pick?.condition !== undefined && pick.condition !== 'whole';
  const isForced = pick?.reason === 'damage' || pick?.reason === 'frost' || pick?.reason === 'season-end';
  return isSpoilt || isForced ? 'free' : 'other';
}
