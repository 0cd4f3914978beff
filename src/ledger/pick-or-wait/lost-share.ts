import { daysBetween } from '../../day.ts';
import type { Crop, Fruit, Planting, Season } from '../../garden/garden.ts';
import { type Kept, keptOr } from '../../kept.ts';
import { groupedShare } from '../../statistics/beta-binomial.ts';
import type { UncertainChance } from '../../statistics/pick-or-wait/chance-draws.ts';
import { setDayOf } from '../maturity/set-day.ts';
import { asCounted } from './as-counted.ts';

/** How often the card has one look again; a fruit past ripe is left so long at a time. */
export const LOOK_DAYS = 2;
/** Fewest mounds and looks from which a share is told. Judgements of the makers, no source. */
export const FEWEST_LOOKS = { mounds: 3, looks: 20 } as const;
/** Till then: a judgement of the makers, no source. */
export const USUAL_LOST = { mean: 0.1, counted: 5 } as const;
const LEVEL = 0.9;

export interface LostShare {
  /** Chance that a fruit past ripe is gone, or over, at the next look. */
  readonly chance: UncertainChance;
  readonly from: 'looks' | 'usual';
  readonly looks: number;
  readonly lost: number;
  readonly mounds: number;
  readonly fruits: readonly Fruit[];
}

interface Left {
  readonly mound: string;
  readonly looks: number;
  readonly lost: boolean;
  readonly fruit: Fruit;
}

/**
 * Fruits of a crop that were left on the vine past the fewest days to ripe, in looks two days apart, and how many of those
 * looks found them rotten, gnawed, stolen or over. Looks of one mound are alike, so mounds repeat.
 */
export function lostShare(crop: Crop, seasons: readonly Season[], kept: Kept): LostShare {
  const left = seasons.flatMap((season) =>
    season.plantings
      .filter(({ variety }) => variety?.crop.id === crop.id)
      .flatMap((planting) => planting.fruits.flatMap((fruit) => leftOf(season, planting, fruit, crop))),
  );
  const groups = [...new Set(left.map(({ mound }) => mound))].sort().map((mound) => {
    const own = left.filter((one) => one.mound === mound);
    return { hits: own.filter(({ lost }) => lost).length, units: own.reduce((sum, { looks }) => sum + looks, 0) };
  });
  const looks = groups.reduce((sum, { units }) => sum + units, 0);
  const counts = {
    looks,
    lost: left.filter(({ lost }) => lost).length,
    mounds: groups.length,
    fruits: left.map(({ fruit }) => fruit),
  };
  if (groups.length < FEWEST_LOOKS.mounds || looks < FEWEST_LOOKS.looks)
    return { chance: USUAL_LOST, from: 'usual', ...counts };
  const { share, interval } = keptOr(kept, 'fits', JSON.stringify(['lost-share', LEVEL, groups]), () =>
    groupedShare(groups, LEVEL),
  );
  return { chance: asCounted(share, interval), from: 'looks', ...counts };
}

function leftOf(season: Season, { spot }: Planting, fruit: Fruit, { ripe_days }: Crop): Left[] {
  const [set, off] = [setDayOf(fruit), fruit.pick?.picked_on ?? fruit.end?.ended_on ?? null];
  if (!set || !off?.first || !ripe_days || fruit.fate === 'thinned' || fruit.fate === 'aborted') return [];
  const past = daysBetween(set.first, off.last) - ripe_days.set_days_low;
  if (past < 0) return [];
  const looks = Math.max(1, Math.ceil(past / LOOK_DAYS));
  return [{ mound: `${season.slug} ${spot.id}`, looks, lost: isLost(fruit), fruit }];
}

const isLost = ({ end, cut, pick }: Fruit): boolean =>
  ['rot', 'animal', 'theft'].includes(end?.lost_to ?? '') ||
  cut?.state === 'over' ||
  ['rotten', 'gnawed'].includes(pick?.condition ?? '');
