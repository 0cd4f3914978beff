import { expect, test } from 'vitest';
import { type BlankSheet, blankColumn, sharesOf, sidesOf } from '../../src/book/blank-sheet.ts';

const column = (width: number) => blankColumn('plantings', [], 'spot', width);
const sheet = (known: readonly (readonly string[])[]): BlankSheet => ({
  id: 'any',
  title: 'Any',
  rule: 'Write.',
  columns: [column(10), column(20)],
  known,
  rows_a_sheet: 3,
  tall: false,
  landscape: false,
  cautions: [],
});

test('a column has the heading and the words of its record', () => {
  expect(blankColumn('fruits', ['cut'], 'sweet', 20)).toEqual({
    key: 'cut.sweet',
    title: 'How sweet',
    words: [
      { word: 'flat', code: '1', drawing: 'sweet-flat' },
      { word: 'faint', code: '2', drawing: 'sweet-faint' },
      { word: 'sweet', code: '3', drawing: 'sweet-sweet' },
      { word: 'very-sweet', code: '4', drawing: 'sweet-very-sweet' },
    ],
    drawn: false,
    width: 20,
  });
  expect(blankColumn('visits', ['fruits', 0], 'call', 20)).toMatchObject({ key: 'fruits.call', title: 'Call' });
  expect(blankColumn('fruits', ['pick'], 'mass_kg', 9)).toMatchObject({ title: 'Mass, kg', words: [] });
  expect(() => blankColumn('fruits', ['cut'], 'sweetness', 20)).toThrow(RangeError);
});

test('a sheet is filled up with blank rows, and what is known runs on', () => {
  expect(sidesOf(sheet([]))).toEqual([{ number: 1, of: 1, rows: Array(3).fill([null, null]) }]);
  const two = sidesOf(sheet([['a'], ['b', 'B'], ['c'], ['d']]));
  expect(two.map(({ number, of }) => [number, of])).toEqual([
    [1, 2],
    [2, 2],
  ]);
  expect(two.flatMap(({ rows }) => rows)).toEqual([
    ['a', null],
    ['b', 'B'],
    ['c', null],
    ['d', null],
    [null, null],
    [null, null],
  ]);
});

test('widths share a hundred', () => {
  expect(sharesOf([column(10), column(20)])).toEqual([33.3, 66.7]);
});
