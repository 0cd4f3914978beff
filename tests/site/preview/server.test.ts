import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { connect } from 'node:net';
import { networkInterfaces } from 'node:os';
import { expect, onTestFinished, test } from 'vitest';
import { Refusal } from '../../../src/disk/refusal.ts';
import { startServer } from '../../../src/site/preview/server.ts';
import type { Shelf } from '../../../src/site/preview/shelf.ts';
import { ask, listenTo, sendRaw, served } from './asking.ts';

const POLICY = "default-src 'none'; script-src 'self'";
const page = (words: string): string =>
  `<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n<meta http-equiv="Content-Security-Policy" content="${POLICY}">\n<title>A page</title>\n</head>\n<body>\n<p>${words}</p>\n</body>\n</html>\n`;

const shelf = (yields = 'two fruits', fault: string | null = null): Shelf => ({
  good: new Map<string, string | Uint8Array>([
    ['index.html', page('contents')],
    ['yield/index.html', page(yields)],
    ['data/figures.json', '{}'],
    ['data/table.csv', 'a,b\n'],
    ['assets/book.css', 'p{}'],
    ['assets/fonts/face.woff2', new Uint8Array([1, 2, 3])],
  ]),
  fault,
  assets: new Map([['assets/book.css', 'p{color:red}']]),
  missing: page('no such page'),
});

test('gives pages and files their media type, kept nowhere and guessed nowhere', async () => {
  const { address } = await served(shelf());
  const types = {
    '/': 'text/html; charset=utf-8',
    '/index.html': 'text/html; charset=utf-8',
    '/yield/': 'text/html; charset=utf-8',
    '/yield/?season=2025': 'text/html; charset=utf-8',
    '/data/figures.json': 'application/json; charset=utf-8',
    '/data/table.csv': 'text/csv; charset=utf-8',
    '/assets/book.css': 'text/css; charset=utf-8',
    '/assets/fonts/face.woff2': 'font/woff2',
    '/-/reload.js': 'text/javascript; charset=utf-8',
  };
  for (const [target, type] of Object.entries(types)) {
    const { status, headers } = await ask(address, target);
    expect([target, status, headers['content-type']]).toEqual([target, 200, type]);
    expect(headers['cache-control']).toBe('no-store');
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(headers['cross-origin-resource-policy']).toBe('same-origin');
    expect(headers['access-control-allow-origin']).toBeUndefined();
  }
  expect((await ask(address, '/data/table.csv')).text).toBe('a,b\n');
});

test('sends a folder named without its last stroke to the folder', async () => {
  const { address } = await served(shelf());
  expect(await ask(address, '/yield')).toMatchObject({ status: 307, headers: { location: '/yield/' } });
});

// OWASP, "Path Traversal": encoded, doubly encoded, overlong, absolute and backslash forms.
test.each([
  '/../package.json',
  '/..%2f..%2fpackage.json',
  '/..%2fx',
  '/%2e%2e/%2e%2e/package.json',
  '/%252e%252e%252fpackage.json',
  '/..%5c..%5cpackage.json',
  '/..\\..\\package.json',
  '/yield/../../package.json',
  '/yield/%2e%2e/index.html',
  '//etc/passwd',
  '/%2fetc%2fpasswd',
  '/etc/passwd',
  '/C:/Windows/win.ini',
  '/index.html%00.css',
  '/%00',
  '/yield/index.html/',
  '/package.json',
  '/src/cli/main.ts',
  '/__proto__',
  '/constructor',
  '/-/last-good/..%2f..%2fpackage.json',
  '/-/last-good//etc/passwd',
  'http://127.0.0.1/index.html',
  '*',
])('%s names nothing', async (target) => {
  const { address } = await served(shelf());
  const { status, text } = await ask(address, target);
  expect(status).toBe(404);
  expect(text).toContain('no such page');
});

test.each(['/%', '/%zz', '/%c0%ae%c0%ae/', '/%ff', '/-/changes?page=%2F%25'])('%s cannot be read', async (target) => {
  const { address } = await served(shelf());
  expect((await ask(address, target)).status).toBe(400);
  expect((await ask(address, '/')).status).toBe(200);
});

test('lines that are not HTTP end their own connection only', async () => {
  const { address } = await served(shelf());
  const host = new URL(address).host;
  for (const text of [
    'hello\r\n\r\n',
    `GET / HTTP/9.9\r\nHost: ${host}\r\n\r\n`,
    'GET / HTTP/1.1\r\n\r\n',
    `GET /\u0000 HTTP/1.1\r\nHost: ${host}\r\n\r\n`,
    `GET / HTTP/1.1\r\nHost: ${host}\r\nX: ${'a'.repeat(40_000)}\r\n\r\n`,
  ])
    expect((await sendRaw(address, text)).split('\r\n')[0]).toMatch(/^HTTP\/1\.1 4\d\d /);
  expect((await ask(address, '/')).status).toBe(200);
});

test('is only read', async () => {
  const { address } = await served(shelf());
  for (const method of ['POST', 'PUT', 'DELETE', 'PATCH', 'OPTIONS', 'TRACE']) {
    const { status, headers } = await ask(address, '/', { method });
    expect([method, status, headers.allow]).toEqual([method, 405, 'GET, HEAD']);
  }
  const [head, whole] = [await ask(address, '/yield/', { method: 'HEAD' }), await ask(address, '/yield/')];
  expect(head.text).toBe('');
  expect(whole.text).toContain('two fruits');
  const undated = ({ headers }: typeof head): object => ({ ...headers, date: null });
  expect(undated(head)).toEqual(undated(whole));
  expect(head.headers['content-length']).toBe(String(Buffer.byteLength(whole.text)));
});

