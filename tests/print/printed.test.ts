import { parse } from 'parse5';
import { beforeAll, describe, expect, test } from 'vitest';
import { attributeOf, type Element, elementsUnder, hasClass, headingsOf, wordsOf } from '../../src/print/markup.ts';
import { paperName } from '../../src/print/paper-name.ts';
import type { Printed } from '../../src/print/print-book.ts';
import { chromiumOrSay } from '../site/chromium.ts';
import { findText, lineAt } from './lines.ts';
import { type ReadPage, type ReadPdf, readPdf } from './pdf-reading.ts';
import { canPhotocopy, lettersOf, readPhotocopy, wordsFound } from './photocopy.ts';
import { htmlOf, type MadeBook, madeBook, printed } from './printed-gardens.ts';

const chromium = chromiumOrSay('the book, its sheets and its cards as PDF');
const photocopied = canPhotocopy();
if (!photocopied && process.env.CI === 'true') throw new Error('no pdftoppm or tesseract found, and CI=true');
if (!photocopied) console.log('left out: photocopies (no pdftoppm or tesseract found)');
const LONG = 180_000;

// ISO 216: A4 is 210 × 297 mm. ANSI/ASME Y14.1: Letter is 8.5 × 11 in. One inch is 72 points.
const PAPER = { A4: [(210 * 72) / 25.4, (297 * 72) / 25.4], Letter: [612, 792] } as const;
const NEAR_PT = 1;
/** Common practice, no source: print below this size is not for a garden. */
const LEAST_SIZE = 8;
/** Chromium sets type in steps of 1/64 px, so that 8 pt come out as 7.995. */
const STEP_PT = 72 / 96 / 64;
const TITLE_SIZE = 20;
/** The text column: 17 mm from the left edge of the paper, 122 mm wide. */
const COLUMN_PT = [(16 * 72) / 25.4, (140 * 72) / 25.4] as const;
const FACES = /^(SourceSans3|SourceSerif4|YoungSerif)/;

const GARDENS = [
  { folder: 'data/garden', paper: 'A4', edition: 'community', pages: [110, 190] },
  { folder: 'tests/books/gardens/us-letter', paper: 'Letter', edition: 'community', pages: [50, 90] },
  // A home book is a thin one.
  { folder: 'tests/books/gardens/eight-plants', paper: 'A4', edition: 'home', pages: [12, 20] },
  { folder: 'tests/books/gardens/day-zero', paper: 'A4', edition: 'home', pages: [12, 20] },
] as const;

/** Words of a paper that must survive a bad copy: its title, its rule, its headings, and on a card the signs. */
const KEY_CLASSES = [
  'side-rule',
  'card-rule',
  'card-stop',
  'card-late',
  'poster-bet',
  'poster-next',
  'poster-says',
  'lead',
];

const keyWords = (html: string): string[] => {
  const all = elementsUnder(parse(html)).filter((one) => !ancestorIsCopy(one));
  const isKey = (one: Element): boolean =>
    KEY_CLASSES.some((name) => hasClass(one, name)) ||
    (one.tagName === 'th' && attributeOf(one, 'scope') === 'col') ||
    (one.tagName === 'strong' && hasClass(one.parentNode as Element, 'card-sign')) ||
    (one.tagName === 'h1' && !hasClass(one, 'card-page-title')) ||
    one.tagName === 'h2';
  return [...new Set(all.filter(isKey).flatMap((one) => lettersOf(ownWords(one))))];
};

/** A heading without the words of the drawings under it. */
const ownWords = (one: Element): string =>
  one.tagName === 'th' ? one.childNodes.map((part) => ('value' in part ? part.value : ' ')).join('') : wordsOf(one);

function ancestorIsCopy(one: Element): boolean {
  const parent = one.parentNode as Element | null;
  if (hasClass(one, 'copy')) return true;
  return parent !== null && 'tagName' in parent && ancestorIsCopy(parent);
}

/** Faces of 97 × 132 mm in cards of 101 × 135.4 mm, two by two in the middle of the paper; points from the lower left. */
function facesOn([wide, high]: readonly [number, number]) {
  const pt = (mm: number): number => (mm * 72) / 25.4;
  return [-1, 0].flatMap((column) =>
    [-1, 0].map((row) => {
      const left = wide / 2 + column * pt(101) + pt(2);
      const bottom = high / 2 + row * pt(135.4) + pt(1.7);
      return { left, right: left + pt(97), bottom, top: bottom + pt(132) };
    }),
  );
}

interface Read extends ReadPdf {
  readonly file: string;
  readonly told: number;
}

