import { because, type Figure, happened } from '../../figure.ts';
import type { Crop } from '../../garden/garden.ts';
import { type ClaimCap, claimCap } from '../../statistics/signs/claim-cap.ts';
import type { Bases } from '../bases.ts';
import { tooFew } from './enough.ts';
import type { JudgedFruit } from './judged-fruit.ts';
import { daysReached, isAtPicking, type Shown, shownBy } from './sign-shown.ts';

/** Ticks from which the card says pick, where it has as many rows. Fixed beforehand, not chosen by the records. */
const TICKS = 3;
/** Fruits with the ticks, below which nothing is claimed. */
const FEWEST = 6;

/** What so many ticks have meant here. */
export interface Ticks {
  readonly needed: number;
  /** Of ten fruits with the ticks or more, how many were ripe; never above the cap. */
  readonly ripe: Figure;
  /** The most the rule may claim of ten: what it would have said without a season, held against that season. */
  readonly cap: ClaimCap['cap'];
  /** The records gave the cap or more. */
  readonly is_capped: boolean;
}

interface Ticked {
  readonly fruit: JudgedFruit;
  readonly ticks: number;
}

/** Over the fruits of which at least the needed signs were looked for. `shown` are the rows of the card. */
function ticksOf(fruits: readonly JudgedFruit[], shown: readonly Shown[], stem: string, bases: Bases): Ticks {
  const needed = Math.min(TICKS, Math.max(shown.length, 1));
  const looked = fruits.flatMap((fruit) => {
    const told = shown.map((one) => one(fruit)).filter((one) => one !== null);
    return told.length >= needed ? [{ fruit, ticks: told.filter(Boolean).length }] : [];
  });
  const ticked = looked.filter(({ ticks }) => ticks >= needed);
  const ripe = ticked.filter(({ fruit }) => fruit.is_ripe).length;
  const reason =
    tooFew(looked.length, looked.filter(({ fruit }) => !fruit.is_ripe).length) ??
    (ticked.length < FEWEST ? because('few-ticked', { fruits: ticked.length, need: FEWEST }) : null);
  const share = (10 * ripe) / ticked.length;
  const { cap } = claimCap(claimsUnseen(ticked));
  return {
    needed,
    cap,
    is_capped: reason === null && share >= cap,
    ripe: happened({
      id: `${stem}.ripe_of_ten`,
      value: reason ? null : Math.min(share, cap),
      unit: 'of_ten',
      n: ticked.length,
      method: 'sign-ticks',
      basis: bases.of(looked.map(({ fruit }) => fruit.fruit.key)),
      reason,
    }),
  };
}

/** By the rows of the crop's card: days since set where its file has them, and the signs on it but parting. */
export function cardTicks(crop: Crop, fruits: readonly JudgedFruit[], stem: string, bases: Bases): Ticks {
  const signs = (crop.signs ?? []).filter((sign) => sign.on_card && !isAtPicking(sign));
  const days = crop.ripe_days ? [daysReached(crop.ripe_days.set_days_low)] : [];
  return ticksOf(fruits, [...days, ...signs.map(shownBy)], stem, bases);
}

/** Of every fruit with the ticks, the share that was ripe of those of the other seasons, where they suffice for a claim. */
const claimsUnseen = (ticked: readonly Ticked[]) =>
  ticked.flatMap(({ fruit }) => {
    const others = ticked.filter((one) => one.fruit.season !== fruit.season);
    const ripe = others.filter((one) => one.fruit.is_ripe).length;
    return others.length < FEWEST
      ? []
      : [{ season: fruit.season.slug, claimed: ripe / others.length, held: fruit.is_ripe }];
  });
