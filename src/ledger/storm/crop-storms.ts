import { addDays } from '../../day.ts';
import { because, type Figure } from '../../figure.ts';
import type { Crop } from '../../garden/garden.ts';
import { type Kept, keptOr } from '../../kept.ts';
import {
  FEWEST_STORMS,
  type MeasuredStorm,
  type SplitChance,
  type SplitDirection,
  splitChance,
  splitDirection,
} from '../../statistics/storms.ts';
import type { Bases } from '../bases.ts';
import { rootZoneOf } from '../water/crop-water.ts';
import type { SeasonWater } from '../water/season-water.ts';
import { type Hanging, hangingIn } from './hanging.ts';
import type { Storm } from './storm.ts';

const LEVEL = 0.9;

export interface CropStorm {
  readonly storm: Storm;
  readonly hanging: readonly Hanging[];
  readonly split: number;
  /** What was missing of the roots' water on the eve, of ten parts, on average over their spots; null without a balance. */
  readonly missing_of_ten: number | null;
}

/** How the fruits of a crop came through storms, over all seasons. */
export interface CropStorms {
  readonly crop: Crop;
  /** Those in which a fruit hung that could split, the first first. */
  readonly storms: readonly CropStorm[];
  readonly chance: SplitChance;
  readonly direction: SplitDirection;
  /** What the direction is told by: how short of water the roots were on the eve, or the days dry before. */
  readonly dryness: 'roots' | 'days';
  /** Of ten fruits in a storm yet to come; a stated prior under five storms, and its reason says so. */
  readonly split: Figure;
}

export function cropStorms(
  crop: Crop,
  storms: readonly Storm[],
  waters: readonly SeasonWater[],
  bases: Bases,
  kept: Kept,
): CropStorms {
  const own = storms.flatMap((storm) => {
    const hanging = hangingIn(storm, storms, crop);
    if (hanging.length === 0) return [];
    const split = hanging.filter((one) => one.split).length;
    return [{ storm, hanging, split, missing_of_ten: missingOnEve(storm, hanging, waters) }];
  });
  const counts = own.map(({ hanging, split }) => ({ exposed: hanging.length, split }));
  const chance = keptOr(kept, 'fits', JSON.stringify(['split-chance', LEVEL, counts]), () =>
    splitChance(counts, LEVEL),
  );
  const told = own.filter(({ missing_of_ten }) => missing_of_ten !== null).length;
  const dryness = told >= FEWEST_STORMS ? 'roots' : 'days';
  const measured: MeasuredStorm[] = own.map(({ storm, hanging, split, missing_of_ten }) => ({
    exposed: hanging.length,
    split,
    measure: dryness === 'roots' ? missing_of_ten : storm.dry_days,
  }));
  const direction = keptOr(kept, 'fits', JSON.stringify(['split-direction', measured]), () => splitDirection(measured));
  const keys = own.flatMap(({ hanging }) => hanging.map(({ fruit }) => fruit.key));
  return { crop, storms: own, chance, direction, dryness, split: splitFigure(crop, chance, bases.of(keys)) };
}

function splitFigure({ id }: Crop, { from, chance, interval, storms, exposed }: SplitChance, basis: string): Figure {
  return {
    id: `ripe.${id}.storm.split_of_ten`,
    value: 10 * chance,
    unit: 'of_ten',
    interval: { ...interval, low: 10 * interval.low, high: 10 * interval.high },
    n: exposed,
    replicate: { kind: 'storm', count: storms },
    reach: 'next-summer-here',
    method: 'split-chance',
    source: from === 'storms' ? 'skellam-1948' : 'house-rule',
    basis,
    reason: from === 'prior' ? because('few-storms', { count: storms, wanted: FEWEST_STORMS }) : null,
  };
}

/** Of the roots' water, what was gone at the end of the day before, over the spots of the fruits that hung. */
function missingOnEve({ season, first }: Storm, hanging: readonly Hanging[], waters: readonly SeasonWater[]) {
  const eve = addDays(first, -1);
  const spots = new Set(hanging.map(({ planting }) => planting.spot.id));
  const shares = (waters.find((one) => one.season === season)?.spots ?? []).flatMap(({ water }) => {
    const zone = rootZoneOf(water.water);
    const step = water.days.find(({ day }) => day === eve)?.step ?? null;
    return zone && step && spots.has(water.spot.id) ? [(10 * step.end.root_mm) / zone.taw_mm] : [];
  });
  return shares.length === 0 ? null : shares.reduce((sum, one) => sum + one, 0) / shares.length;
}
