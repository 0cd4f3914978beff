import type { Facts } from '../../src/book/chapter.ts';
import { because, type Figure, happened } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { firstPickOf } from '../../src/ledger/first-pick.ts';
import type { SeasonYield } from '../../src/ledger/season-yield.ts';

/** What is surely known of the last season anything was planted in. */
export interface LastSeason {
  readonly label: string;
  readonly over: boolean;
  readonly fruits: Figure;
  readonly mass: Figure;
  /** From planting out to its first ripe fruit. */
  readonly first_days: Figure;
  /** The most sugar at the centre of a ripe fruit. */
  readonly sugar: Figure;
  /** By crop: cuts of all seasons that could be held against the outside, and whether they are enough to tell. */
  readonly signs: readonly { readonly many: string; readonly cuts: number; readonly told: boolean }[];
}

export const lastYield = ({ ledger }: Facts): SeasonYield | null =>
  ledger.yields.findLast(({ season }) => season.plantings.length > 0) ?? null;

/** Null before the first planting. */
export function lastSeason(facts: Facts): LastSeason | null {
  const last = lastYield(facts);
  if (!last) return null;
  const { ledger, garden } = facts;
  const { season } = last;
  const first = firstPickOf(season.plantings);
  const days = first?.days_from_planting ?? null;
  const [sweetest] = [...ledger.varieties.values()]
    .flat()
    .filter(({ slug, most_sugar }) => slug === season.slug && most_sugar.value !== null)
    .map(({ most_sugar }) => most_sugar)
    .sort((a, b) => (b.value ?? 0) - (a.value ?? 0));
  return {
    label: season.label,
    over: last.over,
    fruits: last.garden.measures.fruits.total,
    mass: last.garden.measures.kg.total,
    first_days: happened({
      id: `next.${season.slug}.first_pick_days`,
      value: days,
      unit: 'days',
      n: days === null ? 0 : 1,
      method: 'single-record',
      basis: ledger.bases.of(first?.keys ?? []),
      reason:
        days === null
          ? because(first ? 'planting-day-unknown' : 'no-ripe-pick')
          : first?.about
            ? because('about')
            : null,
    }),
    sugar: happened({
      id: `next.${season.slug}.most_brix`,
      value: sweetest?.value ?? null,
      unit: 'brix',
      n: sweetest?.n ?? 0,
      method: 'single-record',
      basis: sweetest?.basis ?? ledger.bases.of([]),
      reason: sweetest ? null : because('none-metered'),
    }),
    signs: ledger.ripeness
      .filter(({ judged }) => judged.length > 0)
      .map(({ crop, judged, base }) => ({
        many: cropNames(crop, garden.about.locale).many,
        cuts: judged.length,
        told: base.value !== null,
      })),
  };
}
