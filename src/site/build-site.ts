import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Book } from '../book/book.ts';
import type { Page } from '../book/page.ts';
import { readAssets } from './assets.ts';
import { CALENDAR, calendarFile } from './calendar-file.ts';
import { dataFiles } from './data-files.ts';
import type { Draw } from './draw.ts';
import { createDrawings } from './drawings.ts';
import { type Leaf, renderLeaves } from './eleventy.ts';
import { createFilters } from './filters.ts';
import { bookFrame, pageFrame } from './frame.ts';
import { createMessages, type Messages } from './messages.ts';
import { createTemplates } from './templates.ts';

export interface SiteSettings {
  /** Folder of templates, styles and words. */
  readonly layouts: string;
  /** Folder of the chapters' templates. */
  readonly content: string;
  readonly version: string;
  readonly draw: Draw;
  /** For the printer alone: private pages too. Files made so are never published. */
  readonly with_private?: boolean;
}

/** Draws and renders the whole book to files in memory: name below the site, content. */
export async function buildSite(whole: Book, settings: SiteSettings): Promise<Map<string, string | Uint8Array>> {
  const book = settings.with_private ? whole : { ...whole, pages: whole.pages.filter((page) => !page.private) };
  const messages = messagesFor(book, settings.layouts);
  const templates = createTemplates(
    [settings.layouts, settings.content],
    createFilters(book.facts.format, messages),
    messages,
    createDrawings(join(settings.layouts, 'drawings')),
  );
  const ids = book.pages.map((page) => pageId(page, settings));
  const frame = bookFrame(book, messages, settings.version, shortHash(ids.join()));
  const leaves: Leaf[] = [];
  for (const [index, page] of book.pages.entries()) {
    const charts = await drawCharts(page, settings.draw);
    const leaf = pageFrame(book, page, messages, ids[index] ?? '');
    leaves.push({
      file: `${page.path}index.html`,
      template: page.template,
      context: { book: frame, leaf, charts, model: page.model },
    });
  }
  const html = await renderLeaves(leaves, templates);
  const calendar = calendarFile(book, messages);
  return new Map<string, string | Uint8Array>([
    ...html,
    ...dataFiles(book, messages),
    ...(calendar === null ? [] : [[CALENDAR, calendar] as const]),
    ...readAssets(settings.layouts),
  ]);
}

function messagesFor({ facts }: Book, layouts: string): Messages {
  const { locale } = facts.garden.about;
  const text = (name: string): string => readFileSync(join(layouts, 'messages', `${name}.yaml`), 'utf8');
  return createMessages(locale, text(locale.split('-')[0] ?? locale), text(locale));
}

async function drawCharts(page: Page, draw: Draw): Promise<Record<string, object>> {
  const root = '../'.repeat(page.path.split('/').length - 1);
  const drawn: Record<string, object> = {};
  for (const chart of page.charts) {
    const { id, title, description, table } = chart;
    drawn[id] = { id, title, description, svg: await draw(chart), csv: `${root}data/${table.id}.csv` };
  }
  return drawn;
}

/** What the page says, how it is set, and by which version: the mark an orphan sheet is known by. */
function pageId({ model, template, charts }: Page, { content, version }: SiteSettings): string {
  const set = readFileSync(join(content, template), 'utf8');
  return shortHash(JSON.stringify([model, charts.map(({ spec }) => spec), set, version]));
}

const shortHash = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 4);
