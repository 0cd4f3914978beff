/** A number that can be printed: what it is, how sure, from how much, how far it reaches, and where it came from. */

export type FigureUnit =
  | 'fruits'
  | 'plants'
  | 'spots'
  | 'kg'
  | 'fruits_per_plant'
  | 'kg_per_plant'
  | 'fruits_per_m2'
  | 'kg_per_m2'
  | 'm'
  | 'm2'
  | 'mm'
  | 'c'
  /** A temperature averaged over days. */
  | 'mean_c'
  /** Heat: degrees above a base, added over days. */
  | 'c_days'
  | 'days'
  | 'nights'
  /** Place among years, 1 the highest. */
  | 'place'
  | 'brix'
  /** A slope of sugar on rain; printed for ten of them. */
  | 'brix_per_mm'
  | 'of_ten'
  | 'of_twenty'
  /** Words of a ladder counted from 1. */
  | 'steps'
  /** As many times another. */
  | 'times'
  | 'seeds'
  | 'l'
  /** Water to a mass of fruit. */
  | 'l_per_kg'
  | 'barrows'
  | 'cans'
  | 'cm'
  | 'g_per_m2'
  | 'mm_per_day'
  | 'weeks'
  | 'hours'
  | 'minutes'
  | 'l_per_week'
  | 'years';

/** How far a figure may be carried: what happened, another spot of this summer, or a next summer here. */
export type Reach = 'what-happened' | 'another-spot-this-summer' | 'next-summer-here';

export interface Interval {
  readonly low: number;
  readonly high: number;
  /** Nominal coverage, for instance 0.9. */
  readonly level: number;
}

/** Why a figure has no value, or what it lacks: a message code and the values its words need. */
export interface Reason {
  readonly code: string;
  readonly values: Readonly<Record<string, string | number>>;
}

export interface Replicate {
  /** What counts as one independent repeat: mound, tub, row, bed, spot, season, day. */
  readonly kind: string;
  readonly count: number;
}

export interface Figure {
  /** Stable dotted id, for instance `yield.2025.garden.total.fruits`. */
  readonly id: string;
  /** In the unit named; null when it cannot be said, and then `reason` says why. */
  readonly value: number | null;
  readonly unit: FigureUnit;
  readonly interval: Interval | null;
  /** Observations under the value. */
  readonly n: number;
  readonly replicate: Replicate | null;
  readonly reach: Reach;
  /** Id of its words in data/reference/methods.yaml. */
  readonly method: string;
  /** Id of the citation of its formula in data/reference/sources.yaml; null for counts and sums of the garden's own records. */
  readonly source: string | null;
  /** Id of the set of records under it, listed once in bases.json. */
  readonly basis: string;
  /** Why the value is null, or a remark that must stand beside it; null when neither. */
  readonly reason: Reason | null;
}

/** A figure of what happened: counted, summed or told once, so with no range and no formula's source. */
export const happened = (
  told: Pick<Figure, 'id' | 'value' | 'unit' | 'n' | 'method' | 'basis' | 'reason'> &
    Partial<Pick<Figure, 'replicate'>>,
): Figure => ({
  id: told.id,
  value: told.value,
  unit: told.unit,
  interval: null,
  n: told.n,
  replicate: told.replicate ?? null,
  reach: 'what-happened',
  method: told.method,
  source: null,
  basis: told.basis,
  reason: told.reason,
});

/** A figure reckoned ahead from facts of the trade: no range, and by itself no record under it. */
export const reckoned = (
  told: Pick<Figure, 'id' | 'value' | 'unit' | 'method' | 'basis'> &
    Partial<Pick<Figure, 'n' | 'replicate' | 'source' | 'reason'>>,
): Figure => ({
  id: told.id,
  value: told.value,
  unit: told.unit,
  interval: null,
  n: told.n ?? 0,
  replicate: told.replicate ?? null,
  reach: 'next-summer-here',
  method: told.method,
  source: told.source ?? null,
  basis: told.basis,
  reason: told.reason ?? null,
});

export const because = (code: string, values: Reason['values'] = {}): Reason => ({ code, values });
