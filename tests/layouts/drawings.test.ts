import { readdirSync, readFileSync } from 'node:fs';
import { parseFragment } from 'parse5';
import { describe, expect, test } from 'vitest';

const folder = new URL('../../layouts/drawings/', import.meta.url);
const files = readdirSync(folder).sort();
const read = (name: string) => readFileSync(new URL(`${name}.svg`, folder), 'utf8');

/** Every step of a sign that has a picture; a card or sheet asks for these by name. */
const signs: Record<string, string[]> = {
  tendril: ['green', 'wilting', 'half-brown', 'dry'],
  'ground-spot': ['none', 'white', 'cream', 'butter', 'deep'],
  sound: ['ringing', 'hollow', 'dull', 'unsure'],
  rind: ['glossy', 'matte'],
  nail: ['marks', 'resists'],
  slip: ['none', 'half', 'full'],
  parted: ['lift', 'tug', 'cut'],
  stalk: ['corky', 'green'],
  flower: ['male', 'female', 'set'],
};
const singles = ['days', 'size', 'colour-change', 'ground-colour', 'smell', 'over-ripe', 'split', 'wasp'];
const steps = Object.entries(signs).flatMap(([sign, values]) => values.map((value) => `${sign}-${value}`));
const small = [...steps, ...singles];
const cover = 'melon-vine';

const shape = /^<(?:path|ellipse|circle)(?: [a-z][a-zA-Z-]*="[^"<>&]*")+\/>$/;
const open = /^<(?:svg|g)(?: [a-z][a-zA-Z-]*="[^"<>&]*")+>$/;

/** What keeps a drawing from being well-formed XML made of shapes only, or null. */
function malformed(svg: string): string | null {
  const tags = svg.match(/<[^>]*>/g) ?? [];
  if (tags.join('') !== svg.trimEnd()) return 'text between the tags';
  const stack: string[] = [];
  for (const [i, tag] of tags.entries()) {
    if (i > 0 && stack.length === 0) return `${tag} after the root`;
    if (open.test(tag)) stack.push(tag.slice(1, tag.indexOf(' ')));
    else if (tag.startsWith('</')) {
      if (tag !== `</${stack.pop()}>`) return `${tag} closes nothing`;
    } else if (!shape.test(tag)) return `${tag} is not a shape`;
  }
  if (stack.length > 0) return `${stack.join(' ')} left open`;
  const faults: string[] = [];
  parseFragment(svg, { onParseError: (fault) => faults.push(fault.code) });
  return faults[0] ?? null;
}

/** The values of one attribute in the order they are written. */
function values(svg: string, name: string): string[] {
  return [...svg.matchAll(new RegExp(` ${name}="([^"]*)"`, 'g'))].map((match) => match[1] ?? '');
}

function names(svg: string): string[] {
  return [...svg.matchAll(/ ([a-zA-Z-]+)=/g)].map((match) => match[1] ?? '');
}

const allowed = new Set(
  'xmlns viewBox fill stroke stroke-width stroke-linecap stroke-linejoin stroke-dasharray transform d cx cy r rx ry'.split(
    ' ',
  ),
);

test('there is one drawing for each step of each sign, and none that nobody asks for', () => {
  expect(files).toEqual([...small, cover].map((name) => `${name}.svg`).sort());
});

test('no two drawings are the same', () => {
  expect(new Set(files.map((file) => readFileSync(new URL(file, folder), 'utf8'))).size).toBe(files.length);
});

