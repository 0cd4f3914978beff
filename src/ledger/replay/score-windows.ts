import type { StateInside } from '../../statistics/signs/likelihood-ratio.ts';
import type { Outcome } from './outcome.ts';
import type { DayBand, WeekWindow } from './week-windows.ts';

/**
 * What a cut says of a window. Nobody sees the day a fruit becomes ripe: cut unripe before the window opened, or ripe
 * after it closed, it bears the window out; the other way about it belies it; a cut inside tells nothing.
 */
export type WindowCame = 'as-said' | 'inside' | 'over-before' | 'ripe-before' | 'unripe-after';

/** A window and what the knife found. */
export interface JudgedWindow extends WeekWindow {
  /** Null, as are all others, where it was not cut, or was off already on the day of the book. */
  readonly state: StateInside | null;
  /** Days between which it came off. */
  readonly off: Outcome['off'] | null;
  readonly most_came: WindowCame | null;
  readonly half_came: WindowCame | null;
}

export interface BandScore {
  /** Cuts before a window opened or after it closed, and how many of them were as said. */
  readonly outside: number;
  readonly as_said: number;
  readonly inside: number;
}

export interface WindowScore {
  readonly windows: number;
  /** Fruits the windows were of: those of one fruit are much alike. */
  readonly fruits: number;
  readonly over_before: number;
  readonly ripe_before: number;
  readonly unripe_after: number;
  readonly most: BandScore;
  readonly half: BandScore;
}

export function judgeWindow(window: WeekWindow, outcome: Outcome | undefined): JudgedWindow {
  if (!outcome || outcome.off.first < window.week)
    return { ...window, state: null, off: null, most_came: null, half_came: null };
  const { state, off } = outcome;
  return { ...window, state, off, most_came: cameOf(window.most, outcome), half_came: cameOf(window.half, outcome) };
}

/** An end beyond the season is after every day of it. */
function cameOf({ from, to }: DayBand, { state, off }: Outcome): WindowCame {
  if (from === null || off.last < from)
    return state === 'unripe' ? 'as-said' : state === 'over' ? 'over-before' : 'ripe-before';
  if (to !== null && off.first > to) return state === 'unripe' ? 'unripe-after' : 'as-said';
  return 'inside';
}

/** Null where no window was judged. */
export function scoreWindows(windows: readonly JudgedWindow[]): WindowScore | null {
  const judged = windows.filter(({ most_came }) => most_came !== null);
  if (judged.length === 0) return null;
  const count = (came: WindowCame): number => judged.filter(({ most_came }) => most_came === came).length;
  return {
    windows: judged.length,
    fruits: new Set(judged.map(({ season, fruit }) => `${season} ${fruit}`)).size,
    over_before: count('over-before'),
    ripe_before: count('ripe-before'),
    unripe_after: count('unripe-after'),
    most: bandScore(judged.map(({ most_came }) => most_came)),
    half: bandScore(judged.map(({ half_came }) => half_came)),
  };
}

function bandScore(cames: readonly (WindowCame | null)[]): BandScore {
  const inside = cames.filter((came) => came === 'inside').length;
  return { outside: cames.length - inside, as_said: cames.filter((came) => came === 'as-said').length, inside };
}
