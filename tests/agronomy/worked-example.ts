/** How closely a computed number agrees with a worked example. */
import type { Value } from '../published/fao-56/reference-evapotranspiration.ts';
import { expectDigits, expectPrinted } from '../statistics/agreement.ts';

/** Expects the digits printed, and the chain without rounded steps to 1e-6 of itself. */
export function expectValue(actual: number, { printed, exact }: Value): void {
  expectPrinted(actual, printed);
  expectDigits(actual, exact, 6);
}
