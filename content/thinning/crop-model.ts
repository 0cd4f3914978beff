import type { Facts } from '../../src/book/chapter.ts';
import { shortCites } from '../../src/book/cites.ts';
import { addDays, type Day } from '../../src/day.ts';
import { type Figure, reckoned } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { CropYear } from '../../src/ledger/year/crop-year.ts';

/** What a crop's file tells of how many fruits a plant is left, and of a set that comes too late. */
export interface CropModel {
  readonly id: string;
  readonly names: { readonly one: string; readonly many: string };
  /** Eaten young: it is picked small all the time, and nothing is thinned. */
  readonly young: boolean;
  readonly keep: { readonly low: number; readonly high: number } | null;
  readonly last_set: LastSet | null;
  /** Of the number to leave; empty where none is told. */
  readonly cites: readonly string[];
}

/** The last set that may still ripen. */
export interface LastSet {
  /** From set to ripe, at the most: so long before the end of the season. */
  readonly days: Figure;
  /** Null before the first season. */
  readonly on: Day | null;
}

export const cropModels = (facts: Facts): CropModel[] =>
  facts.ledger.years.map((year) => {
    const { flowering, eaten, id } = year.crop;
    const [low, high] = [flowering?.keep_fruits_low ?? null, flowering?.keep_fruits_high ?? null];
    const keep = low === null || high === null ? null : { low, high };
    return {
      id,
      names: cropNames(year.crop, facts.garden.about.locale),
      young: eaten === 'young',
      keep,
      last_set: lastSet(facts, year),
      cites: keep ? shortCites(facts.reference, flowering?.sources ?? []) : [],
    };
  });

function lastSet({ ledger }: Facts, { crop, plan }: CropYear): LastSet | null {
  const { ripe_days } = crop;
  if (!ripe_days) return null;
  return {
    days: reckoned({
      id: `thinning.${crop.id}.set_before_end`,
      value: ripe_days.set_days_high,
      unit: 'days',
      method: 'last-useful-set',
      source: ripe_days.sources[0] ?? null,
      basis: ledger.bases.of([]),
    }),
    on: plan && addDays(plan.ends_on, -ripe_days.set_days_high),
  };
}
