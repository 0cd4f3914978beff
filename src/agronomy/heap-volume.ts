/**
 * How much earth a heap of a plain shape holds. Measures in metres, volumes in litres, nothing rounded. The formulas
 * are elementary geometry, as in Bronshtein & Semendyayev, Handbook of Mathematics, chapter on solids; from memory.
 * Earth settles, so a heap wants more than its volume of loose earth; how much more is not known here.
 * Every function throws RangeError for a measure that is negative or not finite.
 */

const LITRES_PER_M3 = 1000;

/** A round mound, highest in the middle. */
export interface Cap {
  /** Across its round edge. */
  readonly across_m: number;
  /** From the plane of its edge to its highest (or deepest) place. */
  readonly height_m: number;
}

/** A round mound with a flat top. */
export interface Frustum {
  readonly base_across_m: number;
  readonly top_across_m: number;
  readonly height_m: number;
}

/** A long ridge or raised bed: an oblong base, an oblong top over its middle, plane sides. A top of width 0 is an edge. */
export interface Ridge {
  readonly base_length_m: number;
  readonly base_width_m: number;
  readonly top_length_m: number;
  readonly top_width_m: number;
  readonly height_m: number;
}

/** A bed with upright sides. */
export interface Box {
  readonly length_m: number;
  readonly width_m: number;
  readonly height_m: number;
}

/**
 * A mound as a cap of a sphere: V = π h (3 a² + h²) / 6, a being half the width. Holds for any height, also one above
 * half the width.
 */
export function capVolume({ across_m, height_m }: Cap): number {
  check({ across_m, height_m });
  return (LITRES_PER_M3 * Math.PI * height_m * (3 * (across_m / 2) ** 2 + height_m ** 2)) / 6;
}

/** Water that a bowl pressed into a heap holds when level with its edge: the cap turned over. */
export function bowlVolume({ across_m, depth_m }: { readonly across_m: number; readonly depth_m: number }): number {
  check({ across_m, depth_m });
  return capVolume({ across_m, height_m: depth_m });
}

/** A mound as the stump of a cone: V = π h (D² + D d + d²) / 12. A top of width 0 is a cone; the top may be the wider. */
export function frustumVolume({ base_across_m, top_across_m, height_m }: Frustum): number {
  check({ base_across_m, top_across_m, height_m });
  const widths = base_across_m ** 2 + base_across_m * top_across_m + top_across_m ** 2;
  return (LITRES_PER_M3 * Math.PI * height_m * widths) / 12;
}

/** A ridge by the formula of the prismatoid: V = h (base + 4 middle + top) / 6, the areas of level cuts. */
export function ridgeVolume(ridge: Ridge): number {
  const { base_length_m, base_width_m, top_length_m, top_width_m, height_m } = ridge;
  check({ base_length_m, base_width_m, top_length_m, top_width_m, height_m });
  const middle = ((base_length_m + top_length_m) / 2) * ((base_width_m + top_width_m) / 2);
  const cuts = base_length_m * base_width_m + 4 * middle + top_length_m * top_width_m;
  return (LITRES_PER_M3 * height_m * cuts) / 6;
}

/** A box: V = length · width · height. */
export function boxVolume({ length_m, width_m, height_m }: Box): number {
  check({ length_m, width_m, height_m });
  return LITRES_PER_M3 * length_m * width_m * height_m;
}

function check(measures: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(measures))
    if (!(Number.isFinite(value) && value >= 0)) throw new RangeError(`invalid ${name}: ${value}`);
}
