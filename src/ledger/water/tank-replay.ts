import { type Roof, roofInflows } from '../../agronomy/roof-runoff.ts';
import { runTank, type Tank, type TankDay } from '../../agronomy/tank-balance.ts';
import { middleOf } from '../weather/long-record.ts';

/** The rain of a past year, with what the plan would have taken from the tank on each of its days. */
export interface PastYear {
  readonly label: string;
  readonly days: readonly { readonly rain_mm: number; readonly wanted_l: number }[];
}

export interface ReplaySettings {
  readonly tank: Tank;
  /** Litres in the tank on the first morning of every year. */
  readonly start_l: number;
  readonly roof: Roof;
  /** Whole years only: a year with an unread day is left out by whoever asks. */
  readonly years: readonly PastYear[];
}

/** How many of the past years would have run the tank dry: a count, which is no chance of the year to come. */
export interface Replay {
  /** dry_day is the place of the first day that would have gone short, null where none would. */
  readonly years: readonly { readonly label: string; readonly dry_day: number | null }[];
  readonly dry: number;
  readonly of: number;
}

/** Litres in the tank at the end of a day, those below the tap too, over the years. */
export interface BandDay {
  readonly lowest_l: number;
  readonly middle_l: number;
  readonly highest_l: number;
}

export interface Afford {
  /** Litres a week that the plan gives up; 0 when it may stand. */
  readonly less_l_week: number;
  /** Litres a week that the plan asks for, over all years: a page has to see what the cut leaves. */
  readonly wanted_l_week: number;
  readonly dry: number;
  readonly of: number;
}

const DAYS_A_WEEK = 7;
const USUAL_STEP_L = 5;
/** One year in the record may run dry; to be safe in the worst of them too, most gardens would have to give up their water. */
const DRY_YEARS_BORNE = 1;

/** The water of every year, a number a day, worked out once however often the plan changes. */
const inflowsOf = ({ roof, years }: ReplaySettings): number[][] =>
  years.map(({ days }) =>
    roofInflows(
      roof,
      days.map(({ rain_mm }) => rain_mm),
    ),
  );

/** Every year from the same start. Throws RangeError for a roof, a tank or a day that cannot be. */
export function replayTank(settings: ReplaySettings): Replay {
  return replayWith(settings, inflowsOf(settings), 0);
}

function replayWith(
  { tank, start_l, years }: ReplaySettings,
  inflows: readonly number[][],
  less_l_week: number,
): Replay {
  const replayed = years.map(({ label, days }, index) => {
    const wanted = wantedLess(
      days.map(({ wanted_l }) => wanted_l),
      less_l_week,
    );
    return { label, dry_day: runTank(tank, start_l, tankDays(inflows[index] ?? [], wanted)).dry_day };
  });
  return { years: replayed, dry: replayed.filter(({ dry_day }) => dry_day !== null).length, of: years.length };
}

const tankDays = (inflows: readonly number[], wanted: readonly number[]): TankDay[] =>
  inflows.map((inflow_l, day) => ({ inflow_l, wanted_l: wanted[day] ?? 0 }));

/**
 * The plan with so many litres a week less. Weeks run from the first day; each of a week’s days gives up the same part
 * of what it wants, a week that wants less than the cut gives up all of it, and a last week of few days as many
 * sevenths of the cut.
 */
function wantedLess(wanted: readonly number[], less_l_week: number): number[] {
  return wanted.map((wanted_l, day) => {
    const first = day - (day % DAYS_A_WEEK);
    const week = wanted.slice(first, first + DAYS_A_WEEK);
    const total_l = sum(week);
    const cut_l = (less_l_week * week.length) / DAYS_A_WEEK;
    return total_l <= cut_l ? 0 : wanted_l * (1 - cut_l / total_l);
  });
}

/**
 * The least cut, in whole steps of litres a week, with which at most one of the past years runs dry. Null where none
 * helps, that is where the fullest week would have nothing left, and where there is no year to try it on. Less wanted
 * never dries a tank sooner, so the steps are searched by halving. Throws RangeError as `replayTank`, and for a step
 * that is not above zero.
 */
export function afford(settings: ReplaySettings, step_l = USUAL_STEP_L): Afford | null {
  if (!(step_l > 0 && Number.isFinite(step_l))) throw new RangeError(`invalid step_l: ${step_l}`);
  const inflows = inflowsOf(settings);
  const dryWith = (steps: number): number => replayWith(settings, inflows, steps * step_l).dry;
  const days = settings.years.flatMap((year) => year.days);
  if (days.length === 0) return null;
  let enough = Math.ceil(fullestWeek(settings.years) / step_l);
  const past = enough;
  let tooFew = -1;
  while (enough - tooFew > 1) {
    const middle = Math.floor((enough + tooFew) / 2);
    if (dryWith(middle) <= DRY_YEARS_BORNE) enough = middle;
    else tooFew = middle;
  }
  if (enough === past && past > 0) return null;
  const wanted_l_week = (sum(days.map(({ wanted_l }) => wanted_l)) * DAYS_A_WEEK) / days.length;
  return { less_l_week: enough * step_l, wanted_l_week, dry: dryWith(enough), of: settings.years.length };
}

/** Litres a week where the plan wants most; a week of few days evened out to seven. */
const fullestWeek = (years: readonly PastYear[]): number =>
  years
    .flatMap(({ days }) =>
      days.flatMap((_, day) => {
        if (day % DAYS_A_WEEK !== 0) return [];
        const week = days.slice(day, day + DAYS_A_WEEK);
        return (sum(week.map(({ wanted_l }) => wanted_l)) * DAYS_A_WEEK) / week.length;
      }),
    )
    .reduce((most, week) => Math.max(most, week), 0);

/** The band of levels, a day for each that all years have; no days where there is no year. Throws RangeError as `replayTank`. */
export function levelBand(settings: ReplaySettings): BandDay[] {
  const { tank, start_l, years } = settings;
  const inflows = inflowsOf(settings);
  const runs = years.map(({ days }, index) => {
    const wanted = days.map(({ wanted_l }) => wanted_l);
    return runTank(tank, start_l, tankDays(inflows[index] ?? [], wanted)).steps.map(({ end_l }) => end_l);
  });
  const shortest = runs.length === 0 ? 0 : Math.min(...runs.map((levels) => levels.length));
  return Array.from({ length: shortest }, (_, day) => {
    const levels = runs.map((run) => run[day] ?? Number.NaN).sort((a, b) => a - b);
    const [lowest_l = Number.NaN] = levels;
    return { lowest_l, middle_l: middleOf(levels), highest_l: levels.at(-1) ?? Number.NaN };
  });
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
