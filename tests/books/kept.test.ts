import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { loadGarden } from '../../src/cli/load-garden.ts';
import { bookOf, siteOf } from '../../src/cli/make-book.ts';
import { openKept } from '../../src/disk/kept-folder.ts';
import { type Kept, NOTHING_KEPT } from '../../src/kept.ts';
import { drawSvg } from '../../src/site/chart-svg.ts';
import { createDraw } from '../../src/site/draw.ts';
import { scratch } from '../disk/scratch.ts';

const GARDEN = 'tests/books/gardens/southern';

interface Built {
  readonly site: Readonly<Record<string, string>>;
  readonly drawn: number;
  /** By kind, how often something was asked for, and not found. */
  readonly missed: Readonly<Record<string, number>>;
  readonly asked: Readonly<Record<string, number>>;
}

/** The garden's site, and what had to be made for it. */
async function built(kept: Kept): Promise<Built> {
  let drawn = 0;
  const [asked, missed]: Record<string, number>[] = [{}, {}];
  const watched: Kept = {
    find: (kind, inputs) => {
      const found = kept.find(kind, inputs);
      if (asked) asked[kind] = (asked[kind] ?? 0) + 1;
      if (missed && found === undefined) missed[kind] = (missed[kind] ?? 0) + 1;
      return found;
    },
    keep: kept.keep,
  };
  const loaded = loadGarden(GARDEN, watched);
  if (!loaded.garden) throw new Error('invalid garden');
  const draw = createDraw(watched, (spec, key) => {
    drawn += 1;
    return drawSvg(spec, key);
  });
  const files = await siteOf(bookOf(loaded, loaded.garden, null, watched), draw, '0.0.0');
  const site = Object.fromEntries([...files].map(([path, data]) => [path, Buffer.from(data).toString('latin1')]));
  return {
    site: { ...site, problems: JSON.stringify(loaded.problems) },
    drawn,
    asked: asked ?? {},
    missed: missed ?? {},
  };
}

test('what is kept changes no byte, saves what it can, and damaged is made again', async () => {
  const folder = join(scratch(), 'kept');
  const again = async (): Promise<Built> => {
    const kept = openKept(folder, 'mark');
    const one = await built(kept);
    kept.save();
    return one;
  };
  const plain = await built(NOTHING_KEPT);
  const cold = await again();
  const warm = await again();
  expect(cold.site).toEqual(plain.site);
  expect(warm.site).toEqual(plain.site);
  expect(cold.drawn).toBeGreaterThan(10);
  expect(warm.drawn).toBe(0);
  // Everything asked for is found: each record file, fit and chart of this garden can be kept.
  expect(warm.missed).toEqual({});
  // What is found whole, as a replay of a season, asks for nothing within it.
  expect({ ...warm.asked, fits: 0 }).toEqual({ ...cold.asked, fits: 0 });
  expect(warm.asked.fits).toBeLessThanOrEqual(cold.asked.fits ?? 0);
  expect(Math.min(...['records', 'fits', 'charts'].map((kind) => warm.asked[kind] ?? 0))).toBeGreaterThan(8);

  for (const name of readdirSync(folder)) damageEvery(join(folder, name));
  const mended = await again();
  expect(mended.site).toEqual(plain.site);
  expect(mended.missed).toEqual(cold.missed);
  expect(mended.drawn).toBe(cold.drawn);
});

/** Changes the last sign of every value. */
function damageEvery(path: string): void {
  const [head = '', ...lines] = readFileSync(path, 'utf8').split('\n');
  const damaged = lines.map((line) => (line === '' ? '' : `${line.slice(0, -1)}${line.endsWith(']') ? '}' : ']'}`));
  writeFileSync(path, [head, ...damaged].join('\n'));
}
