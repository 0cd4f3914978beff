/** How bad and how long a trouble was, in one number, from looks on several days. */
import { type Day, daysBetween } from '../day.ts';

/** One look at the plants. */
export interface Look {
  readonly looked_on: Day;
  /** How bad, from 0 for none upwards; the book's own scale ends at 9. */
  readonly severity: number;
}

/**
 * The area under the disease progress curve, in the unit of the severity times days:
 * Σ (y[i+1] + y[i]) / 2 · (t[i+1] - t[i]). Shaner & Finney 1977, Phytopathology 67:1051-1056, from memory. Looks in any
 * order; looks of one day count as their mean (common practice, no source). Null when all looks are of one day, or there
 * is none: a curve needs two. Areas are comparable only over the same days.
 * Throws RangeError for a severity that is negative or not finite.
 */
export function diseaseProgress(looks: readonly Look[]): number | null {
  const byDay = new Map<Day, number[]>();
  for (const { looked_on, severity } of looks) {
    if (!(Number.isFinite(severity) && severity >= 0)) throw new RangeError(`invalid severity: ${severity}`);
    byDay.set(looked_on, [...(byDay.get(looked_on) ?? []), severity]);
  }
  const days = [...byDay]
    .map(([on, all]) => ({ on, severity: all.reduce((sum, one) => sum + one, 0) / all.length }))
    .sort((a, b) => daysBetween(b.on, a.on));
  if (days.length < 2) return null;
  return days.reduce((area, { on, severity }, place) => {
    const before = days[place - 1];
    return before ? area + ((before.severity + severity) / 2) * daysBetween(before.on, on) : area;
  }, 0);
}
