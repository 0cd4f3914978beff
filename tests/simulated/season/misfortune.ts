import type { Chance } from '../chance.ts';
import type { FruitLife } from './fruit-life.ts';
import { ripenessAt } from './ripening.ts';
import { type Storm, type StormRule, splitChance } from './storm.ts';
import { heatBetween, type Year } from './year.ts';

/** What may befall a fruit that is left on. */
export interface Losses {
  /** Animals and thieves come from this age on, this often a day to a fruit of usual mass. */
  readonly from_days: number;
  readonly per_day: number;
  /** A fruit of e times the usual mass is taken e to this power times as often. */
  readonly by_log_mass: number;
  readonly theft: number;
  /** Mean days from over to rotten. */
  readonly rot_days: number;
}

export interface Misfortune {
  readonly what: 'aborted' | 'animal' | 'theft' | 'split' | 'rotten';
  readonly day: number;
}

export interface Perils {
  readonly aborted: number;
  readonly losses: Losses;
  readonly storm: StormRule;
  /** Logarithm of the usual mass. */
  readonly usual: number;
}

const ABORTED_WITHIN = 8;
const ABORTED_FROM = 2;

/** The first thing to befall a fruit if nobody picks it; null where nothing does. */
export function misfortuneOf(
  life: FruitLife,
  storms: readonly Storm[],
  year: Year,
  { aborted, losses, storm, usual }: Perils,
  chance: Chance,
): Misfortune | null {
  const aborts = chance() < aborted;
  const abortedOn = life.set + ABORTED_FROM + Math.floor((ABORTED_WITHIN - ABORTED_FROM + 1) * chance());
  const mass = life.traits.log_mass - usual;
  const takenAfter = waited(1 / (losses.per_day * Math.exp(losses.by_log_mass * mass)), chance);
  const thief = chance() < losses.theft;
  const rotsAfter = waited(losses.rot_days, chance);
  const split = storms.find(({ first, effect }) => {
    if (first <= life.set) return false;
    const ripeness = ripenessAt(heatBetween(year, life.set, first), life.heats);
    return chance() < splitChance(effect, ripeness, mass, storm);
  });
  const all: readonly (Misfortune | null)[] = [
    aborts ? { what: 'aborted', day: abortedOn } : null,
    { what: thief ? 'theft' : 'animal', day: life.set + losses.from_days + takenAfter },
    split ? { what: 'split', day: split.first } : null,
    life.turns.over === null ? null : { what: 'rotten', day: life.turns.over + rotsAfter },
  ];
  return all.reduce((first, one) => (one && (!first || one.day < first.day) ? one : first), null);
}

/** Whole days, at least one, of an exponential wait. */
const waited = (mean_days: number, chance: Chance): number =>
  Math.max(1, Math.ceil(-Math.log(1 - chance()) * mean_days));
