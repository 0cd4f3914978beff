import { diseaseProgress } from '../../src/agronomy/disease-progress.ts';
import { type Day, daysBetween } from '../../src/day.ts';
import { because, type Figure, happened } from '../../src/figure.ts';
import type { Season, Spot } from '../../src/garden/garden.ts';
import { reaches } from '../../src/garden/reaches.ts';
import type { Bases } from '../../src/ledger/bases.ts';
import { naturally } from '../../src/natural-order.ts';
import { WORST_SEVERITY } from '../../src/records/severity.ts';
import type { Look, Trouble } from './look.ts';
import { whereOf } from './where.ts';

export interface Grade {
  readonly on: Day;
  /** 0 to 9; the mean where a day has several looks. */
  readonly severity: number;
}

/** How one trouble went in spots that fared alike. */
export interface Course {
  readonly found: Trouble;
  /** Null: every planted spot. */
  readonly where: string | null;
  /** By day, from the last look that found none before it came to the first that found none after it. */
  readonly grades: readonly Grade[];
  readonly first: Grade;
  readonly worst: Grade;
  readonly last: Grade;
  readonly way: 'once' | 'same' | 'rose' | 'fell' | 'peaked' | 'returned';
  /** Area under the curve in steps times days; null for a single day. */
  readonly step_days: number | null;
  /** The same area, the worst step taken as one: days that would have been as bad at 9. */
  readonly days_at_worst: Figure;
}

/** Every graded trouble by spot; spots with the same grades on the same days are one course. In order of first sight. */
export function coursesOf(season: Season, stem: string, bases: Bases): Course[] {
  const planted = [...new Set(season.plantings.map(({ spot }) => spot.id))].sort(naturally);
  const looks = season.events.scouting;
  const kinds = [...new Set(looks.map(({ found }) => found))].filter((found) => found !== 'none');
  return kinds.flatMap((found) => {
    const alike = new Map<string, { spots: readonly string[]; grades: readonly Grade[]; keys: readonly string[] }>();
    for (const spot of planted) {
      const own = looks.filter((look) => tellsOf(look, found, { id: spot }));
      const grades = gradesOf(own);
      if (grades.length === 0) continue;
      const name = JSON.stringify(grades);
      const { spots, keys } = alike.get(name) ?? { spots: [], keys: [] };
      alike.set(name, { spots: [...spots, spot], grades, keys: [...keys, ...own.map(({ key }) => key)] });
    }
    return [...alike.values()].flatMap((group) => courseOf(season, found, group, stem, bases) ?? []);
  });
}

/** A look that found nothing tells of every trouble; one that found another trouble says nothing of this. */
const tellsOf = (look: Look, found: Trouble, spot: Pick<Spot, 'id'>): boolean =>
  (look.found === found || look.found === 'none') && reaches(look, spot);

/** Of looks on a known day; empty where the trouble never reached a step above none. */
function gradesOf(looks: readonly Look[]): Grade[] {
  const byDay = new Map<Day, number[]>();
  for (const { looked_on, found, severity } of looks) {
    const grade = found === 'none' ? 0 : severity;
    if (grade === null || looked_on.first === null || looked_on.first !== looked_on.last) continue;
    byDay.set(looked_on.first, [...(byDay.get(looked_on.first) ?? []), grade]);
  }
  const grades = [...byDay]
    .map(([on, all]) => ({ on, severity: all.reduce((sum, one) => sum + one, 0) / all.length }))
    .sort((a, b) => daysBetween(b.on, a.on));
  const [from, to] = [
    grades.findIndex(({ severity }) => severity > 0),
    grades.findLastIndex(({ severity }) => severity > 0),
  ];
  return from < 0 ? [] : grades.slice(Math.max(0, from - 1), to + 2);
}

function courseOf(
  season: Season,
  found: Trouble,
  { spots, grades, keys }: { spots: readonly string[]; grades: readonly Grade[]; keys: readonly string[] },
  stem: string,
  bases: Bases,
): Course | null {
  const [first, last] = [grades[0], grades.at(-1)];
  if (!first || !last) return null;
  const worst = grades.reduce((most, one) => (one.severity > most.severity ? one : most), first);
  const area = diseaseProgress(grades.map(({ on, severity }) => ({ looked_on: on, severity })));
  return {
    found,
    where: whereOf(season, spots),
    grades,
    first,
    worst,
    last,
    way: wayOf(grades, first.severity, worst.severity, last.severity),
    step_days: area,
    days_at_worst: happened({
      id: `${stem}.${found}.${spots.join('+')}.days_at_worst`,
      value: area === null ? null : area / WORST_SEVERITY,
      unit: 'days',
      n: grades.length,
      method: 'trouble-over-days',
      basis: bases.of(keys),
      reason: area === null ? because('one-look') : null,
    }),
  };
}

function wayOf(grades: readonly Grade[], first: number, worst: number, last: number): Course['way'] {
  if (grades.length === 1) return 'once';
  if (grades.every(({ severity }) => severity === first)) return 'same';
  if (worst > first && worst > last) return 'peaked';
  if (last > first) return 'rose';
  return last < first ? 'fell' : 'returned';
}
