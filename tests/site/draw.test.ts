import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { Chart } from '../../src/book/chart.ts';
import { openKept } from '../../src/disk/kept-folder.ts';
import { createDraw } from '../../src/site/draw.ts';
import { scratch } from '../disk/scratch.ts';

const chartOf = (height: number): Chart => ({
  id: `c${height}`,
  title: '',
  description: '',
  spec: { data: { values: [{ height }] }, mark: 'bar', encoding: { y: { field: 'height', type: 'quantitative' } } },
  table: { id: 't', title: '', columns: [], rows: [] },
});

/** Draws charts of some heights in a new process, as it were; gives their SVG and the keys that had to be drawn. */
async function drawn(folder: string, heights: readonly number[], mark = 'mark') {
  const kept = openKept(folder, mark);
  const keys: string[] = [];
  const draw = createDraw(kept, async (spec, key) => {
    keys.push(key);
    return `<svg id="${key}">${JSON.stringify(spec)}</svg>\n`;
  });
  const svgs: string[] = [];
  for (const height of heights) svgs.push(await draw(chartOf(height)));
  kept.save();
  return { svgs, keys };
}

test('a chart is drawn once, and again only when its spec changes', async () => {
  const folder = join(scratch(), 'kept');
  const first = await drawn(folder, [1, 2, 3, 2]);
  expect(first.keys).toHaveLength(3);
  const second = await drawn(folder, [1, 2, 3, 2]);
  expect(second).toEqual({ svgs: first.svgs, keys: [] });
  const third = await drawn(folder, [1, 2, 4]);
  expect(third.keys).toHaveLength(1);
  expect(third.svgs[2]).toContain(`id="${third.keys[0]}"`);
  expect((await drawn(folder, [1, 2, 4], 'another mark')).keys).toHaveLength(3);
});

test('without a folder a drawer remembers what it drew', async () => {
  let count = 0;
  const draw = createDraw(undefined, async () => String(++count));
  expect([await draw(chartOf(1)), await draw(chartOf(1)), await draw(chartOf(2))]).toEqual(['1', '1', '2']);
});
