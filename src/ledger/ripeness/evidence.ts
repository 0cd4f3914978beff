import { type Figure, happened } from '../../figure.ts';
import type { Bases } from '../bases.ts';
import { tooFew } from './enough.ts';
import type { JudgedFruit } from './judged-fruit.ts';
import type { Shown } from './sign-shown.ts';

/** What the cuts say of one sign. */
export interface Evidence {
  /** Of ten ripe fruits, how many showed it; null with a reason where the cuts are too few. */
  readonly ripe: Figure;
  /** Of ten unripe fruits. */
  readonly unripe: Figure;
}

/** Counts one sign over the judged fruits whose keepers looked for it. `stem` begins the figures' ids. */
export function evidenceOf(fruits: readonly JudgedFruit[], shown: Shown, stem: string, bases: Bases): Evidence {
  const looked = fruits.flatMap((fruit) => {
    const shows = shown(fruit);
    return shows === null ? [] : [{ fruit, shows }];
  });
  const basis = bases.of(looked.map(({ fruit }) => fruit.fruit.key));
  const unripe = looked.filter(({ fruit }) => !fruit.is_ripe).length;
  const reason = tooFew(looked.length, unripe);
  const ofTen = (name: string, is_ripe: boolean): Figure => {
    const group = looked.filter(({ fruit }) => fruit.is_ripe === is_ripe);
    const value = reason ? null : (10 * group.filter(({ shows }) => shows).length) / group.length;
    return happened({
      id: `${stem}.${name}`,
      value,
      unit: 'of_ten',
      n: group.length,
      method: 'sign-tally',
      basis,
      reason,
    });
  };
  return { ripe: ofTen('ripe_of_ten', true), unripe: ofTen('unripe_of_ten', false) };
}
