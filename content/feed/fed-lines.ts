import type { Facts } from '../../src/book/chapter.ts';
import { because, type Figure, happened } from '../../src/figure.ts';
import type { Season } from '../../src/garden/garden.ts';
import type { Span } from '../../src/ledger/feeding/span.ts';
import { type SpotFed, spotsFed } from '../../src/ledger/feeding/spots-fed.ts';

/** Spots that got the same, in print. */
export interface FedLine {
  readonly spots: readonly string[];
  /** g a m²; null with the reason beside it. */
  readonly n_g_per_m2: Span | null;
  readonly first_year_g_per_m2: Span | null;
  /** Some of what it got has no number, or none for the first year. */
  readonly at_least: { readonly all: boolean; readonly first_year: boolean };
  readonly lacks: SpotFed['lacks'];
}

export interface Fed {
  readonly season: string;
  readonly spots: readonly SpotFed[];
  readonly lines: readonly FedLine[];
  /** Some line has a number. */
  readonly told: boolean;
  readonly figures: readonly Figure[];
}

/** What each spot got in a season. */
export function fedOf({ garden, ledger, reference, format }: Facts, season: Season): Fed {
  const spots = spotsFed(garden, season, reference.materials);
  const printed = (span: Span | null): string => (span ? format.range({ ...span, level: 1 }, 'g_per_m2') : '');
  const lines = new Map<string, FedLine>();
  for (const { spot, n_g_per_m2, first_year_g_per_m2, untold, share_untold, lacks } of spots) {
    const at_least = { all: untold > 0, first_year: untold + share_untold > 0 };
    const alike = [printed(n_g_per_m2), printed(first_year_g_per_m2), at_least.all, at_least.first_year, lacks].join(
      '|',
    );
    const told = lines.get(alike)?.spots ?? [];
    lines.set(alike, { spots: [...told, spot.id], n_g_per_m2, first_year_g_per_m2, at_least, lacks });
  }
  return {
    season: season.label,
    spots,
    lines: [...lines.values()],
    told: spots.some(({ n_g_per_m2 }) => n_g_per_m2 !== null),
    figures: spots.flatMap((fed) => figuresOf(season, fed, ledger.bases.of(fed.keys))),
  };
}

function figuresOf({ slug }: Season, fed: SpotFed, basis: string): Figure[] {
  const { spot, entries, untold, share_untold, n_g_per_m2: all, first_year_g_per_m2: first, lacks } = fed;
  const figure = (name: string, value: number | null, without: number, otherwise: string): Figure =>
    happened({
      id: `feed.${slug}.${spot.id}.${name}`,
      value,
      unit: 'g_per_m2',
      n: entries - without,
      method: 'nitrogen-given',
      basis,
      reason: value === null ? because(lacks ?? otherwise) : without > 0 ? because('at-least') : null,
    });
  return [
    figure('n_least', all?.low ?? null, untold, 'content-untold'),
    figure('n_most', all?.high ?? null, untold, 'content-untold'),
    figure('first_year_n_least', first?.low ?? null, untold + share_untold, 'share-untold'),
    figure('first_year_n_most', first?.high ?? null, untold + share_untold, 'share-untold'),
  ];
}