describe.each([...small, cover])('%s', (name) => {
  const svg = read(name);

  test('is well-formed and has shapes only: no text, style, script, link or id', () => {
    expect(malformed(svg)).toBeNull();
    expect(names(svg).filter((each) => !allowed.has(each))).toEqual([]);
  });

  test('has the frame of its kind and no size of its own', () => {
    expect(values(svg, 'viewBox')).toEqual([name === cover ? '0 0 480 300' : '0 0 48 36']);
    expect(svg.startsWith('<svg xmlns="http://www.w3.org/2000/svg" ')).toBe(true);
  });

  test('is drawn in ink, with white to hide and butter for the ground spot alone', () => {
    expect(new Set(values(svg, 'stroke'))).toEqual(new Set(['currentColor']));
    const butter = name === 'ground-spot-butter' || name === 'ground-spot-deep';
    const fills = ['none', 'currentColor', '#fff', ...(butter ? ['#e8c765'] : [])];
    expect(values(svg, 'fill').filter((fill) => !fills.includes(fill))).toEqual([]);
    expect(svg.includes('#e8c765')).toBe(butter);
  });

  test('keeps to the weight of the hand', () => {
    const [least, most] = name === cover ? [1.6, 2.2] : [1.2, 2.4];
    const widths = values(svg, 'stroke-width').map(Number);
    expect(widths.length).toBeGreaterThan(0);
    expect(widths.filter((width) => !(width >= least && width <= most))).toEqual([]);
  });

  test('is small and written to one decimal', () => {
    expect(Buffer.byteLength(svg)).toBeLessThanOrEqual(name === cover ? 9000 : 1250);
    expect(svg.match(/\.\d{2,}/g)).toBeNull();
  });
});

/** Ink on the ground spot within its dashed edge, in square units: hatch as length by width, dots as discs. */
function inkOnSpot(step: string): number | null {
  const svg = read(`ground-spot-${step}`);
  const edge = / stroke-dasharray="[^"]*"\/>/.exec(svg);
  if (!edge) return null;
  const paths = [...svg.slice(edge.index).matchAll(/<path d="([^"]*)" stroke-width="([\d.]+)"/g)];
  return paths.reduce((sum, [, d = '', width]) => {
    const w = Number(width);
    const strokes = [...d.matchAll(/M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)/g)].map((m) => m.slice(1).map(Number));
    const lengths = strokes.map(([x1 = 0, y1 = 0, x2 = 0, y2 = 0]) => Math.hypot(x2 - x1, y2 - y1));
    const discs = (d.match(/h\.1/g) ?? []).length * Math.PI * (w / 2) ** 2;
    return sum + discs + w * lengths.reduce((total, length) => total + length, 0);
  }, 0);
}

test('each step of the ground spot has at least half as much ink again as the last, colour aside', () => {
  expect(inkOnSpot('none')).toBeNull();
  expect(inkOnSpot('white')).toBe(0);
  const [cream, butter, deep] = ['cream', 'butter', 'deep'].map((step) => inkOnSpot(step) ?? 0);
  expect(cream).toBeGreaterThan(10);
  expect(butter).toBeGreaterThan(1.5 * (cream ?? 0));
  expect(deep).toBeGreaterThan(1.5 * (butter ?? 0));
});

/** Ends of the straight strokes of a path written with M, H, V and Z only: x1, y1, x2, y2. */
function straights(d: string): [number, number, number, number][] {
  let [x, y, startX, startY] = [0, 0, 0, 0];
  return [...d.matchAll(/([MHVZ])([\d. ]*)/g)].flatMap(([, command, rest]) => {
    const [first = Number.NaN, second = Number.NaN] = (rest ?? '').split(' ').map(Number);
    const from: [number, number] = [x, y];
    if (command === 'M') [x, y, startX, startY] = [first, second, first, second];
    else if (command === 'Z') [x, y] = [startX, startY];
    else if (command === 'H') x = first;
    else y = first;
    return command === 'M' ? [] : [[...from, x, y]];
  });
}

test('the calendar leaf leaves 16 by 12 units free in the middle for its number', () => {
  const svg = read('days');
  expect(values(svg, 'd').filter((d) => !/^[MHVZ\d. ]+$/.test(d))).toEqual([]);
  const strokes = values(svg, 'd').flatMap(straights);
  expect(strokes.length).toBeGreaterThanOrEqual(8);
  const half = 2.4 / 2;
  const inside = strokes.filter(
    ([x1, y1, x2, y2]) =>
      Math.min(x1, x2) - half < 32 &&
      Math.max(x1, x2) + half > 16 &&
      Math.min(y1, y2) - half < 24 &&
      Math.max(y1, y2) + half > 12,
  );
  expect(inside).toEqual([]);
});
