/**
 * A fruit's signs as one number: how far the share of signs it shows lies above what is usual. A sign nobody looked for
 * is not a no. It counts as the signs that were looked for lead one to expect: of L signs looked for out of J, whose
 * surpluses (shown less usual) go together with correlation r, the best straight-line guess of the surplus of all J is
 *   (sum of the L surpluses) (1 + (J - 1) r) / (1 + (L - 1) r),
 * of equally spread signs of one correlation (the regression of a sum on a part of it). All looked for: the plain
 * count.
 */

/**
 * Decided by the makers: signs of one ripeness and one vine go together this much. Only matters where signs were not
 * looked for.
 */
export const SIGNS_GO_TOGETHER = 0.3;

/** By the sign's place: true shown, false looked for and not shown, null not looked for. */
export type Signs = readonly (boolean | null)[];

/**
 * How often each sign shows where it is looked for; ½ of a sign nobody ever looked for, and drawn towards it by one
 * fruit.
 */
export function usualSigns(fruits: readonly Signs[]): number[] {
  return (fruits[0] ?? []).map((_, sign) => {
    const told = fruits.map((signs) => signs[sign]).filter((one) => typeof one === 'boolean');
    return (told.filter(Boolean).length + 0.5) / (told.length + 1);
  });
}

/** From -1 to 1 when all are looked for; 0 when none is. Throws RangeError for more or fewer signs than are usual. */
export function signScore(signs: Signs, usual: readonly number[]): number {
  if (signs.length !== usual.length) throw new RangeError(`invalid signs: ${signs.length} of ${usual.length}`);
  const surpluses = signs.flatMap((shown, sign) => (shown === null ? [] : [Number(shown) - (usual[sign] ?? 0.5)]));
  if (surpluses.length === 0) return 0;
  const spoken = (1 + (signs.length - 1) * SIGNS_GO_TOGETHER) / (1 + (surpluses.length - 1) * SIGNS_GO_TOGETHER);
  return (spoken * surpluses.reduce((sum, one) => sum + one, 0)) / signs.length;
}
