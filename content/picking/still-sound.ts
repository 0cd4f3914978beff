import { type SeedRow, seedRow } from '../../src/book/seed-row.ts';
import { because, type Figure, happened, type Reason } from '../../src/figure.ts';
import type { Bases } from '../../src/ledger/bases.ts';
import { kaplanMeier } from '../../src/statistics/survival/kaplan-meier.ts';
import type { KeptFruit } from './kept-fruit.ts';

/** Days after picking at which the fruit laid by is counted. */
const AFTER_DAYS = [7, 14, 21] as const;
/** Fruits with both days known, below which no share of ten is told. */
const FEWEST_FOR_TENTHS = 10;

/** How many were still sound some days after picking. */
export interface StillSound {
  readonly after_days: number;
  /** Fruits known to be sound then. */
  readonly sound: Figure;
  /** Fruits still under watch then: those, and the ones that had gone off. Sound ones eaten sooner are in neither. */
  readonly watched: number;
  readonly of_ten: Figure;
  readonly seeds: SeedRow | null;
}

type Watched = KeptFruit & { readonly days: number };

/** Of some fruits laid by; the eaten and the given away are cut off, the soft and the rotten seen to end. */
export function stillSound(fruits: readonly KeptFruit[], stem: string, bases: Bases): StillSound[] {
  const known = fruits.filter((one): one is Watched => one.days !== null);
  const rows = kaplanMeier(known.map(({ days, spoilt }) => ({ low: days, high: spoilt ? days : null })));
  const basis = bases.of(known.map(({ key }) => key));
  return AFTER_DAYS.map((after_days) => {
    const gone = known.filter(({ spoilt, days }) => spoilt && days <= after_days).length;
    const sound = known.filter(({ spoilt, days }) => (spoilt ? days > after_days : days >= after_days)).length;
    const watched = sound + gone;
    const remaining = rows.findLast(({ time }) => time <= after_days)?.remaining ?? 1;
    // When the last sound one was eaten sooner, nobody can say how it would have stood now.
    const unseen = watched === 0 || (sound === 0 && remaining > 0);
    const lacking = unseen ? because('none-kept-so-long') : null;
    const reason = lacking ?? tooFew(known.length);
    const id = `${stem}.sound_after_${after_days}`;
    const of_ten: Figure = {
      ...happened({
        id: `${id}.of_ten`,
        value: reason ? null : 10 * remaining,
        unit: 'of_ten',
        n: known.length,
        method: 'keeping-time',
        basis,
        reason,
      }),
      source: 'kaplan-meier-1958',
    };
    return {
      after_days,
      sound: happened({
        id,
        value: lacking ? null : sound,
        unit: 'fruits',
        n: watched,
        method: 'kept-sound',
        basis,
        reason: lacking,
      }),
      watched,
      of_ten,
      seeds: of_ten.value === null ? null : seedRow(of_ten.value),
    };
  });
}

const tooFew = (known: number): Reason | null =>
  known < FEWEST_FOR_TENTHS ? because('few-kept', { fruits: known, need: FEWEST_FOR_TENTHS }) : null;
