import { join } from 'node:path';
import nunjucks from 'nunjucks';
import { expect, test } from 'vitest';
import { renderLeaves } from '../../src/site/eleventy.ts';
import { plant, scratch } from '../disk/scratch.ts';

test('each of very many pages is rendered once, by its own data, in the order given', async () => {
  const folder = scratch();
  plant(folder, { 'page.njk': '<p>{{ number }}</p>' });
  const environment = new nunjucks.Environment(new nunjucks.FileSystemLoader(join(folder)));
  const leaves = Array.from({ length: 1203 }, (_, number) => ({
    file: `page-${number}/index.html`,
    template: 'page.njk',
    context: { number },
  }));
  const rendered = await renderLeaves(leaves, environment);
  expect([...rendered]).toEqual(leaves.map(({ file, context }) => [file, `<p>${context.number}</p>`]));
});
