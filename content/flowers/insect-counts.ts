import type { Facts } from '../../src/book/chapter.ts';
import type { Dated } from '../../src/dated.ts';
import { because, type Figure, happened, type Reason } from '../../src/figure.ts';

/** So many insects in ten minutes, or fewer, ask for the hand. A judgement of the makers, no source. */
export const SCARCE = 2;

/** What ten minutes at the open flowers told, in the last season somebody counted. */
export interface InsectCounts {
  readonly label: string;
  readonly slug: string;
  /** By day. */
  readonly each: readonly { readonly seen_on: Dated; readonly insects: number }[];
  readonly least: number;
  readonly most: number;
  /** One of them was reckoned, not counted. */
  readonly about: boolean;
  readonly counts: Figure;
  /** Of them with so few that the hand is asked for. */
  readonly scarce: Figure;
}

/** Null where nobody ever counted. */
export function insectCounts({ garden, ledger }: Facts): InsectCounts | null {
  const told = garden.seasons.map(({ slug, label, events }) => ({
    slug,
    label,
    each: events.flowering.flatMap(({ what, insects, seen_on, key, entered }) =>
      what === 'insects-counted' && insects !== null
        ? [{ seen_on, insects, key, about: entered.insects === 'about' }]
        : [],
    ),
  }));
  const last = told.findLast(({ each }) => each.length > 0);
  if (!last) return null;
  const { slug, label, each } = last;
  const numbers = each.map(({ insects }) => insects);
  const about = each.some((one) => one.about);
  const figure = (id: string, value: number, reason: Reason | null): Figure =>
    happened({
      id: `flowers.${slug}.${id}`,
      value,
      unit: 'days',
      n: each.length,
      method: 'insects-in-ten-minutes',
      basis: ledger.bases.of(each.map(({ key }) => key)),
      reason,
    });
  return {
    slug,
    label,
    each: each.map(({ seen_on, insects }) => ({ seen_on, insects })),
    least: Math.min(...numbers),
    most: Math.max(...numbers),
    about,
    counts: figure('insect_counts', each.length, null),
    scarce: figure(
      'insect_counts_scarce',
      numbers.filter((number) => number <= SCARCE).length,
      about ? because('about') : null,
    ),
  };
}
