import { addDays, type Day, daysBetween, earlierOf } from '../../day.ts';
import { remainingDraws } from '../../statistics/ripe-states/remaining-time.ts';
import type { RipeStates } from '../../statistics/ripe-states/ripe-states.ts';
import { LOOK_HOLDS_DAYS } from '../ripeness/judged-fruit.ts';
import type { YearAhead } from './calendar-years.ts';
import { type Clock, timeBetween } from './clock.ts';

/** What a window is made of, besides the years ahead. */
export interface WindowFit {
  readonly clock: Clock;
  readonly states: RipeStates;
}

/** A fruit on the vine, as its keeper knows it. */
export interface VineFruit {
  readonly variety: string;
  /** Days between which it set. */
  readonly set: { readonly first: Day; readonly last: Day };
  /** The last day somebody called it not ripe, and the chance that such a call is wrong; null: nobody did. */
  readonly not_yet: { readonly on: Day; readonly wrong: number } | null;
}

/** Days from now, 0 today; each end null where it lies beyond the season, or beyond what the years tell. */
export interface Band {
  readonly low: number | null;
  readonly high: number | null;
  readonly level: number;
}

export interface Spread {
  readonly median: number | null;
  readonly half: Band;
  readonly most: Band;
}

export interface WindowLine {
  readonly ripe: Spread;
  /** Null where too few fruits were cut over: nobody can say when it will be too late. */
  readonly over: Spread | null;
  /** Chance, of 1, that it is ripe, or over, on each day from today on. */
  readonly ripe_by: readonly number[];
}

export interface FruitWindow {
  readonly day: Day;
  /** Whatever anybody called it. */
  readonly line: WindowLine;
  /** Given that it was called not ripe; null without a call, or where no such fruit is likely. */
  readonly called: WindowLine | null;
  /** When to look again. */
  readonly next_visit: Day;
  readonly years: number;
}

export interface NoWindow {
  readonly cannot: 'outgrown' | 'time-unknown' | 'few-years' | 'season-over';
}

const SEED = 1;
const HALF = 0.5;
const MOST = 0.9;
/** From this chance on that it is ripe somebody should look. */
const LOOK_FROM = 0.1;
const LONGEST_AWAY_DAYS = 7;
/** Called not ripe within the days a look holds, and surer than this to be ripe by its age: something is wrong. */
const SURELY = 0.99;
/** Inside its window a fruit is looked at as often as the pocket card has it. */
const INSIDE_DAYS = 2;

/**
 * When a fruit becomes ripe, and over, seen from a day: its own time left, a thousand draws by their weights, each run
 * through every year ahead. Pure: the same fit, fruit, day and years give the same window.
 */
export function fruitWindow(
  { clock, states }: WindowFit,
  fruit: VineFruit,
  day: Day,
  years: readonly YearAhead[],
): FruitWindow | NoWindow {
  if (years.length === 0) return { cannot: clock.unit === 'days' ? 'season-over' : 'few-years' };
  const now = seenFrom(clock, states, fruit, day, null, years, day);
  if ('cannot' in now) return now;
  const call = fruit.not_yet;
  if (call && daysBetween(call.on, day) <= LOOK_HOLDS_DAYS && (now.ripe_by[0] ?? 0) > SURELY)
    return { cannot: 'outgrown' };
  const called = call && seenFrom(clock, states, fruit, earlierOf(call.on, day), call.wrong, years, day);
  const line = called && !('cannot' in called) ? called : null;
  return { day, line: now, called: line, next_visit: nextVisit(day, line ?? now), years: years.length };
}

/** What is told of a fruit as it was on a day, at a later one. */
function seenFrom(
  clock: Clock,
  states: RipeStates,
  { variety, set }: VineFruit,
  then: Day,
  call_wrong: number | null,
  years: readonly YearAhead[],
  day: Day,
): WindowLine | NoWindow {
  const age = timeBetween(clock, { first: set.first, last: earlierOf(set.last, then) }, { first: then, last: then });
  const since = clock.length(then, day);
  if (!age || since === null) return { cannot: 'time-unknown' };
  const draws = remainingDraws(states, { variety, ...age, call_wrong }, SEED);
  if ('cannot' in draws) return { cannot: 'outgrown' };
  const days = (left: ArrayLike<number>): number[] => reached(draws.weight, left, since, years);
  const ripe_by = days(draws.to_just);
  return { ripe: spreadOf(ripe_by), over: states.seen.over ? spreadOf(days(draws.to_over)) : null, ripe_by };
}

/** Chance that the time left has passed, by each day ahead. */
function reached(
  weights: ArrayLike<number>,
  left: ArrayLike<number>,
  since: number,
  years: readonly YearAhead[],
): number[] {
  const length = Math.min(...years.map(({ sums }) => sums.length));
  const falls = new Float64Array(length);
  for (const { sums } of years)
    for (let draw = 0; draw < weights.length; draw++) {
      const at = firstDay(sums, (left[draw] as number) - since);
      if (at < length) falls[at] = (falls[at] as number) + (weights[draw] as number) / years.length;
    }
  for (let at = 1; at < length; at++) falls[at] = (falls[at] as number) + (falls[at - 1] as number);
  return Array.from(falls, (one) => Math.min(1, one));
}

/** The first day whose sum is as much; by halving, for sums never fall. */
function firstDay(sums: ArrayLike<number>, wanted: number): number {
  let [low, high] = [0, sums.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sums[middle] as number) >= wanted) high = middle;
    else low = middle + 1;
  }
  return low;
}

function spreadOf(by: readonly number[]): Spread {
  const at = (share: number): number | null => {
    const found = by.findIndex((one) => one >= share);
    return found < 0 ? null : found;
  };
  const band = (level: number): Band => ({ low: at((1 - level) / 2), high: at((1 + level) / 2), level });
  return { median: at(0.5), half: band(HALF), most: band(MOST) };
}

/** The first day on which 1 in 10 such fruits is ripe, at most a week ahead; where that is past, two days on. */
function nextVisit(day: Day, { ripe_by }: WindowLine): Day {
  const from = ripe_by.findIndex((one) => one >= LOOK_FROM);
  if (from === 0) return addDays(day, INSIDE_DAYS);
  return addDays(day, from < 0 ? LONGEST_AWAY_DAYS : Math.min(from, LONGEST_AWAY_DAYS));
}
