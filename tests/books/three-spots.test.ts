import { expect, test } from 'vitest';
import { type Site, siteOfFolder } from '../site/built.ts';
import { golden } from './golden.ts';

const FOLDER = 'tests/books/three-spots';

/** Every text of the site; faces are named only. */
const textsOf = (site: Site): Map<string, string> =>
  new Map([...site].flatMap(([path, content]) => (typeof content === 'string' ? [[path, content] as const] : [])));

test('a garden of three spots makes the book kept here, to the byte', async () => {
  const site = await siteOfFolder(`${FOLDER}/garden`);
  const made = textsOf(site);
  const kept = golden(`${FOLDER}/site`, made);
  expect([...made.keys()].sort()).toEqual([...kept.keys()].sort());
  for (const [path, text] of made) expect(text, path).toBe(kept.get(path));
  expect([...site.keys()].filter((path) => path.endsWith('.woff2')).length).toBeGreaterThanOrEqual(4);
});
