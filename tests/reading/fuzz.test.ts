import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { mersenne } from 'pure-rand/generator/mersenne';
import { describe, expect, test } from 'vitest';
import { linkTexts, textsIn } from './garden-texts.ts';

type Draw = (most: number) => number;
type Edit = (text: string, draw: Draw) => string;

const lineEdit =
  (change: (line: string, draw: Draw, lines: readonly string[]) => string | readonly string[]): Edit =>
  (text, draw) => {
    const lines = text.split('\n');
    const at = draw(lines.length - 1);
    return lines.toSpliced(at, 1, ...[change(lines[at] ?? '', draw, lines)].flat()).join('\n');
  };

/** What a tired hand, a bad paste or a broken editor does to a file. */
const EDITS: Readonly<Record<string, Edit>> = {
  'lose a letter': (text, draw) => text.replace(text[draw(text.length - 1)] ?? '', ''),
  'lose a line': lineEdit(() => []),
  'say a line twice': lineEdit((line) => [line, line]),
  'swap two lines': lineEdit((line, draw, lines) => [lines[draw(lines.length - 1)] ?? '', line]),
  'lose an indent': lineEdit((line) => line.trimStart()),
  'add an indent': lineEdit((line) => ` ${line}`),
  'indent with a tab': lineEdit((line) => `\t${line.trimStart()}`),
  'lose a colon': lineEdit((line) => line.replace(':', '')),
  'add a colon': lineEdit((line) => `${line}: more`),
  'lose a dash': lineEdit((line) => line.replace('- ', '  ')),
  'change the case': lineEdit((line, draw) => (draw(1) ? line.toUpperCase() : line.toLowerCase())),
  'write a comma for a point': (text) => text.replace(/(\d)\.(\d)/, '$1,$2'),
  'cut the file short': (text, draw) => text.slice(0, draw(text.length)),
  'add an odd sign': (text, draw) => {
    const at = draw(text.length);
    return `${text.slice(0, at)}${['\u0000', '\u202e', '\ud800', '"', "'", '{', ']', '&', '*', '!', '%', '@', '`', '\u2028'][draw(13)]}${text.slice(at)}`;
  },
  'paste a value from elsewhere': lineEdit((line, draw, lines) =>
    line.replace(/:.*/, `:${(lines[draw(lines.length - 1)] ?? '').split(':')[1] ?? ''}`),
  ),
  'date it the other way': (text) => text.replace(/(\d{4})-(\d\d)-(\d\d)/, '$3/$2/$1'),
};

/** The same edits with records of the kinds the starter has none of. */
const starter = {
  ...textsIn('data/starter'),
  'crops/globe.yaml': 'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n',
};
const ROUNDS = 12;

describe('no edit of any file ends in anything but problems with places', () => {
  for (const path of Object.keys(starter)) {
    test(path, () => {
      let noticed = 0;
      for (const [index, [name, edit]] of Object.entries(EDITS).entries()) {
        for (let round = 0; round < ROUNDS; round++) {
          const chance = mersenne(1000 * index + round);
          const original = starter[path as keyof typeof starter];
          const text = edit(original, (most) => uniformInt(chance, 0, Math.max(most, 0)));
          const { problems, garden } = linkTexts({ ...starter, [path]: text });
          const lines = text.split(/\r\n|\n|\r/).length;
          for (const problem of problems) {
            const where = `${name}, round ${round}: ${JSON.stringify(problem)}`;
            expect(problem.code, where).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
            expect(problem.message, where).not.toBe('');
            expect(problem.column, where).toBeGreaterThanOrEqual(1);
            expect(problem.line, where).toBeGreaterThanOrEqual(1);
            if (problem.file === path) expect(problem.line, where).toBeLessThanOrEqual(lines);
          }
          const failed = problems.some(({ severity }) => severity === 'error');
          if (!failed) expect(garden, `${name}, round ${round}`).not.toBeNull();
          if (failed) noticed += 1;
        }
      }
      expect(noticed).toBeGreaterThan(20);
    });
  }
});
