/**
 * Conversions between the unit a grower wrote and the SI unit the book computes in.
 * Every factor is exact by definition: the international yard and pound agreement of 1959
 * (1 lb = 0.45359237 kg, 1 in = 25.4 mm) and the definition of the degree Fahrenheit.
 */

interface Unit {
  /** Amount of the SI unit in one of this unit. */
  readonly factor: number;
  /** Added before the factor is applied; only temperatures have one. */
  readonly offset: number;
}

const exact = (factor: number, offset = 0): Unit => ({ factor, offset });

/** One row per dimension: the SI suffix first, then every suffix a record key may carry. */
export const DIMENSIONS = {
  mass: { si: 'kg', suffixes: { kg: exact(1), lb: exact(0.45359237) } },
  rain: { si: 'mm', suffixes: { mm: exact(1), in: exact(25.4) } },
  temperature: { si: 'c', suffixes: { c: exact(1), f: exact(1 / 1.8, -32) } },
  area: { si: 'm2', suffixes: { m2: exact(1), ft2: exact(0.09290304) } },
  volume: { si: 'l', suffixes: { l: exact(1), gal: exact(3.785411784) } },
  length: { si: 'cm', suffixes: { cm: exact(1), in: exact(2.54) } },
  flow: { si: 'l_min', suffixes: { l_min: exact(1), gal_min: exact(3.785411784) } },
  speed: { si: 'm_s', suffixes: { m_s: exact(1), km_h: exact(1 / 3.6), mph: exact(0.44704) } },
  height: { si: 'm', suffixes: { m: exact(1), ft: exact(0.3048) } },
} as const satisfies Record<string, { si: string; suffixes: Record<string, Unit> }>;

export type Dimension = keyof typeof DIMENSIONS;
export type Suffix<D extends Dimension> = keyof (typeof DIMENSIONS)[D]['suffixes'] & string;

function unitOf(dimension: Dimension, suffix: string): Unit {
  const unit = (DIMENSIONS[dimension].suffixes as Record<string, Unit>)[suffix];
  if (!unit) throw new RangeError(`invalid unit: ${suffix} is not a unit of ${dimension}`);
  return unit;
}

/** Value in the SI unit of its dimension. Throws RangeError for a unit of another dimension. */
export function toSi(dimension: Dimension, suffix: string, value: number): number {
  const unit = unitOf(dimension, suffix);
  return (value + unit.offset) * unit.factor;
}

/** Value in the named unit, from the SI unit of its dimension. Throws RangeError as `toSi`. */
export function fromSi(dimension: Dimension, suffix: string, value: number): number {
  const unit = unitOf(dimension, suffix);
  return value / unit.factor - unit.offset;
}
