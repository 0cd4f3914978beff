import { spawn } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { describe, expect, onTestFinished, test } from 'vitest';
import { loadGarden } from '../../src/cli/load-garden.ts';
import { bookOf, siteOf } from '../../src/cli/make-book.ts';
import { openPreview } from '../../src/cli/preview.ts';
import { Refusal } from '../../src/disk/refusal.ts';
import { createDraw } from '../../src/site/draw.ts';
import type { Files } from '../../src/site/preview/shelf.ts';
import { scratch } from '../disk/scratch.ts';
import { ask } from '../site/preview/asking.ts';
import { hashOf } from './command.ts';
import { previewed } from './previewing.ts';

const GARDEN = 'data/starter';
const FRUITS = 'seasons/2025/fruits.yaml';

/** What `build` would write for a garden with an edit, made from nothing. Before a preview: one process builds one at a time. */
async function builtWith(from: string, to: string): Promise<Files> {
  const folder = join(scratch(), 'garden');
  cpSync(resolve(GARDEN), folder, { recursive: true });
  const text = readFileSync(join(folder, FRUITS), 'utf8');
  writeFileSync(join(folder, FRUITS), text.replace(from, to));
  const loaded = loadGarden(folder);
  if (!loaded.garden) throw new Error('invalid test garden');
  return siteOf(bookOf(loaded, loaded.garden, null), createDraw(), '0.0.0');
}

describe('a save', () => {
  test('turns the page into what is wrong, and back once it is put right', async () => {
    const { address, becomes, edit, said } = await previewed(GARDEN);
    const before = await ask(address, '/yield/');
    expect(before).toMatchObject({ status: 200 });

    edit(FRUITS, 'mass_kg: 3.35', 'mass_kg: 3,35');
    await becomes('/yield/', '<mark>3,35</mark>');
    const wrong = await ask(address, '/yield/');
    expect(wrong.status).toBe(503);
    expect(wrong.text).toContain(`${FRUITS}:14:14`);
    expect(wrong.text).toContain('<mark>3,35</mark>');
    expect(wrong.text).toContain('write 3.35');
    expect((await ask(address, '/-/last-good/yield/')).text).toBe(before.text);
    expect(said.join('\n')).toContain('[decimal-comma]');

    edit(FRUITS, 'mass_kg: 3,35', 'mass_kg: 5.35');
    await becomes('/yield/', '<td class="n">9.4</td>');
    const right = await ask(address, '/yield/');
    expect(right.status).toBe(200);
    const [mass, heavier] = ['<td class="n">7.4</td>', '<td class="n">9.4</td>'];
    expect([before.text.includes(mass), before.text.includes(heavier)]).toEqual([true, false]);
    expect([right.text.includes(mass), right.text.includes(heavier)]).toEqual([false, true]);
  });

  test('shows what build would write, and writes nothing itself', async () => {
    const site = await builtWith('mass_kg: 3.35', 'mass_kg: 5.35');
    const { address, becomes, edit, folder } = await previewed(GARDEN);
    edit(FRUITS, 'mass_kg: 3.35', 'mass_kg: 5.35');
    await becomes('/yield/', '<td class="n">9.4</td>');
    const hash = hashOf(folder);
    const bodyOf = (html: string): string => html.slice(html.indexOf('<body'));
    for (const [name, content] of site) {
      if (name.endsWith('.woff2')) continue;
      const { status, text } = await ask(address, `/${name}`);
      expect([name, status]).toEqual([name, 200]);
      expect(bodyOf(text), name).toBe(bodyOf(String(content)));
    }
    expect(hashOf(folder)).toBe(hash);
    expect(['site', '.groundspot'].filter((name) => existsSync(join(folder, name)))).toEqual([]);
  });

  test('fifty quick ones end with the last, in far fewer builds', async () => {
    const last = (await builtWith('mass_kg: 3.35', 'mass_kg: 3.150')).get('data/figures.json');
    const { address, until, builds, folder } = await previewed(GARDEN);
    const text = readFileSync(join(folder, FRUITS), 'utf8');
    const figures = async (): Promise<string> => (await ask(address, '/data/figures.json')).text;
    const before = await figures();
    for (let save = 1; save <= 50; save += 1) {
      writeFileSync(join(folder, FRUITS), text.replace('mass_kg: 3.35', `mass_kg: 3.${save + 100}`));
      await sleep(save % 10 === 0 ? 60 : 5);
    }
    expect(last).not.toBe(before);
    await until(async () => (await figures()) === last);
    expect(await figures()).toBe(last);
    expect(builds()).toBeLessThan(25);
  });
});

