import type { Chance } from '../chance.ts';
import { normal } from '../normal.ts';

/**
 * Signs follow ripeness, the logarithm of heat over that of just ripe, each running ahead of it or behind. Standard
 * deviations on that scale: of the lag a fruit gives all its signs, of the mound's stress, of the sign's own lag on a
 * fruit, and of a single look at it.
 */
export interface SignRule {
  readonly lag_sd: number;
  readonly stress_sd: number;
  readonly own_sd: number;
  readonly look_sd: number;
}

interface Sign {
  /** How much of the mound's stress it shows. */
  readonly stress: number;
  readonly words: readonly string[];
  /** Ripeness, as the sign shows it, at which each word gives way to the next. */
  readonly turns: readonly number[];
}

export const SIGNS = {
  tendril: { stress: 1.6, words: ['green', 'wilting', 'half-brown', 'dry'], turns: [-0.2, -0.05, 0.1] },
  ground_spot: { stress: 0.3, words: ['none', 'white', 'cream', 'butter', 'deep'], turns: [-0.6, -0.3, -0.05, 0.2] },
  sound: { stress: 0.5, words: ['ringing', 'hollow', 'dull'], turns: [0, 0.25] },
  rind: { stress: 1, words: ['glossy', 'matte'], turns: [0.02] },
  nail: { stress: 0.5, words: ['marks', 'resists'], turns: [-0.1] },
} as const satisfies Record<string, Sign>;

export type SignName = keyof typeof SIGNS;
export const SIGN_NAMES = Object.keys(SIGNS) as readonly SignName[];

/** How far each sign of a fruit runs ahead of its ripeness, and the part of it that all share. */
export interface Latents {
  readonly lag: number;
  readonly ahead: Readonly<Record<SignName, number>>;
}

export function latentsOf(stress: number, rule: SignRule, chance: Chance): Latents {
  const lag = rule.lag_sd * normal(chance);
  const ahead = (name: SignName): number =>
    lag + SIGNS[name].stress * rule.stress_sd * stress + rule.own_sd * normal(chance);
  return { lag, ahead: bySign(ahead) };
}

/** The ripeness each sign shows in one look. */
export const shownIn = (ripeness: number, { ahead }: Latents, { look_sd }: SignRule, chance: Chance) =>
  bySign((name) => ripeness + ahead[name] + look_sd * normal(chance));

export type Shown = Readonly<Record<SignName, number>>;

/** The word for what a sign shows. */
export function wordOf(name: SignName, shown: number): string {
  const { words, turns }: Sign = SIGNS[name];
  return words[turns.filter((turn) => shown >= turn).length] ?? '';
}

function bySign(of: (name: SignName) => number): Record<SignName, number> {
  return {
    tendril: of('tendril'),
    ground_spot: of('ground_spot'),
    sound: of('sound'),
    rind: of('rind'),
    nail: of('nail'),
  };
}
