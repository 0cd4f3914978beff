import { isOneDay } from '../../src/dated.ts';
import type { Day } from '../../src/day.ts';
import type { Entry } from './entry.ts';

/** The season in five dates; null for what has no day. */
export interface Milestones {
  readonly sown: Day | null;
  readonly planted: Day | null;
  readonly set: Day | null;
  readonly picked: Day | null;
  readonly last_picked: Day | null;
}

/** Days written down as a day or about one; spans and months name none. */
export function milestonesOf(entries: readonly Entry[]): Milestones {
  const daysOf = (code: string): Day[] =>
    entries.flatMap(({ code: of, date }) => (of === code && isOneDay(date) ? [date.first] : [])).sort();
  const first = (code: string): Day | null => daysOf(code)[0] ?? null;
  return {
    sown: first('sown'),
    planted: first('planted'),
    set: first('set'),
    picked: first('picked'),
    last_picked: daysOf('picked').at(-1) ?? null,
  };
}
