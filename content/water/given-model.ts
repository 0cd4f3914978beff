import type { Facts } from '../../src/book/chapter.ts';
import { isOneDay } from '../../src/dated.ts';
import { daysBetween } from '../../src/day.ts';
import { because, type Figure, happened } from '../../src/figure.ts';
import { measuresOf } from '../../src/garden/measures.ts';

/** What was given in the latest season of which a watering is written down, where nothing can be reckoned against it. */
export interface GivenModel {
  readonly season: string;
  /** Null value where a watering is told for a span of days. */
  readonly days: Figure;
  /** Most days from one watering to the next; null value as above, or after a single one. */
  readonly gap_days: Figure;
  /** For all spots together; at least so many where some were told in a word. */
  readonly cans: Figure;
}

/** Null for a garden without a watering. */
export function givenModel({ garden, ledger }: Facts): GivenModel | null {
  const latest = ledger.water?.seasons.findLast(({ season }) => season.events.waterings.length > 0);
  if (!latest) return null;
  const { season, givings } = latest;
  const { waterings } = season.events;
  const basis = ledger.bases.of(waterings.map(({ key }) => key));
  const exact = waterings.every(({ watered_on }) => isOneDay(watered_on));
  const days = [...new Set(givings.map(({ day }) => day))].sort();
  const gaps = days.slice(1).map((day, index) => daysBetween(days[index] ?? day, day) - 1);
  const counted = givings.filter(({ told }) => told === 'counted');
  const figure = (
    name: string,
    value: number | null,
    unit: Figure['unit'],
    reason: Figure['reason'] = value === null ? because('days-unknown') : null,
  ): Figure =>
    happened({
      id: `water.${season.slug}.given.${name}`,
      value,
      unit,
      n: waterings.length,
      method: 'water-given',
      basis,
      reason,
    });
  const { can_l } = measuresOf(garden.about);
  const litres = counted.reduce((sum, one) => sum + one.litres, 0);
  return {
    season: season.label,
    days: figure('days', exact ? days.length : null, 'days'),
    gap_days: figure('gap_days', exact && gaps.length > 0 ? Math.max(...gaps) : null, 'days'),
    cans:
      counted.length === 0
        ? figure('cans', null, 'cans', because('amount-untold'))
        : figure('cans', litres / can_l, 'cans', counted.length < givings.length ? because('at-least') : null),
  };
}

export const figuresOfGiven = ({ days, gap_days, cans }: GivenModel): Figure[] => [days, gap_days, cans];
