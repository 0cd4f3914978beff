import { certainlyAfter, type Dated } from '../dated.ts';
import type { Day } from '../day.ts';
import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn, type TreePath } from '../reading/source.ts';

interface Step {
  readonly field: TreePath;
  readonly date: Dated | null;
  /** How the step is spoken of: "planted", "picked". */
  readonly done: string;
}

/** An error when a later step of one record certainly comes before an earlier one. */
export function orderProblem(entry: Entry<unknown>, earlier: Step, later: Step): Problem[] {
  if (!certainlyAfter(earlier.date, later.date)) return [];
  return [
    problemIn(entry, later.field, {
      code: `${later.done}-before-${earlier.done}`.replace(/ /g, '-'),
      message: `${later.done} ${later.date?.text}, before it was ${earlier.done} ${earlier.date?.text}`,
      hint: 'one of the two dates is wrong; write "about" before a date you are not sure of',
    }),
  ];
}

interface Bounds {
  readonly label: string;
  readonly starts_on: Day;
  readonly ends_on: Day;
}

/** A warning when a date certainly lies outside its season. */
export function seasonProblem(entry: Entry<unknown>, step: Step, season: Bounds | null): Problem[] {
  const { date } = step;
  if (!season || !date?.first || date.kind === 'about') return [];
  if (date.last >= season.starts_on && date.first <= season.ends_on) return [];
  return [
    problemIn(entry, step.field, {
      severity: 'warning',
      code: 'outside-season',
      message: `${step.done} ${date.text}, outside season ${season.label} (${season.starts_on} to ${season.ends_on})`,
      hint: 'check the year, or the season it is filed under',
    }),
  ];
}

/** An error when something was written down before it happened. */
export function writtenProblem(entry: Entry<unknown>, part: TreePath, step: Step, recorded: Day | null): Problem[] {
  if (!recorded || !step.date?.first || step.date.kind === 'about' || recorded >= step.date.first) return [];
  return [
    problemIn(entry, [...part, 'recorded_on'], {
      code: 'written-before-event',
      message: `written down ${recorded}, before it was ${step.done} ${step.date.text}`,
      hint: 'one of the two dates is wrong',
    }),
  ];
}
