/** Random factors: each observation has one level of each, and all levels of all factors stand in one row of places. */
import type { Vector } from '../linear/cholesky.ts';

export interface RandomFactor {
  readonly name: string;
  /** The level of each observation. */
  readonly levels: readonly string[];
}

export interface Places {
  /** For each factor the place of each observation's level. */
  readonly of: readonly (readonly number[])[];
  /** For each factor its first place and the place after its last. Levels stand as they first appear. */
  readonly range: readonly { readonly from: number; readonly to: number }[];
  /** Places in all. */
  readonly count: number;
}

/** Lays out the levels of all factors. */
export function placesOf(factors: readonly RandomFactor[]): Places {
  const range: { from: number; to: number }[] = [];
  let count = 0;
  const of = factors.map(({ levels }) => {
    const names = [...new Set(levels)];
    const place = new Map(names.map((name, at) => [name, count + at]));
    range.push({ from: count, to: count + names.length });
    count += names.length;
    return levels.map((name) => place.get(name) ?? 0);
  });
  return { of, range, count };
}

/** Zᵗ v: sums of the values by level. */
export function sumsByLevel(places: Places, values: Vector): Vector {
  const sums = new Float64Array(places.count);
  for (const factor of places.of) {
    for (let at = 0; at < values.length; at++) {
      const place = factor[at] as number;
      sums[place] = (sums[place] as number) + (values[at] as number);
    }
  }
  return sums;
}

/** Z u: for each observation the sum of what its levels have. */
export function spread(places: Places, effects: Vector, observations: number): Vector {
  const values = new Float64Array(observations);
  for (const factor of places.of) {
    for (let at = 0; at < observations; at++) {
      values[at] = (values[at] as number) + (effects[factor[at] as number] as number);
    }
  }
  return values;
}