describe.skipIf(chromium === null).each(GARDENS)('$folder on paper', ({ folder, paper, edition, pages }) => {
  let made: MadeBook;
  let papers: Read[] = [];
  let raw: readonly Printed[] = [];
  let whole: Read;
  /** Pages of the website whose title opens a chapter, in the order of the book. */
  let chapters: { title: string; foot: string }[] = [];

  beforeAll(async () => {
    made = await madeBook(folder);
    const all: Printed[] = await printed(chromium ?? '', made);
    raw = all;
    papers = [];
    for (const { file, pdf, pages: told } of all) papers.push({ file, told, ...(await readPdf(pdf)) });
    whole = papers.find(({ file }) => file === 'handbook.pdf') as Read;
    chapters = made.book.pages
      .filter(({ form, listed, path }) => form === undefined && (listed || path === ''))
      .map((page) => ({ title: page.title, foot: footOf(htmlOf(made)(page)) }));
  }, LONG);

  test('is a book and a file for each paper to carry out', () => {
    const forms = made.book.pages.filter(({ form }) => form !== undefined);
    expect(forms.length).toBeGreaterThanOrEqual(5);
    expect(papers).toHaveLength(1 + forms.length);
    expect(papers.map(({ file }) => file)).toContain('sheets/visits.pdf');
    expect(papers.every(({ file }) => /^(handbook|(sheets|cards)\/[a-z0-9-]+)\.pdf$/.test(file))).toBe(true);
  });

  test(`has ${paper} pages throughout, and as many as it says`, () => {
    expect(whole.pages.length).toBeGreaterThanOrEqual(pages[0]);
    expect(whole.pages.length).toBeLessThanOrEqual(pages[1]);
    for (const { file, told, pages: read } of papers) {
      expect(read.length, file).toBe(told);
      expect(
        read.filter((page) => !isOf(page, PAPER[paper])),
        file,
      ).toEqual([]);
    }
  });

  test('has every face in it, ours alone, and no letter below 8 pt', () => {
    for (const { file, fonts, pages: read } of papers) {
      expect(fonts.length, file).toBeGreaterThan(0);
      expect(
        fonts.filter(({ name, embedded }) => !embedded || !FACES.test(name)),
        file,
      ).toEqual([]);
      const small = read.flatMap(({ texts }, index) =>
        texts
          .filter(({ size }) => size < LEAST_SIZE - STEP_PT)
          .map(({ text, size }) => `${index + 1}: ${text} ${size}`),
      );
      expect(small, file).toEqual([]);
    }
  });

  test('is tagged, in its language, with title, author and the day of the book', () => {
    const { name, locale } = made.book.facts.garden.about;
    for (const { file, tagged, info } of papers) {
      expect(tagged, file).toBe(true);
      expect(info, file).toMatchObject({ lang: locale, author: name });
      expect(info.title, file).toContain(name);
      expect(info.created, file).toContain((made.book.facts.today ?? '').replaceAll('-', ''));
    }
  });

  test('has an outline of its chapters, each where its title stands', () => {
    expect(whole.outline.map(({ title }) => title)).toEqual(chapters.map(({ title }) => title));
    const entries = whole.outline.flatMap((entry) => [entry, ...entry.below]);
    expect(entries.length).toBeGreaterThan(chapters.length + 8);
    const headings = made.book.pages.flatMap((page) => [...headingsOf(parse(htmlOf(made)(page)))]);
    expect(entries.filter(({ title }) => !headings.includes(title))).toEqual([]);
    for (const { title, page } of whole.outline) expect(titlesOn(whole.pages[page - 1] as ReadPage)).toContain(title);
  });

  test('opens its chapters as the edition says', () => {
    const starts = whole.outline.map(({ page }) => page);
    const empty = whole.pages.filter((page) => bodyOf(page).length === 0).length;
    if (edition === 'community') {
      expect(starts.filter((page) => page % 2 === 0)).toEqual([]);
      expect(empty).toBeGreaterThan(0);
    } else {
      expect(starts.some((page) => page % 2 === 0)).toBe(true);
      expect(empty).toBe(0);
    }
  });

  test('gives in its contents the page on which each chapter’s title stands', () => {
    const [, ...others] = chapters;
    // In a home book the first chapter begins under the contents.
    const until = (whole.outline[1]?.page ?? 2) - (edition === 'home' ? 0 : 1);
    for (const { title } of others) {
      const contents = whole.pages.slice(0, until).find((page) => findText(page, title)) as ReadPage;
      const { x, y } = findText(contents, title) ?? { x: 0, y: 0 };
      const stands = whole.pages.findIndex((page) => titlesOn(page).includes(title)) + 1;
      expect(stands, title).toBeGreaterThan(1);
      expect(lineAt(contents, y, [x, COLUMN_PT[1]])).toBe(`${title} ${stands}`);
    }
  });

  test('has at its foot whose page it is, and n of N, on every page', () => {
    const count = whole.pages.length;
    for (const [index, page] of whole.pages.entries()) {
      const foot = footTexts(page);
      expect(foot.map(({ text }) => text)).toContain(`${index + 1} of ${count}`);
      expect(foot.some(({ text }) => text.startsWith(made.book.facts.garden.about.name))).toBe(true);
    }
    for (const [index, { page }] of whole.outline.entries()) {
      // A home book runs on, so that a page may hold the end of one chapter and the beginning of another.
      const foot =
        edition === 'home' ? chapters[index]?.foot.replace(/ · page [0-9a-f]{4}$/, '') : chapters[index]?.foot;
      expect(footTexts(whole.pages[page - 1] as ReadPage).map(({ text }) => text)).toContain(foot);
    }
  });

  test('prints its cards in 12 pt, their help in 10.5 and their foot in 10, each face inside its marks', () => {
    const cards = papers.filter(({ file }) => file.startsWith('cards/'));
    expect(cards.length).toBeGreaterThan(0);
    for (const {
      file,
      pages: [page],
    } of cards) {
      const texts = page?.texts ?? [];
      const faces = facesOn(PAPER[paper]);
      expect(faces).toHaveLength(4);
      for (const face of faces) {
        const inside = texts.filter(
          ({ x, y, width }) =>
            x >= face.left - NEAR_PT && x + width <= face.right + NEAR_PT && y >= face.bottom && y <= face.top,
        );
        expect(inside.map(({ text }) => text).join(' '), file).toMatch(
          /Is it (ripe|ready)\?.*Stop if.*sweetness|Pick or wait\?.*Official warnings first.*Stop if.*sweetness|How much water\?.*flower and fruit.*Roof water.*the finger wins/,
        );
      }
      const placed = faces.flatMap((face) =>
        texts.filter(({ x, y }) => x >= face.left - NEAR_PT && x < face.right && y >= face.bottom && y <= face.top),
      );
      expect(placed.length, `${file}: nothing stands outside the faces`).toBe(texts.length);
      const sizes = [...new Set(texts.map(({ size }) => Math.round(size * 2) / 2))].sort((a, b) => a - b);
      const help = file.startsWith('cards/ripe-card-rain') ? [] : [10.5];
      expect(sizes, file).toEqual([10, ...help, 12, 19, ...(file.startsWith('cards/water') ? [20] : [])]);
    }
  });

  test.skipIf(!photocopied)(
    'can be read from a photocopy in black and white',
    () => {
      // Sheets to write on are alike in all gardens of one paper, and take long to read.
      const copies = raw
        .filter(({ file }) => file.startsWith('cards/') || (edition === 'community' && file.startsWith('sheets/')))
        .map(({ file, pdf }) => {
          const page = made.book.pages.find((one) => paperName(one) === file);
          const wanted = page ? keyWords(htmlOf(made)(page)) : [];
          expect(wanted.length, file).toBeGreaterThan(10);
          return { file, wanted, ...wordsFound(wanted, readPhotocopy(pdf)[0] ?? '') };
        });
      const told = copies.map(
        ({ file, found, wanted, missing }) =>
          `${file} ${found} of ${wanted.length}${missing.length > 0 ? ` (lost: ${missing.join(', ')})` : ''}`,
      );
      console.log(`key words read from a copy: ${told.join('; ')}`);
      const sum = (of: (copy: (typeof copies)[number]) => number): number =>
        copies.reduce((total, copy) => total + of(copy), 0);
      expect(sum(({ found }) => found) / sum(({ wanted }) => wanted.length)).toBeGreaterThanOrEqual(0.98);
      const cards = copies.filter(({ file }) => file.startsWith('cards/'));
      expect(cards.length).toBeGreaterThan(0);
      expect(cards.flatMap(({ missing }) => missing)).toEqual([]);
    },
    LONG,
  );

  test('leads to the web and nowhere else', () => {
    expect(papers.flatMap(({ addresses }) => addresses).filter((url) => /\.invalid\/|^file:/.test(url))).toEqual([]);
  });
});

/** What stands on a page in the letters of titles, line after line. */
const titlesOn = ({ texts }: ReadPage): string => {
  const large = texts.filter(({ size }) => size >= TITLE_SIZE);
  return large.map(({ text }) => text.trim()).join(' ');
};

const isOf = ({ width, height }: ReadPage, [short, long]: readonly [number, number]): boolean =>
  Math.abs(Math.min(width, height) - short) <= NEAR_PT && Math.abs(Math.max(width, height) - long) <= NEAR_PT;

/** What stands in the margin at the foot: 18 mm high, its text within the lower part. */
const footTexts = ({ texts }: ReadPage): ReadPage['texts'] => texts.filter(({ y }) => y < (18 * 72) / 25.4);
const bodyOf = ({ texts }: ReadPage): ReadPage['texts'] => texts.filter(({ y }) => y >= (18 * 72) / 25.4);

const footOf = (html: string): string => {
  const foot = elementsUnder(parse(html)).find((one) => hasClass(one, 'foot'));
  return foot ? wordsOf(foot) : '';
};
