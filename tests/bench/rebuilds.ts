/**
 * A process that stays warm, as the preview does: a fruit's mass is changed, and records, numbers, charts and pages are
 * made again in memory. Prints the seconds of each: `node rebuilds.js <garden> <file> <count>`.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { loadGarden } from '../../src/cli/load-garden.ts';
import { bookOf, siteOf } from '../../src/cli/make-book.ts';
import { openKept } from '../../src/disk/kept-folder.ts';
import { programMark } from '../../src/disk/program-mark.ts';
import { createDraw } from '../../src/site/draw.ts';
import type { Mark } from './watched.ts';

const WARM_UP = 3;

const [folder = '', file = '', count = ''] = process.argv.slice(2);
const text = readFileSync(join(folder, file), 'utf8');
const kept = openKept(join(folder, '.groundspot', 'kept'), programMark());
const draw = createDraw(kept);
for (let round = 0; round < WARM_UP + Number(count); round++) {
  const changed = text.replace(/mass_kg: [0-9.]+/, `mass_kg: ${(4 + round / 100).toFixed(2)}`);
  if (changed === text) throw new Error(`invalid file: nothing was weighed in ${file}`);
  writeFileSync(join(folder, file), changed);
  const [clock, processor] = [performance.now(), process.cpuUsage()];
  const loaded = loadGarden(folder, kept);
  if (!loaded.garden) throw new Error('invalid garden');
  await siteOf(bookOf(loaded, loaded.garden, null, kept), draw, '0.0.0');
  kept.save();
  const { user, system } = process.cpuUsage(processor);
  const took: Mark = { clock: (performance.now() - clock) / 1000, processor: (user + system) / 1e6 };
  if (round >= WARM_UP) process.stdout.write(`${JSON.stringify(took)}\n`);
}
