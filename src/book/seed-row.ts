/** Ten seeds drawn for a share. */
export interface SeedRow {
  /** How many of the ten are filled, from the left. */
  readonly filled: number;
  /** The share is so many tenths and no rounding was needed. */
  readonly exact: boolean;
}

/** A share in tenths as seeds: all ten only for all, none only for none. */
export function seedRow(tenths: number): SeedRow {
  const filled = Math.min(Math.max(Math.round(tenths), tenths > 0 ? 1 : 0), tenths < 10 ? 9 : 10);
  return { filled, exact: filled === tenths };
}
