import type { Day } from '../../day.ts';
import { type Figure, happened } from '../../figure.ts';
import { cropsOf } from '../../garden/crops-of.ts';
import type { Crop, Garden, Season } from '../../garden/garden.ts';
import type { Kept } from '../../kept.ts';
import type { CropSignRecord } from '../../records/trait/sign.ts';
import type { Bases } from '../bases.ts';
import { CUT_WAYS, type CutWay, cutWay } from './cut-way.ts';
import { tooFew } from './enough.ts';
import { type Evidence, evidenceOf } from './evidence.ts';
import { type JudgedFruit, judgedFruits } from './judged-fruit.ts';
import { daysReached, isAtPicking, type Shown, shownBy } from './sign-shown.ts';
import { RIPE_QUESTIONS, type SignWorth, signWorth } from './sign-worth.ts';
import { cardTicks, type Ticks } from './ticks.ts';
import { type CropTogether, cropTogether } from './together.ts';

/** What the cuts say of one sign, and what it is worth in each question. */
export interface WeighedEvidence extends Evidence {
  /** In the order of RIPE_QUESTIONS. */
  readonly worth: readonly SignWorth[];
}

export interface SignEvidence extends WeighedEvidence {
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
  readonly days: WeighedEvidence | null;
  /** In the crop file's order. */
  readonly signs: readonly SignEvidence[];
  /** What ticks on the pocket card have meant, parting left out: a fruit that is off the vine needs no card. */
  readonly ticks: Ticks;
  /** How many of the judged were cut in each way. */
  readonly ways: Readonly<Record<CutWay, number>>;
  readonly together: CropTogether;
}

/** Every crop of the garden's varieties that has signs, in the order of their ids. */
export const cropRipenesses = (
  { varieties, seasons }: Garden,
  today: Day | null,
  bases: Bases,
  kept: Kept,
): CropRipeness[] =>
  cropsOf(varieties)
    .filter(({ signs }) => signs !== null && signs.length > 0)
    .map((crop) => cropRipeness(crop, seasons, today, bases, kept));

function cropRipeness(crop: Crop, all: readonly Season[], today: Day | null, bases: Bases, kept: Kept): CropRipeness {
  const judged = judgedFruits(all, crop);
  const stem = `ripe.${crop.id}`;
  const reached = crop.ripe_days && daysReached(crop.ripe_days.set_days_low);
  const weighed = (shown: Shown, name: string): WeighedEvidence => ({
    ...evidenceOf(judged, shown, `${stem}.${name}`, bases),
    worth: RIPE_QUESTIONS.map((question) => signWorth(judged, shown, question, `${stem}.${name}`, bases, kept)),
  });
  const signs = (crop.signs ?? []).map((sign) => ({
    sign,
    at_picking: isAtPicking(sign),
    ...weighed(shownBy(sign), `sign.${sign.id}`),
  }));
  return {
    crop,
    judged,
    seasons: all.filter((season) => judged.some((one) => one.season === season)),
    base: baseOf(judged, stem, bases),
    days: reached && weighed(reached, 'days'),
    signs,
    ticks: cardTicks(crop, judged, `${stem}.ticks`, bases),
    ways: Object.fromEntries(
      CUT_WAYS.map((way) => [way, judged.filter(({ fruit }) => cutWay(fruit) === way).length]),
    ) as CropRipeness['ways'],
    together: cropTogether(crop, judged, stem, { garden: { seasons: all }, today, bases, kept }),
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
