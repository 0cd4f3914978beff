import type { Chance } from '../chance.ts';
import { normal } from '../normal.ts';
import { type Shown, SIGN_NAMES } from './signs.ts';

/** Somebody who walks the plot; more of `bias` calls earlier. Both on the scale of ripeness. */
export interface Observer {
  readonly code: string;
  readonly bias: number;
  readonly noise: number;
}

export interface Calling {
  /** How many keepers share the walks. */
  readonly observers: number;
  readonly bias_sd: number;
  readonly noise: number;
  /** Ripeness as felt from which the call is unsure, and from which it is ripe. */
  readonly unsure_from: number;
  readonly ripe_from: number;
}

export type Call = 'ripe' | 'not-yet' | 'unsure';

export const observersOf = ({ observers, bias_sd, noise }: Calling, chance: Chance): Observer[] =>
  Array.from({ length: observers }, (_, index) => ({ code: `K${index + 1}`, bias: bias_sd * normal(chance), noise }));

/** Ripeness as an observer feels it: what the signs show on average, the observer's bias, and chance. */
export function felt(shown: Shown, { bias, noise }: Observer, chance: Chance): number {
  const mean = SIGN_NAMES.reduce((sum, name) => sum + shown[name], 0) / SIGN_NAMES.length;
  return mean + bias + noise * normal(chance);
}

export function callOf(ripeness: number, { unsure_from, ripe_from }: Calling): Call {
  if (ripeness >= ripe_from) return 'ripe';
  return ripeness >= unsure_from ? 'unsure' : 'not-yet';
}
