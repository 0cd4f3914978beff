import type { Figure } from '../figure.ts';
import type { Chapter, Facts } from './chapter.ts';
import type { Page } from './page.ts';
import type { Table } from './table.ts';

/** The whole book as data: nothing drawn, rendered or written yet. */
export interface Book {
  readonly facts: Facts;
  /** In reading order. */
  readonly pages: readonly Page[];
  /** Sorted by id, each once. */
  readonly figures: readonly Figure[];
  /** Sorted by id. */
  readonly tables: readonly Table[];
}

/** Writes every chapter. Throws Error when two figures, tables or pages claim one id: a fault of the program. */
export function writeBook(chapters: readonly Chapter[], facts: Facts): Book {
  const questions = new Map(
    chapters.flatMap((chapter) => (chapter.kind === 'question' ? [[chapter.id, chapter.write(facts)] as const] : [])),
  );
  const answered = [...questions.values()].flat();
  const pages = chapters.flatMap((chapter) =>
    chapter.kind === 'question' ? (questions.get(chapter.id) ?? []) : chapter.write(facts, answered),
  );
  unique(
    'page',
    pages.map(({ path }) => path),
  );
  unique(
    'chart',
    pages.flatMap(({ charts }) => charts.map(({ id }) => id)),
  );
  return {
    facts,
    pages,
    figures: sortedOnce(
      'figure',
      pages.flatMap(({ figures }) => figures),
    ),
    tables: sortedOnce(
      'table',
      pages.flatMap(({ tables, charts }) => [...tables, ...charts.map(({ table }) => table)]),
    ),
  };
}

function unique(what: string, ids: readonly string[]): void {
  const seen = new Set<string>();
  const twice = ids.find((id) => seen.size === seen.add(id).size);
  if (twice !== undefined) throw new Error(`invalid ${what}: "${twice}" stands twice in the book`);
}

/** The same object may be shown on several pages; two different ones may not share an id. */
function sortedOnce<T extends { readonly id: string }>(what: string, all: readonly T[]): T[] {
  const once = [...new Set(all)];
  unique(
    what,
    once.map(({ id }) => id),
  );
  return once.sort((a, b) => (a.id < b.id ? -1 : 1));
}
