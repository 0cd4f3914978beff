import { join } from 'node:path';
import { contents } from '../../content/contents.ts';
import { type Book, writeBook } from '../book/book.ts';
import { cautionsOf } from '../book/cautions-of.ts';
import type { Day } from '../day.ts';
import { packageRoot } from '../disk/package-root.ts';
import { createFormat } from '../format.ts';
import { asOf } from '../garden/as-of.ts';
import type { Garden } from '../garden/garden.ts';
import { lastDay } from '../garden/last-day.ts';
import { type Kept, NOTHING_KEPT } from '../kept.ts';
import { openLedger } from '../ledger/ledger.ts';
import type { Draw } from '../site/draw.ts';
import type { LoadedGarden } from './load-garden.ts';

/** The book as data, from the garden as known on its day. */
export function bookOf(
  { reference }: Pick<LoadedGarden, 'reference'>,
  whole: Garden,
  wanted: Day | null,
  kept: Kept = NOTHING_KEPT,
): Book {
  const today = wanted ?? lastDay(whole) ?? whole.seasons.at(-1)?.starts_on ?? null;
  const garden = today === null ? whole : asOf(whole, today);
  const format = createFormat({ units: whole.about.units, locale: whole.about.locale });
  return writeBook(contents, {
    garden,
    today,
    ledger: openLedger(garden, today, kept, reference),
    reference: { ...reference, cautions: cautionsOf(reference, garden) },
    format,
  });
}

/**
 * The book as files in memory: name below the site, content. The site generator is loaded only now. Pages for one person
 * alone are among them only where the files go to the printer.
 */
export async function siteOf(
  book: Book,
  draw: Draw,
  version: string,
  goal: 'website' | 'printer' = 'website',
): Promise<Map<string, string | Uint8Array>> {
  const { buildSite } = await import('../site/build-site.ts');
  const root = packageRoot();
  return buildSite(book, {
    layouts: join(root, 'layouts'),
    content: join(root, 'content'),
    version,
    draw,
    with_private: goal === 'printer',
  });
}
