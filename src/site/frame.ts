import type { Book } from '../book/book.ts';
import type { Facts } from '../book/chapter.ts';
import { type CitedCaution, citedCaution } from '../book/cited-caution.ts';
import type { Page } from '../book/page.ts';
import type { RecordLevel } from '../book/record-level.ts';
import { datasetText } from './dataset.ts';
import type { Messages } from './messages.ts';

/** What every page's frame reads of the book. */
export interface BookFrame {
  readonly garden: string;
  readonly title: string;
  readonly locale: string;
  readonly paper: string;
  readonly edition: string;
  readonly version: string;
  readonly id: string;
  readonly today_words: string;
  /** Listed pages in reading order; questions carry their number, other matter none. */
  readonly contents: readonly { readonly path: string; readonly title: string; readonly number: number | null }[];
}

export function bookFrame({ facts, pages }: Book, messages: Messages, version: string, id: string): BookFrame {
  const { about } = facts.garden;
  const season = lastSeason(facts);
  const listed = pages.filter(({ listed: isListed }) => isListed);
  return {
    garden: about.name,
    title: season === null ? messages('book.handbook-empty') : messages('book.handbook', { season }),
    locale: about.locale,
    paper: about.paper,
    edition: about.edition,
    version,
    id,
    today_words: dayWords(facts, messages),
    contents: listed.map((page) => ({ path: page.path, title: page.title, number: numberOf(listed, page) })),
  };
}

/** What a page's own frame reads. */
export interface PageFrame {
  readonly path: string;
  readonly root: string;
  readonly chapter: string;
  readonly title: string;
  /** sheet or card; null for a page of the book. */
  readonly form: Page['form'] | null;
  readonly number: number | null;
  /** The listed pages before and after it; a page listed under another has that one before it. */
  readonly before: Pick<Page, 'path' | 'title'> | null;
  readonly after: Pick<Page, 'path' | 'title'> | null;
  readonly id: string;
  readonly foot: string;
  /** The foot of a book whose pages run on, so that no page has a mark of its own. */
  readonly book_foot: string;
  readonly level: RecordLevel | null;
  readonly cautions: readonly CitedCaution[];
  /** What search engines read of the records, for the page that gives them away; null for others. */
  readonly dataset: string | null;
}

export function pageFrame(book: Book, page: Page, messages: Messages, id: string): PageFrame {
  const { facts, pages } = book;
  const season = lastSeason(facts);
  const root = '../'.repeat(page.path.split('/').length - 1);
  const told = {
    garden: facts.garden.about.name,
    season: season === null ? messages('book.no-season') : messages('book.season', { label: season }),
    day: dayWords(facts, messages),
  };
  return {
    path: page.path,
    root,
    chapter: page.chapter,
    title: page.title,
    form: page.form ?? null,
    number: numberOf(
      pages.filter(({ listed }) => listed),
      page,
    ),
    ...beside(
      pages.filter(({ listed }) => listed),
      page,
    ),
    id,
    level: page.level,
    foot: messages('book.foot', { ...told, id }),
    book_foot: messages('book.foot-whole', told),
    cautions: page.chapter === 'cautions' ? [] : cautionsOf(facts, page.cautions),
    dataset: page.chapter === 'records' ? datasetText(book, `${root}data/`, messages) : null,
  };
}

function beside(listed: readonly Page[], page: Page): Pick<PageFrame, 'before' | 'after'> {
  const told = (other: Page | undefined): Pick<Page, 'path' | 'title'> | null =>
    other ? { path: other.path, title: other.title } : null;
  const place = listed.indexOf(page);
  if (place < 0) return { before: told(listed.find(({ chapter }) => chapter === page.chapter)), after: null };
  return { before: told(listed[place - 1]), after: told(listed[place + 1]) };
}

/** Cautions by id, with the words of their sources. Throws Error for an id that data/reference does not hold. */
function cautionsOf({ reference, format }: Facts, ids: readonly string[]): CitedCaution[] {
  return ids.map((id) => {
    const caution = reference.cautions.find((one) => one.id === id);
    if (!caution) throw new Error(`invalid caution: there is no "${id}" in cautions.yaml`);
    return citedCaution(caution, reference, format);
  });
}

/** Place of a page among the questions, from 1; null for front and back matter. */
function numberOf(listed: readonly Page[], page: Page): number | null {
  if (page.finding === null) return null;
  const chapters = [...new Set(listed.filter(({ finding }) => finding !== null).map(({ chapter }) => chapter))];
  return chapters.indexOf(page.chapter) + 1 || null;
}

const dayWords = ({ today, format }: Facts, messages: Messages): string =>
  today === null ? messages('book.no-day') : format.dayYear(today);

const lastSeason = ({ garden }: Facts): string | null => garden.seasons.at(-1)?.label ?? null;
