import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { mersenne } from 'pure-rand/generator/mersenne';
import { expect, test } from 'vitest';
import { isSeq, parseDocument } from 'yaml';
import type { Garden } from '../../src/garden/garden.ts';
import { linkTexts, textsIn } from './garden-texts.ts';

type Turn = <T>(items: readonly T[]) => T[];

const backwards: Turn = (items) => [...items].reverse();

/** A shuffle after Fisher and Yates, the same for the same seed. */
function shuffle(seed: number): Turn {
  const chance = mersenne(seed);
  return (items) => {
    const mixed = [...items];
    for (let last = mixed.length - 1; last > 0; last--) {
      const other = uniformInt(chance, 0, last);
      [mixed[last], mixed[other]] = [mixed[other] as (typeof mixed)[number], mixed[last] as (typeof mixed)[number]];
    }
    return mixed;
  };
}

/** The same records, the files and each file's list or rows in another order; so too the beds and spots of the garden. */
function turned(texts: Readonly<Record<string, string>>, turn: Turn): Record<string, string> {
  return Object.fromEntries(turn(Object.entries(texts)).map(([path, text]) => [path, turnedText(path, text, turn)]));
}

function turnedText(path: string, text: string, turn: Turn): string {
  if (path.endsWith('.csv')) {
    const [header = '', ...rows] = text.split('\n').filter((line) => line !== '' && !line.startsWith('#'));
    return [header, ...turn(rows)].join('\n');
  }
  const document = parseDocument(text);
  const places = [document.get('beds'), document.get('spots')];
  for (const list of isSeq(document.contents) ? [document.contents] : places) {
    if (isSeq(list)) list.items = turn(list.items);
  }
  return document.toString();
}

/** The garden without its own record, which keeps beds and spots as they were written; spots are linked beside it. */
const linked = (texts: Readonly<Record<string, string>>): Omit<Garden, 'about'> | null => {
  const { garden } = linkTexts(texts);
  if (!garden) return null;
  const { about: _, ...rest } = garden;
  return rest;
};

/** What is wrong, without the lines that a turn moves. */
const codes = (texts: Readonly<Record<string, string>>): string[] =>
  linkTexts(texts)
    .problems.map(({ file, code }) => `${file} ${code}`)
    .sort();

for (const folder of ['data/starter', 'data/garden', 'tests/books/three-spots/garden']) {
  const texts = textsIn(folder);
  const turns: readonly [string, Turn][] = [
    ['backwards', backwards],
    ...[1, 2, 3].map((seed) => [`shuffled by ${seed}`, shuffle(seed)] as [string, Turn]),
  ];
  for (const [name, turn] of turns) {
    test(`${folder}, files and records ${name}, is the same garden`, () => {
      const other = turned(texts, turn);
      const moved = Object.entries(turned(texts, (items) => [...items])).filter(([path, text]) => other[path] !== text);
      expect(moved.length).toBeGreaterThanOrEqual(2);
      expect(linked(other)).toEqual(linked(texts));
      expect(codes(other)).toEqual(codes(texts));
    });
  }
}
