import type { Facts } from '../../src/book/chapter.ts';
import { because, type Figure, happened } from '../../src/figure.ts';
import type { Lot } from '../../src/garden/garden.ts';

/** How far the next of its kind stood, as the lot's class has it. */
export type Apart =
  | { readonly by_hand: true }
  | { readonly by_hand: false; readonly low_m: number | null; readonly high_m: number | null };

/** Seed of one's own in a jar. */
export interface SavedLot {
  readonly id: string;
  readonly variety: string;
  /** Of harvest; null where it is not written down. */
  readonly year: string | null;
  readonly parents: number | null;
  readonly apart: Apart | null;
  readonly treated: boolean | null;
  /** All its tests together. */
  readonly came_up: Figure;
  readonly sown: number;
  /** Last year of its life as sources give it; null where year or life is not known. */
  readonly until: { readonly low: string; readonly high: string } | null;
}

const APART: Readonly<Record<NonNullable<Lot['isolation']>, Apart | null>> = {
  'under-150-m': { by_hand: false, low_m: null, high_m: 150 },
  '150-to-800-m': { by_hand: false, low_m: 150, high_m: 800 },
  'over-800-m': { by_hand: false, low_m: 800, high_m: null },
  'closed-by-hand': { by_hand: true },
  unknown: null,
};

/** The classes that say something, to circle on a packet. */
export const CLASSES: readonly Apart[] = Object.values(APART).filter((one) => one !== null);

/** Every lot somebody saved here, by id. */
export const savedLots = (facts: Facts): SavedLot[] =>
  facts.garden.lots.filter(({ from }) => from === 'saved').map((lot) => savedLot(facts, lot));

function savedLot({ garden, ledger }: Facts, lot: Lot): SavedLot {
  const variety = garden.varieties.find(({ id }) => id === lot.variety);
  const life = variety?.crop.seed ?? null;
  const tests = lot.tests ?? [];
  const sown = tests.reduce((sum, { seeds }) => sum + seeds, 0);
  const { year } = lot;
  const { life_years_low: low = null, life_years_high: high = null } = life ?? {};
  return {
    id: lot.id,
    variety: variety?.name ?? lot.variety,
    year: year === null ? null : `${year}`,
    parents: lot.parents,
    apart: lot.isolation && APART[lot.isolation],
    treated: lot.treated,
    came_up: happened({
      id: `seed.lot.${lot.id}.came_up`,
      value: sown > 0 ? tests.reduce((sum, { sprouted }) => sum + sprouted, 0) : null,
      unit: 'seeds',
      n: sown,
      method: 'plain-count',
      basis: ledger.bases.of([lot.key]),
      reason: sown > 0 ? null : because('untested'),
    }),
    sown,
    until: year === null || low === null || high === null ? null : { low: `${year + low}`, high: `${year + high}` },
  };
}
