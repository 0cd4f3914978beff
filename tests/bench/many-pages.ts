/** Renders and writes a book of very many pages of about 8 kB each: `node many-pages.js <garden> <count> <out>`. */
import { loadGarden } from '../../src/cli/load-garden.ts';
import { bookOf, siteOf } from '../../src/cli/make-book.ts';
import { publishFolder } from '../../src/disk/output-folder.ts';

const USUAL_LENGTH = 8000;

const [folder = '', count = '', out = ''] = process.argv.slice(2);
const loaded = loadGarden(folder);
if (!loaded.garden) throw new Error('invalid garden');
const book = bookOf(loaded, loaded.garden, null);
const plain = book.pages.filter(({ charts, path }) => charts.length === 0 && path !== '');
const once = await siteOf({ ...book, pages: plain }, async () => '', '0.0.0');
const away = (path: string): number => Math.abs(String(once.get(`${path}index.html`)).length - USUAL_LENGTH);
const [usual] = [...plain].sort((a, b) => away(a.path) - away(b.path));
if (!usual) throw new Error('invalid book: it has no page without a chart');
const pages = Array.from({ length: Number(count) }, (_, index) => ({
  ...usual,
  path: `${usual.path}${index}/`,
  listed: false,
}));
const files = await siteOf({ ...book, pages, tables: [], figures: [] }, async () => '', '0.0.0');
publishFolder(out, files);
