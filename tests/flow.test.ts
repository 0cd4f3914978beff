import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { parse } from 'yaml';

/** What each folder may import, root leaves aside; DEVELOPERS.md draws the same. */
const READING = ['records', 'reading'];
const GARDEN = [...READING, 'garden'];
const BOOK = [...GARDEN, 'agronomy', 'statistics', 'ledger', 'book'];
const MAY: Readonly<Record<string, readonly string[]>> = {
  leaf: [],
  agronomy: ['agronomy'],
  statistics: ['statistics'],
  charts: ['charts'],
  disk: ['disk'],
  records: ['records'],
  reading: READING,
  garden: GARDEN,
  intake: [...GARDEN, 'intake'],
  field: ['records', 'field'],
  ledger: [...GARDEN, 'agronomy', 'statistics', 'ledger'],
  book: BOOK,
  content: [...BOOK, 'charts'],
  site: [...BOOK, 'charts', 'disk', 'site'],
  print: [...BOOK, 'charts', 'disk', 'site', 'print'],
  cli: [...BOOK, 'intake', 'charts', 'disk', 'site', 'print', 'contents', 'cli'],
};

const folderOf = (file: string): string => {
  const [root, folder = ''] = file.split('/');
  if (root === 'content') return folder === 'contents.ts' ? 'contents' : 'content';
  return folder.endsWith('.ts') ? 'leaf' : folder;
};

/** Imports that go against the flow, as "from -> to". */
function wrongImports(imports: readonly (readonly [string, string])[]): string[] {
  return imports
    .filter(([from, to]) => {
      const [source, target] = [folderOf(from), folderOf(to)];
      if (source === 'contents') return target !== 'content' && target !== 'book';
      if (source === 'content' && target === 'content') return from.split('/')[1] !== to.split('/')[1];
      return target !== 'leaf' && !MAY[source]?.includes(target);
    })
    .map(([from, to]) => `${from} -> ${to}`);
}

/** A file on a cycle of imports, or null. */
function onCycle(imports: readonly (readonly [string, string])[]): string | null {
  const goals = new Map<string, string[]>();
  for (const [from, to] of imports) goals.set(from, [...(goals.get(from) ?? []), to]);
  const done = new Set<string>();
  const visit = (file: string, trail: readonly string[]): string | null => {
    if (trail.includes(file)) return file;
    if (done.has(file)) return null;
    const found = (goals.get(file) ?? []).map((goal) => visit(goal, [...trail, file])).find((cycle) => cycle !== null);
    done.add(file);
    return found ?? null;
  };
  return [...goals.keys()].map((file) => visit(file, [])).find((cycle) => cycle !== null) ?? null;
}

const filesUnder = (folder: string, ending: RegExp): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && ending.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name));

const sources = [...filesUnder('src', /\.ts$/), ...filesUnder('content', /\.ts$/)];
const imports = sources.flatMap((file) =>
  ts
    .preProcessFile(readFileSync(file, 'utf8'))
    .importedFiles.filter(({ fileName }) => fileName.startsWith('.'))
    .map(({ fileName }) => [file, normalize(join(dirname(file), fileName))] as const),
);

test('imports run one way and in no circle', () => {
  expect(imports.length).toBeGreaterThan(200);
  expect(wrongImports(imports)).toEqual([]);
  expect(onCycle(imports)).toBeNull();
});

/** A folder within a folder of src stands for its files. */
const innerFolder = (file: string): string => (file.split('/').length > 3 ? dirname(file) : file);

test('nor do folders of one part lean on each other', () => {
  const between = imports
    .map(([from, to]) => [innerFolder(from), innerFolder(to)] as const)
    .filter(([from, to]) => from !== to);
  expect(onCycle(between)).toBeNull();
});

