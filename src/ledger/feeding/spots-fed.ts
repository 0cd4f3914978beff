import type { EventOf } from '../../garden/event.ts';
import type { Garden, Season, Spot } from '../../garden/garden.ts';
import { type Measures, measuresOf } from '../../garden/measures.ts';
import { reaches } from '../../garden/reaches.ts';
import type { MaterialRecord } from '../../records/material.ts';
import { type Lacking, nitrogenOf } from './nitrogen-of.ts';
import type { Span } from './span.ts';

/** What one spot got in one season, g of nitrogen a m². */
export interface SpotFed {
  readonly spot: Spot;
  /** Entries that reach it. */
  readonly entries: number;
  /** Of them, those without a number. */
  readonly untold: number;
  /** Sum of the entries that have a number; null where none has, and `lacks` tells why. */
  readonly n_g_per_m2: Span | null;
  /** What the first year has of it, summed over the entries whose share is told; null where none is. */
  readonly first_year_g_per_m2: Span | null;
  /** Entries with a number whose share of the first year nobody tells. */
  readonly share_untold: number;
  readonly lacks: Lacking | 'area-missing' | null;
  /** Keys of the entries. */
  readonly keys: readonly string[];
}

type Feeding = EventOf<'feeding'>;

interface Reached {
  readonly key: string;
  readonly n: Span | null;
  readonly first_year: Span | null;
  readonly lacks: SpotFed['lacks'];
}

const GRAMS_PER_KG = 1000;

/** Spots that got something, in the garden’s order. An entry is spread evenly over the ground of its spots, or of the whole garden. */
export function spotsFed(
  { about, spots }: Garden,
  { events }: Season,
  materials: readonly MaterialRecord[],
): SpotFed[] {
  const measures = measuresOf(about);
  const entries = events.feeding.map((entry) => ({ entry, reached: reachedBy(entry, spots, materials, measures) }));
  return spots.flatMap((spot) => {
    const here = entries.filter(({ entry }) => reaches(entry, spot)).map(({ reached }) => reached);
    return here.length > 0 ? [spotFed(spot, here)] : [];
  });
}

/** The same for every spot the entry reaches. */
function reachedBy(
  entry: Feeding,
  spots: readonly Spot[],
  materials: readonly MaterialRecord[],
  measures: Measures,
): Reached {
  const none = { key: entry.key, n: null, first_year: null };
  const material = materials.find(({ id }) => id === entry.material);
  if (!material) return { ...none, lacks: 'content-untold' };
  const { kg, first_year_kg, lacks } = nitrogenOf(entry, material, measures);
  if (!kg) return { ...none, lacks };
  const area_m2 = groundOf(spots.filter((spot) => reaches(entry, spot)));
  if (kg.high > 0 && area_m2 === null) return { ...none, lacks: 'area-missing' };
  const perM2 = ({ low, high }: Span): Span => ({ low: gramsOn(low, area_m2), high: gramsOn(high, area_m2) });
  return { key: entry.key, n: perM2(kg), first_year: first_year_kg && perM2(first_year_kg), lacks: null };
}

const gramsOn = (kg: number, area_m2: number | null): number =>
  kg === 0 || area_m2 === null ? 0 : (kg * GRAMS_PER_KG) / area_m2;

/** Null where the ground of one of them is not known. */
function groundOf(spots: readonly Spot[]): number | null {
  const shares = spots.flatMap(({ share_m2 }) => share_m2 ?? []);
  return shares.length > 0 && shares.length === spots.length ? shares.reduce((sum, share) => sum + share, 0) : null;
}

function spotFed(spot: Spot, here: readonly Reached[]): SpotFed {
  const told = here.filter(({ n }) => n !== null);
  return {
    spot,
    entries: here.length,
    untold: here.length - told.length,
    n_g_per_m2: sumOf(told.map(({ n }) => n)),
    first_year_g_per_m2: sumOf(told.map(({ first_year }) => first_year)),
    share_untold: told.filter(({ first_year }) => first_year === null).length,
    lacks: told.length > 0 ? null : (here[0]?.lacks ?? null),
    keys: here.map(({ key }) => key),
  };
}

/** Null where none is known. */
function sumOf(spans: readonly (Span | null)[]): Span | null {
  const known = spans.filter((span) => span !== null);
  if (known.length === 0) return null;
  return known.reduce((sum, { low, high }) => ({ low: sum.low + low, high: sum.high + high }));
}
