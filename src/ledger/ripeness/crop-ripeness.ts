import { type Figure, happened } from '../../figure.ts';
import { cropsOf } from '../../garden/crops-of.ts';
import type { Crop, Garden, Season } from '../../garden/garden.ts';
import type { CropSignRecord } from '../../records/trait/sign.ts';
import type { Bases } from '../bases.ts';
import { type Evidence, evidenceOf, tooFew } from './evidence.ts';
import { type JudgedFruit, judgedFruits } from './judged-fruit.ts';
import { daysReached, shownBy } from './sign-shown.ts';
import { type Ticks, ticksOf } from './ticks.ts';

export interface SignEvidence extends Evidence {
  readonly sign: CropSignRecord;
  /** Told at picking, not on the vine. */
  readonly at_picking: boolean;
}

/** What this garden's cuts say of the outside signs of a crop, over all seasons. */
export interface CropRipeness {
  readonly crop: Crop;
  readonly judged: readonly JudgedFruit[];
  /** Seasons with a judged fruit, the first first. */
  readonly seasons: readonly Season[];
  /** Of ten fruits cut, how many were ripe, whatever they showed. */
  readonly base: Figure;
  /** Days since set at the fewest the sources give; null where the crop's file has none. */
  readonly days: Evidence | null;
  /** In the crop file's order. */
  readonly signs: readonly SignEvidence[];
  /** What ticks on the pocket card have meant, parting left out: a fruit that is off the vine needs no card. */
  readonly ticks: Ticks;
}

/** Every crop of the garden's varieties that has signs, in the order of their ids. */
export const cropRipenesses = ({ varieties, seasons }: Garden, bases: Bases): CropRipeness[] =>
  cropsOf(varieties)
    .filter(({ signs }) => signs !== null && signs.length > 0)
    .map((crop) => cropRipeness(crop, seasons, bases));

function cropRipeness(crop: Crop, all: readonly Season[], bases: Bases): CropRipeness {
  const judged = judgedFruits(all, crop);
  const stem = `ripe.${crop.id}`;
  const reached = crop.ripe_days && daysReached(crop.ripe_days.set_days_low);
  const signs = (crop.signs ?? []).map((sign) => ({
    sign,
    at_picking: sign.shown !== null && sign.shown.parted !== null,
    ...evidenceOf(judged, shownBy(sign), `${stem}.sign.${sign.id}`, bases),
  }));
  const rows = signs.filter(({ sign, at_picking }) => sign.on_card && !at_picking).map(({ sign }) => shownBy(sign));
  return {
    crop,
    judged,
    seasons: all.filter((season) => judged.some((one) => one.season === season)),
    base: baseOf(judged, stem, bases),
    days: reached && evidenceOf(judged, reached, `${stem}.days`, bases),
    signs,
    ticks: ticksOf(judged, reached ? [reached, ...rows] : rows, `${stem}.ticks`, bases),
  };
}

function baseOf(judged: readonly JudgedFruit[], stem: string, bases: Bases): Figure {
  const ripe = judged.filter(({ is_ripe }) => is_ripe).length;
  const reason = tooFew(judged.length, judged.length - ripe);
  return happened({
    id: `${stem}.base.ripe_of_ten`,
    value: reason ? null : (10 * ripe) / judged.length,
    unit: 'of_ten',
    n: judged.length,
    method: 'sign-tally',
    basis: bases.of(judged.map(({ fruit }) => fruit.key)),
    reason,
  });
}
