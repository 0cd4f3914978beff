import { expect, test } from 'vitest';
import type { SeasonLooks } from '../../../content/scouting/season-looks.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { linkTexts } from '../../reading/garden-texts.ts';
import { lookedGarden, MILDEW } from './looked-garden.ts';

const reference = loadReference('data/reference');

function pageOf(scouting: string) {
  const { garden, problems } = linkTexts(lookedGarden(scouting));
  if (!garden || problems.some(({ severity }) => severity === 'error'))
    throw new Error(`invalid test garden: ${JSON.stringify(problems)}`);
  const page = bookOf({ reference }, garden, null).pages.find(({ path }) => path === 'scouting/');
  if (!page) throw new Error('there is no page');
  return page;
}

function seasonOf(scouting: string): SeasonLooks {
  const { season } = pageOf(scouting).model as { season: SeasonLooks | null };
  if (!season) throw new Error('no season with a look');
  return season;
}

test('weeks are counted from planting out, the one of the last record with them', () => {
  const { days, weeks } = seasonOf(MILDEW);
  expect(days.value).toBe(5);
  // 20 May to 1 July 42 days, 10 Aug 82, 24 Aug 96, 5 Sept 108, 15 Sept 118: weeks 6, 11, 13, 15 and 16 of 0 to 16.
  expect([weeks.looked.value, weeks.grown.value]).toEqual([5, 17]);
  const twice = seasonOf(
    '- {looked_on: 2025-06-02, found: none}\n- {looked_on: 2025-06-02, found: slugs, spots: [S1]}\n- {looked_on: 2025-06-20..2025-06-30, found: none}\n',
  );
  // Two looks of one day, and one of some day near the end of June: two days told, one week known, 20 May to 30 June 41 days.
  expect([twice.days.value, twice.weeks.looked.value, twice.weeks.grown.value]).toEqual([2, 1, 6]);
});

test('spots that fared alike are one course, from the last none before it to the first after it', () => {
  const { courses } = seasonOf(MILDEW);
  expect(courses.map(({ found, where, way }) => [found, where, way])).toEqual([
    ['mildew', 'E', 'rose'],
    ['mildew', 'S3', 'peaked'],
  ]);
  expect(courses[0]?.grades).toEqual([
    { on: '2025-07-01', severity: 0 },
    { on: '2025-08-10', severity: 1 },
    { on: '2025-08-24', severity: 3 },
    { on: '2025-09-05', severity: 5 },
  ]);
  expect(courses[1]?.grades.map(({ severity }) => severity)).toEqual([0, 5, 0]);
});

test('the area under a course, by trapezia, and the days it would have taken at 9', () => {
  const [beds, last] = seasonOf(MILDEW).courses;
  // 40 days from 0 to 1, 14 from 1 to 3, 12 from 3 to 5: 20 + 28 + 48 = 96, and 96 / 9 = 10 2/3.
  expect(beds?.step_days).toBe(96);
  expect(beds?.days_at_worst).toMatchObject({ unit: 'days', reason: null, n: 4 });
  expect(beds?.days_at_worst.value).toBeCloseTo(10 + 2 / 3, 12);
  // 66 days from 0 to 5 and 10 back to 0: 165 + 25 = 190.
  expect(last?.step_days).toBe(190);
});

test('one day alone has no area, and a look that found something else tells nothing of it', () => {
  const { courses } = seasonOf(
    '- {looked_on: 2025-08-10, found: mildew, severity: 4}\n- {looked_on: 2025-08-20, found: slugs, severity: 1}\n',
  );
  expect(courses.map(({ found, where, way, step_days }) => [found, where, way, step_days])).toEqual([
    ['mildew', null, 'once', null],
    ['slugs', null, 'once', null],
  ]);
  expect(courses[0]?.days_at_worst).toMatchObject({ value: null, reason: { code: 'one-look' } });
});

test.each([
  [[3, 3, 3], 'same'],
  [[6, 5, 2], 'fell'],
  [[1, 7, 4], 'peaked'],
  [[4, 1, 4], 'returned'],
  [[1, 6, 6], 'rose'],
])('grades %j %s', (grades, way) => {
  const looks = grades.map(
    (grade, week) => `- {looked_on: 2025-08-${10 + 7 * week}, found: wilt, severity: ${grade}}\n`,
  );
  expect(seasonOf(looks.join('')).courses.map((course) => course.way)).toEqual([way]);
});

test('what was found, the first to come first, with its worst day and its most plants', () => {
  const { found } = seasonOf(
    `- {looked_on: 2025-06-02, found: slugs, spots: [S1], what: Grey ones}\n${MILDEW.trim()}\n`,
  );
  expect(found.map((line) => [line.found, line.looks, line.where, line.worst?.severity ?? null])).toEqual([
    ['slugs', 1, 'S1', null],
    ['mildew', 3, null, 5],
  ]);
  expect(found[0]?.what).toEqual(['Grey ones']);
  expect(found[1]?.worst?.on.first).toBe('2025-09-05');
  expect(found[1]?.most).toEqual({ affected: 3, checked: 5 });
});

test('the level of record grows from a look to counts to grades on two days', () => {
  expect(pageOf('').level).toEqual({ needs: 'little', kept: null, next: 'little' });
  expect(pageOf('- {looked_on: 2025-07-01, found: none}\n').level?.kept).toBe('little');
  expect(pageOf('- {looked_on: 2025-07-01, found: slugs, checked: 5, affected: 1, severity: 2}\n').level?.kept).toBe(
    'some',
  );
  expect(pageOf(MILDEW).level).toEqual({ needs: 'little', kept: 'full', next: null });
});

test('ids of figures begin with the chapter and tell season, trouble and spots', () => {
  const ids = pageOf(MILDEW).figures.map(({ id }) => id);
  expect(ids).toEqual([
    'scouting.2025.days_looked',
    'scouting.2025.weeks_looked',
    'scouting.2025.weeks_grown',
    'scouting.2025.mildew.S1+S2.days_at_worst',
    'scouting.2025.mildew.S3.days_at_worst',
  ]);
});
