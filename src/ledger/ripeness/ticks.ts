import { because, type Figure, happened } from '../../figure.ts';
import type { Bases } from '../bases.ts';
import { tooFew } from './evidence.ts';
import type { JudgedFruit } from './judged-fruit.ts';
import type { Shown } from './sign-shown.ts';

/** Ticks from which the card says pick, where it has as many rows. Fixed beforehand, not chosen by the records. */
const TICKS = 3;
/** No claim is higher than so many of ten before it is judged on fruits it has not seen. */
const CAP = 8;
/** Fruits with the ticks, below which nothing is claimed. */
const FEWEST = 6;

/** What so many ticks have meant here. */
export interface Ticks {
  readonly needed: number;
  /** Of ten fruits with the ticks or more, how many were ripe; never above the cap. */
  readonly ripe: Figure;
  /** The records gave the cap or more. */
  readonly is_capped: boolean;
}

/** Over the fruits of which at least the needed signs were looked for. `shown` are the rows of the card. */
export function ticksOf(fruits: readonly JudgedFruit[], shown: readonly Shown[], stem: string, bases: Bases): Ticks {
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
  return {
    needed,
    is_capped: reason === null && share >= CAP,
    ripe: happened({
      id: `${stem}.ripe_of_ten`,
      value: reason ? null : Math.min(share, CAP),
      unit: 'of_ten',
      n: ticked.length,
      method: 'sign-ticks',
      basis: bases.of(looked.map(({ fruit }) => fruit.fruit.key)),
      reason,
    }),
  };
}
