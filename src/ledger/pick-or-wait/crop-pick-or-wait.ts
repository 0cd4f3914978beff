import type { Day } from '../../day.ts';
import { because, type Figure, type Reason } from '../../figure.ts';
import { cropsOf } from '../../garden/crops-of.ts';
import type { Crop, Garden } from '../../garden/garden.ts';
import { thresholdsOf } from '../../garden/weather-settings.ts';
import { type Kept, keptOr } from '../../kept.ts';
import { LOSS_KEYS, type LossKey } from '../../records/losses.ts';
import { type CardChances, type CardRow, pickOrWaitCard, RIPE_OF_TEN } from '../../statistics/pick-or-wait/card.ts';
import type { UncertainChance } from '../../statistics/pick-or-wait/chance-draws.ts';
import type { Losses } from '../../statistics/pick-or-wait/loss.ts';
import { SPLIT_PRIOR } from '../../statistics/storms.ts';
import type { Bases } from '../bases.ts';
import type { CropRain } from '../rain-sugar/crop-rain.ts';
import type { CropRipeness } from '../ripeness/crop-ripeness.ts';
import { type CropStorms, cropStorms } from '../storm/crop-storms.ts';
import { stormsOf } from '../storm/storm.ts';
import type { SeasonWater } from '../water/season-water.ts';
import { asCounted } from './as-counted.ts';
import { type Dilution, dilutionOf } from './dilution.ts';
import { lossesOf } from './losses-of.ts';
import { FEWEST_LOOKS, type LostShare, lostShare } from './lost-share.ts';

/** Of ten. Where too few cuts tell what ticks mean, the most a card may claim is taken: decided by the makers. */
const USUAL_TICKED_ROW = 8;

/** Pick or wait before rain, for one crop. */
export interface CropPickOrWait {
  readonly crop: Crop;
  readonly losses: Losses;
  /** Losses the grower named; the house's words stand for the others. */
  readonly own_losses: readonly LossKey[];
  readonly storms: CropStorms;
  readonly dilution: Dilution;
  readonly dilution_of_ten: Figure;
  readonly lost: LostShare;
  readonly lost_of_ten: Figure;
  readonly rows: readonly CardRow[];
  /** The row a fruit with the ticks belongs to, of ten, and how many ticks those are; `own`: by the garden's cuts. */
  readonly ticked: { readonly ticks: number; readonly row: number; readonly own: boolean };
}

interface Ledgers {
  readonly rain: readonly CropRain[];
  readonly ripeness: readonly Pick<CropRipeness, 'crop' | 'ticks'>[];
  readonly waters: readonly SeasonWater[];
}

/** For every crop eaten ripe that has signs to tell it by, in the order of their ids. `today` is null before the first season. */
export function cropPicksOrWaits(
  garden: Garden,
  today: Day | null,
  { rain, ripeness, waters }: Ledgers,
  bases: Bases,
  kept: Kept,
): CropPickOrWait[] {
  const storms = today === null ? [] : stormsOf(garden, today);
  return cropsOf(garden.varieties)
    .filter(({ eaten, signs }) => eaten !== 'young' && signs !== null && signs.length > 0)
    .map((crop) => {
      const isOwn = (one: { readonly crop: Crop }): boolean => one.crop.id === crop.id;
      const told = {
        rain: rain.find(isOwn) ?? null,
        ripeness: ripeness.find(isOwn) ?? null,
        storms: cropStorms(crop, storms, waters, bases, kept),
      };
      return cropPickOrWait(garden, crop, told, bases, kept);
    });
}

interface Told {
  readonly rain: CropRain | null;
  readonly ripeness: Pick<CropRipeness, 'crop' | 'ticks'> | null;
  readonly storms: CropStorms;
}

function cropPickOrWait(
  { about, seasons }: Garden,
  crop: Crop,
  { rain, ripeness, storms }: Told,
  bases: Bases,
  kept: Kept,
): CropPickOrWait {
  const { soaking_day_mm } = thresholdsOf(about);
  const named = about.losses;
  const own_losses = LOSS_KEYS.filter((key) => named !== null && named[key] !== null);
  const losses = lossesOf(about);
  const dilution = dilutionOf(rain, soaking_day_mm);
  const lost = lostShare(crop, seasons, kept);
  const ticks = ripeness?.ticks ?? null;
  const chances: CardChances = {
    ripe_counted: ticks && ticks.ripe.value !== null ? ticks.ripe.n : null,
    split_if_rain: splitChanceOf(storms),
    dilution_if_rain: dilution.chance,
    lost: lost.chance,
  };
  return {
    crop,
    losses,
    own_losses,
    storms,
    dilution,
    dilution_of_ten: ofTen(crop, 'thinned', dilution.chance, {
      n: rain?.readings.length ?? 0,
      replicate: { kind: 'picking day', count: dilution.picking_days },
      basis: bases.of(rain?.readings.map(({ key }) => key) ?? []),
      source: dilution.from === 'slope' ? 'kenward-roger-1997' : 'house-rule',
      method: 'thinned-chance',
      reason: dilution.from === 'usual' ? because('usual-chance') : null,
    }),
    lost,
    lost_of_ten: ofTen(crop, 'lost', lost.chance, {
      n: lost.looks,
      replicate: { kind: 'mound', count: lost.mounds },
      basis: bases.of(lost.fruits.map(({ key }) => key)),
      source: lost.from === 'looks' ? 'skellam-1948' : 'house-rule',
      method: 'lost-chance',
      reason: lost.from === 'usual' ? because('usual-chance', { wanted: FEWEST_LOOKS.looks }) : null,
    }),
    rows: keptOr(kept, 'fits', JSON.stringify(['pick-or-wait', chances, losses]), () =>
      pickOrWaitCard(chances, losses),
    ),
    ticked: {
      ticks: ticks?.needed ?? 0,
      row: ticks?.ripe.value == null ? USUAL_TICKED_ROW : nearestRow(ticks.ripe.value),
      own: ticks?.ripe.value != null,
    },
  };
}

function splitChanceOf({ chance: { from, chance, interval } }: CropStorms): UncertainChance {
  if (from === 'storms') return asCounted(chance, interval);
  return { mean: chance, counted: SPLIT_PRIOR.hits + SPLIT_PRIOR.misses };
}

const nearestRow = (of_ten: number): number =>
  RIPE_OF_TEN.reduce<number>(
    (near, row) => (Math.abs(row - of_ten) < Math.abs(near - of_ten) ? row : near),
    RIPE_OF_TEN[0],
  );

interface Stands {
  readonly n: number;
  readonly replicate: Figure['replicate'];
  readonly basis: string;
  readonly source: string;
  readonly method: string;
  readonly reason: Reason | null;
}

const ofTen = ({ id }: Crop, name: string, { mean }: UncertainChance, stands: Stands): Figure => ({
  id: `ripe.${id}.rain.${name}_of_ten`,
  value: 10 * mean,
  unit: 'of_ten',
  interval: null,
  reach: 'next-summer-here',
  ...stands,
});
