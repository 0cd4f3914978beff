/** Columns of a model matrix for a factor, from the level each observation has (0 to levels - 1). */

export type Column = readonly number[];

/** One column per level, 1 where the observation has it: the coefficient is the level's own mean. */
export function indicators(levels: number, has: readonly number[]): Column[] {
  return Array.from({ length: levels }, (_, level) => has.map((own) => (own === level ? 1 : 0)));
}

/** levels - 1 columns whose effects add up to zero over all levels, so that every level weighs the same. */
export function sumToZero(levels: number, has: readonly number[]): Column[] {
  const last = levels - 1;
  return Array.from({ length: Math.max(0, last) }, (_, level) =>
    has.map((own) => (own === level ? 1 : own === last ? -1 : 0)),
  );
}

/** Two factors, and the level of each that a row of the model has. */
interface TwoFactors {
  readonly treatments: readonly unknown[];
  readonly blocks: readonly unknown[];
  readonly cells: readonly { readonly treatment: number; readonly block: number }[];
}

/** The columns of both factors by sumToZero; none for a factor of one level or without levels. */
export const contrastColumns = ({ treatments, blocks, cells }: TwoFactors) => ({
  treatment: sumToZero(
    treatments.length,
    cells.map((cell) => cell.treatment),
  ),
  block: sumToZero(
    blocks.length,
    cells.map((cell) => cell.block),
  ),
});

/** The additive model: treatment means first, one column each; then the block effects, which add up to zero. */
export const additiveColumns = ({ treatments, blocks, cells }: TwoFactors): Column[] => [
  ...indicators(
    treatments.length,
    cells.map((cell) => cell.treatment),
  ),
  ...contrastColumns({ treatments, blocks, cells }).block,
];
