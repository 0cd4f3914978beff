import { because, type Figure, happened, type Reason } from '../../src/figure.ts';
import type { EventOf } from '../../src/garden/event.ts';
import type { Garden } from '../../src/garden/garden.ts';
import type { Bases } from '../../src/ledger/bases.ts';

type Share = EventOf<'shares'>;

export interface ShareLine {
  /** Null: all of them together. */
  readonly to: Share['to'] | null;
  readonly fruits: Figure;
  readonly kg: Figure;
}

export interface SeasonShares {
  readonly label: string;
  readonly slug: string;
  /** By the fruits, most first; the sum stands last where there are several. */
  readonly lines: readonly ShareLine[];
  /** Somebody weighed. */
  readonly weighed: boolean;
}

/** Where the fruit of the last season with such entries went; null where nobody wrote it down. */
export function lastShares({ seasons }: Garden, bases: Bases): SeasonShares | null {
  const season = seasons.findLast(({ events }) => events.shares.length > 0);
  if (!season) return null;
  const { shares } = season.events;
  const lineOf = (to: ShareLine['to'], entries: readonly Share[]): ShareLine => {
    const stem = `picking.${season.slug}.shared.${to ?? 'all'}`;
    const sum = (measure: 'fruits' | 'mass_kg', unit: 'fruits' | 'kg', lacking: Reason): Figure =>
      sumOf(entries, measure, { id: `${stem}.${unit}`, unit, lacking, basis: bases.of(entries.map(({ key }) => key)) });
    return {
      to,
      fruits: sum('fruits', 'fruits', because('shares-uncounted')),
      kg: sum('mass_kg', 'kg', because('none-weighed')),
    };
  };
  const lines = [...new Set(shares.map(({ to }) => to))]
    .map((to) =>
      lineOf(
        to,
        shares.filter((one) => one.to === to),
      ),
    )
    .sort((a, b) => (b.fruits.value ?? 0) - (a.fruits.value ?? 0) || ((a.to ?? '') < (b.to ?? '') ? -1 : 1));
  return {
    label: season.label,
    slug: season.slug,
    lines: lines.length > 1 ? [...lines, lineOf(null, shares)] : lines,
    weighed: shares.some(({ mass_kg }) => mass_kg !== null),
  };
}

/** The sum over the entries that tell, with what has to stand beside it; null where none tells. */
function sumOf(
  entries: readonly Share[],
  measure: 'fruits' | 'mass_kg',
  { lacking, ...told }: Pick<Figure, 'id' | 'unit' | 'basis'> & { readonly lacking: Reason },
): Figure {
  const values = entries.flatMap((entry) => entry[measure] ?? []);
  const missing = entries.length - values.length;
  const about = entries.some(({ entered }) => entered[measure] === 'about');
  const reason =
    values.length === 0
      ? lacking
      : missing > 0
        ? because('at-least', { told: values.length, of: entries.length, missing })
        : about
          ? because('about')
          : null;
  return happened({
    ...told,
    value: values.length === 0 ? null : values.reduce((sum, one) => sum + one, 0),
    n: values.length,
    method: 'plain-count',
    reason,
  });
}
