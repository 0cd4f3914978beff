import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { parseDay } from '../../src/day.ts';
import { finishedPdf } from '../../src/print/finished-pdf.ts';
import { openPrinter, type Printer } from '../../src/print/printer.ts';
import { chromiumOrSay } from '../site/chromium.ts';
import { readPdf } from './pdf-reading.ts';

const path = chromiumOrSay('the printer: no network, no script');
const LONG = 60_000;

describe.skipIf(path === null)('the printer', () => {
  let printer: Printer;
  const asked: string[] = [];
  const proxy = createServer(({ url }, response) => {
    asked.push(url ?? '');
    response.end();
  });
  // Whatever the browser asks of the web goes to this proxy, which needs no name to be found for it.
  beforeAll(async () => {
    await new Promise<void>((ready) => proxy.listen(0, '127.0.0.1', ready));
    vi.stubEnv('http_proxy', `http://127.0.0.1:${(proxy.address() as AddressInfo).port}`);
    printer = await openPrinter(path ?? '');
  }, LONG);
  afterAll(async () => {
    await printer?.close();
    proxy.close();
    vi.unstubAllEnvs();
  });

  test(
    'reads its files from memory, asks nobody else and runs no script',
    async () => {
      const elsewhere = 'http://garden.example';
      const html =
        `<!doctype html><html lang="en"><head><title>T</title><link rel="stylesheet" href="../own.css">` +
        `<link rel="stylesheet" href="${elsewhere}/other.css"></head><body><p>told</p><img alt="" src="${elsewhere}/x.png">` +
        `<script>document.body.textContent = 'scripted'</script></body></html>`;
      const files = new Map([
        ['own.css', '@page { size: 300pt 200pt } p { font-size: 20pt; text-transform: uppercase }'],
      ]);
      const { pages } = await readPdf(await printer.print(html, 'a/b.html', files));
      expect(asked).toEqual([]);
      expect(pages).toHaveLength(1);
      expect(pages[0]?.texts.map(({ text, size }) => [text, Math.round(size)])).toEqual([['TOLD', 20]]);
      expect([pages[0]?.width, pages[0]?.height].map((side) => Math.round(side ?? 0))).toEqual([300, 200]);
    },
    LONG,
  );

  test(
    'gives the same bytes for the same document a second later, once it is finished',
    async () => {
      const row = '<tr><th scope="row">a</th><td>1</td></tr>';
      const html = `<!doctype html><html lang="en"><head><title>T</title></head><body><h1>Head</h1><table><thead><tr><th scope="col">x</th><th scope="col">y</th></tr></thead><tbody>${row}${row}</tbody></table></body></html>`;
      const about = { title: 'T', author: 'A', creator: 'C', lang: 'en', day: parseDay('2025-08-12') };
      const once = async (): Promise<string> => {
        const pdf = await printer.print(html, 'a.html', new Map());
        return Buffer.from(await finishedPdf(pdf, new Set(['Head']), about)).toString('latin1');
      };
      const finished = await once();
      // Chromium writes the second of the clock.
      await sleep(1100);
      expect(await once()).toBe(finished);
    },
    LONG,
  );

  test(
    'says so when the browser is gone',
    async () => {
      const gone = await openPrinter(path ?? '');
      await gone.close();
      await expect(gone.print('<!doctype html><title>T</title>', 'a.html', new Map())).rejects.toMatchObject({
        code: 'chromium-failed',
      });
    },
    LONG,
  );
});
