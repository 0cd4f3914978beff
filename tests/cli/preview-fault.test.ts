import { expect, test, vi } from 'vitest';
import { ask } from '../site/preview/asking.ts';
import { previewed } from './previewing.ts';

const program = vi.hoisted(() => ({ isBroken: false }));
vi.mock('../../src/cli/make-book.ts', async (original) => {
  const real = await original<typeof import('../../src/cli/make-book.ts')>();
  const siteOf: typeof real.siteOf = (...inputs) => {
    if (program.isBroken) throw new Error('invalid <page>: a gear slipped');
    return real.siteOf(...inputs);
  };
  return { ...real, siteOf };
});

test('a fault of the program is a page too, and the next save tries again', async () => {
  const { address, becomes, edit, said } = await previewed('data/starter');
  const before = (await ask(address, '/yield/')).text;
  program.isBroken = true;
  edit('seasons/2025/fruits.yaml', 'mass_kg: 3.35', 'mass_kg: 5.35');
  await becomes('/yield/', 'What went wrong in the program?');
  const { status, text } = await ask(address, '/yield/');
  expect(status).toBe(503);
  expect(text).toContain('invalid &lt;page&gt;: a gear slipped');
  expect(said.join('\n')).toMatch(/a gear slipped\n +at /);
  expect((await ask(address, '/-/last-good/yield/')).text).toBe(before);
  program.isBroken = false;
  edit('seasons/2025/fruits.yaml', 'mass_kg: 5.35', 'mass_kg: 4.35');
  await becomes('/yield/', '<td class="n">8.4</td>');
  expect((await ask(address, '/yield/')).status).toBe(200);
});
