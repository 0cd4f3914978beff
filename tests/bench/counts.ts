/** Writes what a garden's book holds as a job for the bare process: `node counts.js <garden> <job.json>`. */
import { writeFileSync } from 'node:fs';
import { loadGarden } from '../../src/cli/load-garden.ts';
import { bookOf, siteOf } from '../../src/cli/make-book.ts';

const [folder = '', to = ''] = process.argv.slice(2);
const loaded = loadGarden(folder);
if (!loaded.garden) throw new Error(`invalid garden: ${JSON.stringify(loaded.problems.slice(0, 3))}`);
const book = bookOf(loaded, loaded.garden, null);
const site = await siteOf(book, async () => '', '0.0.0');
const pages = book.pages.map(({ path, charts }) => ({
  characters: String(site.get(`${path}index.html`)).length,
  charts: charts.map(({ spec }) => spec),
}));
writeFileSync(to, JSON.stringify(pages));