test('the check sees a wrong import and a circle', () => {
  expect(wrongImports([['src/records/fruit.ts', 'src/reading/source.ts']])).toHaveLength(1);
  expect(wrongImports([['src/site/draw.ts', 'content/yield/charts.ts']])).toHaveLength(1);
  expect(wrongImports([['content/front/chapter.ts', 'content/yield/charts.ts']])).toHaveLength(1);
  expect(wrongImports([['src/statistics/interval.ts', 'src/ledger/tally.ts']])).toHaveLength(1);
  expect(wrongImports([['src/cli/build.ts', 'content/yield/chapter.ts']])).toHaveLength(1);
  expect(wrongImports([['src/figure.ts', 'src/book/page.ts']])).toHaveLength(1);
  expect(wrongImports([['src/statistics/interval.ts', 'src/figure.ts']])).toEqual([]);
  expect(wrongImports([['src/cli/build.ts', 'content/contents.ts']])).toEqual([]);
  expect(
    onCycle([
      ['a.ts', 'b.ts'],
      ['b.ts', 'c.ts'],
      ['c.ts', 'a.ts'],
    ]),
  ).not.toBeNull();
});

test('code asks for traits, never for the name of a crop or variety', () => {
  const crops = filesUnder('data/reference/crops', /\.yaml$/).map((file) => parse(readFileSync(file, 'utf8')));
  const varieties = ['data/garden', 'data/starter'].flatMap((folder) =>
    parse(readFileSync(join(folder, 'varieties.yaml'), 'utf8')),
  );
  const names: string[] = [...crops, ...varieties]
    .flatMap(({ id, name, names: one, plurals: many }) => [
      id,
      name,
      ...[one, many].flatMap((words) => Object.values(words ?? {})),
    ])
    .filter(Boolean);
  expect(names.length).toBeGreaterThan(10);
  const code = [...sources, ...filesUnder('content', /\.njk$/), ...filesUnder('layouts', /\.(njk|yaml|css)$/)];
  const named = code.flatMap((file) => {
    const text = readFileSync(file, 'utf8').toLowerCase();
    return names
      .filter((name) => new RegExp(`\\b${name.toLowerCase()}\\b`).test(text))
      .map((name) => `${file}: ${name}`);
  });
  expect(named).toEqual([]);
});

/** Ways to tell the compiler or the linter to look away. */
const LOOK_AWAY = /@ts-(ignore|nocheck|expect-error)|biome-ignore|\b(as|:) any\b|<any>|\bany\[\]|eslint-disable/;

test('nothing is silenced and nothing is any', () => {
  expect('const a = b as any;').toMatch(LOOK_AWAY);
  expect('// @ts-expect-error').toMatch(LOOK_AWAY);
  const silenced = sources.flatMap((file) =>
    readFileSync(file, 'utf8')
      .split('\n')
      .flatMap((line, index) => (LOOK_AWAY.test(line) ? [`${file}:${index + 1}: ${line.trim()}`] : [])),
  );
  expect(silenced).toEqual([]);
});

/** Which packages a folder may import; Node's own modules touch the disk, so they keep to the outer folders. */
const PACKAGES: Readonly<Record<string, RegExp>> = {
  leaf: /^$/,
  agronomy: /^$/,
  statistics: /^(jstat|ml-matrix|pure-rand\/.*)$/,
  charts: /^vega-lite$/,
  records: /^zod$/,
  reading: /^(yaml|csv-parse\/sync|zod)$/,
  garden: /^$/,
  ledger: /^node:crypto$/,
  book: /^(zod|vega-lite)$/,
  content: /^vega-lite$/,
};

test('inner folders stay pure: no disk, no clock, and each package where it belongs', () => {
  const used = sources.flatMap((file) =>
    ts
      .preProcessFile(readFileSync(file, 'utf8'))
      .importedFiles.filter(({ fileName }) => !fileName.startsWith('.'))
      .map(({ fileName }) => [file, fileName] as const),
  );
  expect(used.length).toBeGreaterThan(40);
  expect(used.filter(([file, name]) => !(PACKAGES[folderOf(file)] ?? /./).test(name))).toEqual([]);
  expect(new Set(used.filter(([, name]) => name === '@11ty/eleventy').map(([file]) => file))).toEqual(
    new Set(['src/site/eleventy.ts']),
  );
  const clocks = sources.filter((file) => /\bDate\.now\(|new Date\(\)|Math\.random\(/.test(readFileSync(file, 'utf8')));
  expect(clocks.filter((file) => !/^src\/(cli|disk)\//.test(file))).toEqual([]);
});
