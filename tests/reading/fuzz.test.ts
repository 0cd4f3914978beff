import { isDeepStrictEqual } from 'node:util';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { mersenne } from 'pure-rand/generator/mersenne';
import { describe, expect, test } from 'vitest';
import { codeFrame } from '../../src/reading/code-frame.ts';
import type { Problem } from '../../src/reading/problem.ts';
import { linkBeside, textsIn } from './garden-texts.ts';

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
  'seasons/2025/mulching.yaml': `- laid_on: 2025-06-14
  spots: [M1, T1]
  work: laid
  material: straw
  cover_of_ten: 8
  depth_cm: 5.5
`,
  'seasons/2025/tastings.yaml': `- tasted_on: 2025-08-25
  fruit: M1-F2
  against: T1-F1
  sweeter: 2
  better: less
- tasted_on: 2025-08-25
  fruit: T1-F1
  against: M1-F2
  note: With lemon.
- tasted_on: 2025-08-26
  best_first: [T1-F1, M1-F1, M1-F2]
  sweetest_first: [M1-F1, T1-F1]
`,
};
const ROUNDS = 24;
/** Edits that most often leave no record to read. */
const SURE = ['indent with a tab', 'lose a colon', 'swap two lines'];

/** What a problem lacks that it must have; empty when it has all. */
function faultsOf(problem: Problem, path: string, text: string): string[] {
  const { file, line, column, code, message } = problem;
  const lines = text.split(/\r\n|\n|\r/).length;
  const holds: Readonly<Record<string, boolean>> = {
    'a code in kebab-case': /^[a-z0-9]+(-[a-z0-9]+)*$/.test(code),
    'a message': message !== '',
    'a file': file !== '',
    'a place': line >= 1 && column >= 1,
    'a line of its file': file !== path || line <= lines,
    'a frame': file !== path || codeFrame(text, problem).endsWith('^'),
    'only plain data': isDeepStrictEqual(JSON.parse(JSON.stringify(problem)), problem),
  };
  return Object.keys(holds).filter((name) => !holds[name]);
}

describe('no edit of any file ends in anything but problems with places', () => {
  for (const [path, original] of Object.entries(starter)) {
    test(path, () => {
      // Only the edited file is read anew; the others are read once.
      const { [path]: _, ...others } = starter as Readonly<Record<string, string>>;
      const linkWith = linkBeside(others);
      const noticed = new Map<string, number>();
      for (const [index, [name, edit]] of Object.entries(EDITS).entries()) {
        for (let round = 0; round < ROUNDS; round++) {
          const chance = mersenne(1000 * index + round);
          const text = edit(original, (most) => uniformInt(chance, 0, Math.max(most, 0)));
          const { problems, garden } = linkWith({ [path]: text });
          const faulty = problems.filter((problem) => faultsOf(problem, path, text).length > 0);
          expect(faulty, `${name}, round ${round}`).toEqual([]);
          const failed = problems.some(({ severity }) => severity === 'error');
          expect(failed || garden !== null, `${name}, round ${round}`).toBe(true);
          if (failed) noticed.set(name, (noticed.get(name) ?? 0) + 1);
        }
      }
      expect([...noticed.values()].reduce((sum, count) => sum + count, 0)).toBeGreaterThan(60);
      // Nothing in a table is an indent or a colon.
      if (!path.endsWith('.csv')) for (const sure of SURE) expect(noticed.get(sure) ?? 0, sure).toBeGreaterThan(2);
    });
  }
});