test('answers to its own names only', async () => {
  const { address } = await served(shelf());
  const { port } = new URL(address);
  for (const host of [`127.0.0.1:${port}`, `localhost:${port}`, `LOCALHOST:${port}`])
    expect((await ask(address, '/', { headers: { host } })).status, host).toBe(200);
  for (const host of [
    'evil.test',
    `evil.test:${port}`,
    '127.0.0.1',
    'localhost:1',
    `127.0.0.1.evil.test:${port}`,
    `[::1]:${port}`,
  ]) {
    const { status, text } = await ask(address, '/', { headers: { host } });
    expect([host, status]).toEqual([host, 421]);
    expect(text).not.toContain('contents');
  }
  for (const text of ['GET / HTTP/1.1\r\nHost:\r\nConnection: close\r\n\r\n', 'GET / HTTP/1.0\r\n\r\n'])
    expect((await sendRaw(address, text)).split('\r\n')[0]).toMatch(/ 421 /);
});

test('listens on this machine’s own address and no other', async () => {
  const { address } = await served(shelf());
  const { hostname, port } = new URL(address);
  expect(hostname).toBe('127.0.0.1');
  const others = Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .map((one) => one.address)
    .filter((one) => one !== '127.0.0.1');
  for (const host of ['127.0.0.2', ...others]) {
    const answered = await new Promise<boolean>((done) => {
      const socket = connect({ host, port: Number(port), timeout: 2000 }, () => done(true));
      socket.on('error', () => done(false)).on('timeout', () => done(false));
      onTestFinished(() => void socket.destroy());
    });
    expect([host, answered]).toEqual([host, false]);
  }
});

test('tells a page of its own changes', async () => {
  const { address, show } = await served(shelf());
  const [yields, contents] = [await listenTo(address, '/yield/'), await listenTo(address, '/')];
  expect(yields.headers['content-type']).toBe('text/event-stream; charset=utf-8');
  const mark = /data-mark="([^"]+)"/.exec((await ask(address, '/yield/')).text)?.[1];
  const [first, before] = [await yields.next(), await contents.next()];
  expect(first).toBe(mark);
  show(shelf('three fruits'));
  expect(await yields.next()).not.toBe(first);
  expect(await contents.next()).toBe(before);
});

test('the stream is for its own pages', async () => {
  const { address } = await served(shelf());
  const { port } = new URL(address);
  const status = async (headers: Record<string, string>): Promise<number> =>
    (await ask(address, '/-/changes?page=%2F', { headers, method: 'HEAD' })).status;
  expect(await status({ origin: `http://127.0.0.1:${port}`, 'sec-fetch-site': 'same-origin' })).toBe(200);
  expect(await status({ origin: `http://localhost:${port}` })).toBe(200);
  expect(await status({ origin: 'http://evil.test' })).toBe(403);
  expect(await status({ origin: 'http://127.0.0.1:1' })).toBe(403);
  expect(await status({ origin: 'null' })).toBe(403);
  expect(await status({ 'sec-fetch-site': 'cross-site' })).toBe(403);
  expect(await status({ 'sec-fetch-site': 'same-site' })).toBe(403);
});

test('while something is wrong one page stands for all, and the last good handbook beside it', async () => {
  const { address, show } = await served(shelf('two fruits', page('what is wrong')));
  for (const target of ['/', '/yield/', '/nowhere/', '/data/figures.json']) {
    const { status, text, headers } = await ask(address, target);
    expect([target, status, headers['content-type']]).toEqual([target, 503, 'text/html; charset=utf-8']);
    expect(text).toContain('what is wrong');
  }
  expect((await ask(address, '/assets/book.css')).text).toBe('p{color:red}');
  expect((await ask(address, '/-/last-good/yield/')).text).toContain('two fruits');
  expect((await ask(address, '/-/last-good/yield')).headers.location).toBe('/-/last-good/yield/');
  expect((await ask(address, '/-/last-good/nowhere/')).status).toBe(404);
  const reader = await listenTo(address, '/-/last-good/yield/');
  const before = await reader.next();
  show(shelf('three fruits'));
  expect(await reader.next()).not.toBe(before);
  expect((await ask(address, '/-/last-good/yield/')).headers.location).toBe('/yield/');
});

test('a page keeps its policy, and may hear of changes beside', async () => {
  const { address } = await served(shelf());
  const { text, headers } = await ask(address, '/yield/');
  expect(headers['content-security-policy']).toBe(`${POLICY}; connect-src 'self'; frame-ancestors 'none'`);
  expect(text).not.toMatch(/http-equiv/i);
  expect(text.match(/<script/g)).toHaveLength(1);
});

test('closing ends what still listens', async () => {
  const server = await startServer(shelf(), { first: 0, tries: 1 });
  const listening = await listenTo(server.address, '/');
  await listening.next();
  await server.close();
  expect(await listening.next()).toBeNull();
  await expect(ask(server.address, '/')).rejects.toThrow('ECONNREFUSED');
});

test('takes the next free port where it may, and refuses plainly where it may not', async () => {
  const other = createServer();
  await new Promise<void>((done) => other.listen(0, '127.0.0.1', done));
  onTestFinished(() => void other.close());
  const { port } = other.address() as AddressInfo;
  const server = await startServer(shelf(), { first: port, tries: 50 });
  onTestFinished(server.close);
  expect(Number(new URL(server.address).port)).toBeGreaterThan(port);
  const refused = await startServer(shelf(), { first: port, tries: 1 }).catch((error: unknown) => error);
  expect(refused).toBeInstanceOf(Refusal);
  expect(refused).toMatchObject({ code: 'port-taken' });
});
