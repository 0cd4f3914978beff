import type { Facts } from '../../src/book/chapter.ts';
import type { Chart } from '../../src/book/chart.ts';
import { dayLines } from '../../src/charts/day-lines.ts';
import { WORST_SEVERITY } from '../../src/records/severity.ts';
import type { Course } from './courses.ts';
import type { SeasonLooks } from './season-looks.ts';
import { gradesTable } from './tables.ts';

/** Lines that can still be told apart. */
const MOST_LINES = 8;

/** How bad over the days, a line a course; null where no trouble was graded on two days. The worst ones where there are many. */
export function gradesChart({ format }: Facts, season: SeasonLooks): Chart | null {
  const drawn = season.courses
    .filter(({ grades }) => grades.length > 1)
    .sort((a, b) => b.worst.severity - a.worst.severity)
    .slice(0, MOST_LINES);
  const days = drawn.flatMap(({ grades }) => grades.map(({ on }) => on)).sort();
  const [first, last] = [days[0], days.at(-1)];
  if (!first || !last) return null;
  return {
    id: `scouting-${season.slug.toLowerCase()}`,
    title: `How bad it was, ${season.label}`,
    description: `${drawn.map((course) => `${nameOf(course)}: ${course.grades.map(({ on, severity }) => `${format.decimal(severity, 0)} on ${format.day(on)}`).join(', ')}`).join('. ')}.`,
    spec: dayLines(
      {
        first,
        last,
        lines: drawn.map((course) => ({
          name: nameOf(course),
          marks: course.grades.map(({ on, severity }) => ({ on, value: severity })),
        })),
        top: WORST_SEVERITY,
        yTitle: 'how bad, 9 the worst',
      },
      format,
    ),
    table: gradesTable(season),
  };
}

const nameOf = ({ found, where }: Course): string => `${found.replaceAll('-', ' ')}, ${where ?? 'all spots'}`;