test('a season added, a file deleted, and the garden gone and back', async () => {
  const { address, until, folder } = await previewed(GARDEN);
  const shows = async (status: number, words: string): Promise<boolean> => {
    const { status: now, text } = await ask(address, '/');
    return now === status && text.includes(words);
  };
  const season = (name: string): string => join(folder, 'seasons', name);
  expect(await shows(200, '2026')).toBe(false);
  mkdirSync(season('2026'));
  for (const file of ['season.yaml', 'plantings.yaml']) {
    const text = readFileSync(join(season('2025'), file), 'utf8').replaceAll('2025', '2026');
    writeFileSync(join(season('2026'), file), text);
  }
  await until(() => shows(200, '2026 season'));

  rmSync(join(season('2026'), 'season.yaml'));
  await until(() => shows(503, 'seasons/2026/'));
  rmSync(season('2026'), { recursive: true });
  await until(() => shows(200, '2025 season'));

  const aside = join(scratch(), 'aside');
  cpSync(folder, aside, { recursive: true });
  for (const name of ['garden.yaml', 'varieties.yaml', 'lots.yaml', 'seasons', 'weather'])
    rmSync(join(folder, name), { recursive: true });
  await until(() => shows(503, 'Why is there no handbook?'));
  cpSync(aside, folder, { recursive: true });
  await until(() => shows(200, '2025 season'));
});

test('begins with a page of what is wrong, and no handbook to fall back on', async () => {
  const { address, until, edit } = await previewed(GARDEN, (folder) => {
    const path = join(folder, 'garden.yaml');
    writeFileSync(path, readFileSync(path, 'utf8').replace('units: metric', 'units: cubits'));
  });
  const { status, text } = await ask(address, '/');
  expect(status).toBe(503);
  expect(text).toContain('garden.yaml:');
  expect(text).toContain('No handbook yet');
  expect((await ask(address, '/assets/book.css')).status).toBe(200);
  edit('garden.yaml', 'units: cubits', 'units: metric');
  await until(async () => (await ask(address, '/')).status === 200);
});

test('refuses a folder that is not there or holds no garden', async () => {
  const options = { port: 0, today: null, version: '0.0.0' };
  const effects = { say: () => {}, shown: () => {} };
  const empty = scratch();
  for (const [folder, code] of [
    [join(empty, 'nowhere'), 'not-found'],
    [empty, 'no-garden'],
  ] as const) {
    const refused = await openPreview(folder, options, effects).catch((error: unknown) => error);
    expect(refused).toBeInstanceOf(Refusal);
    expect(refused).toMatchObject({ code });
  }
});

describe('the command', () => {
  test.each(['SIGINT', 'SIGTERM'] as const)('ends cleanly on %s', async (signal) => {
    const folder = join(scratch(), 'garden');
    cpSync(resolve(GARDEN), folder, { recursive: true });
    const main = resolve('.build/src/cli/main.js');
    const child = spawn(process.execPath, [main, 'preview', folder, '--port', '0', '--today', '2025-08-20'], {
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    onTestFinished(() => void child.kill('SIGKILL'));
    let said = '';
    const ended = new Promise<readonly [number | null, string | null]>((done) =>
      child.on('exit', (code, killed) => done([code, killed])),
    );
    const address = await new Promise<string>((done) =>
      child.stderr.setEncoding('utf8').on('data', (piece: string) => {
        said += piece;
        const found = /^open +(http:\S+)/m.exec(said)?.[1];
        if (found) done(found);
      }),
    );
    expect((await ask(address, '/')).status).toBe(200);
    expect(said).toContain(' pages as of 2025-08-20 in ');
    expect(
      said
        .trim()
        .split('\n')
        .map((line) => line.split(' ')[0]),
    ).toEqual(['checked', 'made', 'open']);
    const listening = ask(address, '/-/changes?page=%2F').catch(() => null);
    child.kill(signal);
    expect(await ended).toEqual([0, null]);
    await listening;
    expect(said).toMatch(/^closed$/m);
  });
});
