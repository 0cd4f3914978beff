import { expect, test } from 'vitest';
import { GARDENS, siteOf } from '../books/garden-list.ts';
import { readPage } from '../books/reading.ts';
import { countsOf, gradeOf } from '../books/reading-age.ts';
import { htmlPages } from '../site/built.ts';

/** Grades are reported, not asserted: a short sentence of long crop names is no worse than it reads. */
const SECTIONS = ['front', 'yield', 'variety', 'weather', 'methods', 'cautions', 'records', 'colophon'];

const sectionOf = (path: string): string => (path.includes('/') ? (path.split('/')[0] ?? '') : 'front');

const cell = (texts: readonly string[]): string => {
  const grade = gradeOf(countsOf(texts));
  return (grade === null ? '-' : grade.toFixed(1)).padStart(6);
};

test('school grade of findings and paragraphs, garden by chapter', async () => {
  const lines = ['all', 'finding'].map((kind) => [
    `\nFlesch-Kincaid grade, ${kind === 'all' ? 'findings and paragraphs' : 'findings alone'}`,
  ]);
  for (const { name } of GARDENS) {
    const pages = htmlPages(await siteOf(name)).map(([path, html]) => ({
      section: sectionOf(path),
      read: readPage(html),
    }));
    const of = (section: string) => pages.filter((page) => page.section === section).map(({ read }) => read);
    const row = (texts: (section: string) => string[]) =>
      `${name.padEnd(16)}${SECTIONS.map((section) => cell(texts(section)).padStart(9)).join('')}`;
    lines[0]?.push(row((section) => of(section).flatMap(({ paragraphs }) => paragraphs)));
    lines[1]?.push(row((section) => of(section).flatMap(({ findings }) => findings)));
    expect(pages.length).toBeGreaterThan(8);
  }
  for (const [title = '', ...rows] of lines) {
    console.log(
      [title, `${''.padEnd(16)}${SECTIONS.map((section) => section.padStart(9)).join('')}`, ...rows].join('\n'),
    );
  }
});
