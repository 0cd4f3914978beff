import type { Chance } from '../chance.ts';

/** How often people leave something out or write it otherwise: shares from 0, never, to 1. All of it is valid. */
export interface Slips {
  /** A walk nobody held. */
  readonly walk_skipped: number;
  readonly weather_day_missing: number;
  /** A set nobody saw: the day it was first seen and how big it was stand instead. */
  readonly set_missing: number;
  /** Of the sets seen: written as "about" a day within two of the true one. */
  readonly set_about: number;
  readonly mass_missing: number;
  /** Of the masses written. */
  readonly mass_in_lb: number;
  readonly condition_missing: number;
  /** A picked fruit of whose cutting nothing is written. */
  readonly uncut: number;
  /** Of the cuts. */
  readonly state_missing: number;
  /** Of the states written: one step off. */
  readonly state_misread: number;
  readonly brix_missing: number;
  /** Of each of the words of a cut. */
  readonly word_missing: number;
  /** Of each sign of a look. */
  readonly sign_missing: number;
  /** A part written down some days late, and saying so. */
  readonly written_late: number;
}

export const NO_SLIPS: Slips = {
  walk_skipped: 0,
  weather_day_missing: 0,
  set_missing: 0,
  set_about: 0,
  mass_missing: 0,
  mass_in_lb: 0,
  condition_missing: 0,
  uncut: 0,
  state_missing: 0,
  state_misread: 0,
  brix_missing: 0,
  word_missing: 0,
  sign_missing: 0,
  written_late: 0,
};

export const slips = (share: number, chance: Chance): boolean => chance() < share;
