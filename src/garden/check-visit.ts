import { certainlyAfter, type Dated } from '../dated.ts';
import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';
import type { FruitRecord } from '../records/fruit.ts';
import type { SeasonRecord } from '../records/season.ts';
import type { VisitRecord } from '../records/visit.ts';
import { seasonProblem, writtenProblem } from './check-order.ts';
import { type Index, lookUp } from './index-by-id.ts';

/** Fruits a visit names that do not exist, or were picked before it. */
export function checkVisit(
  entry: Entry<VisitRecord>,
  fruits: Index<FruitRecord>,
  season: SeasonRecord | null,
): Problem[] {
  const { visited_on, recorded_on } = entry.record;
  const date: Dated = { kind: 'day', first: visited_on, last: visited_on, text: visited_on };
  const visited = { field: ['visited_on'], date, done: 'visited' };
  const looks = entry.record.fruits.flatMap((look, index) => {
    const field = ['fruits', index, 'fruit'];
    const { found, problem } = lookUp(fruits, look.fruit, entry, field, 'fruit');
    if (problem) return [problem];
    const gone = found?.pick?.picked_on ?? found?.end?.ended_on ?? null;
    if (!certainlyAfter(date, gone)) return [];
    return [
      problemIn(entry, field, {
        severity: 'warning',
        code: 'visited-after-picked',
        message: `fruit ${look.fruit} was gone by ${gone?.text}`,
        hint: 'check the fruit and the two dates',
      }),
    ];
  });
  return [...seasonProblem(entry, visited, season), ...writtenProblem(entry, [], visited, recorded_on), ...looks];
}
