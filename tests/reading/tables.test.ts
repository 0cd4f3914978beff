import { describe, expect, test } from 'vitest';
import { linkTexts, placeOf, type Texts, textsIn } from './garden-texts.ts';

const starter = textsIn('data/starter');
const WEATHER = 'weather/back-step.csv';
const table = (text: string): Texts => ({ ...starter, [WEATHER]: text });
const placesOf = (text: string): string[] =>
  linkTexts(table(text)).problems.map((problem) => placeOf(problem).replace(`${WEATHER}:`, ''));
const daysOf = (text: string) => linkTexts(table(text)).garden?.stations[0]?.days ?? [];

describe('one delimiter, whichever the header has', () => {
  const expected = daysOf('date,rain_mm,tmax_c\n2025-08-12,3.5,30\n2025-08-13,,28\n');
  for (const [name, sign] of [
    ['semicolon', ';'],
    ['tab', '\t'],
  ] as const) {
    test(name, () => {
      const text = 'date,rain_mm,tmax_c\n2025-08-12,3.5,30\n2025-08-13,,28\n'.replaceAll(',', sign);
      expect(daysOf(text)).toEqual(expected);
      expect(daysOf(`# a, b, c, and, d\n\n${text}`)).toEqual(expected);
    });
  }

  test('the starter’s own table as a spreadsheet saves it where decimals have a comma', () => {
    const text = (starter[WEATHER] ?? '').replace(/^(?!#).*$/gm, (row) =>
      row.replaceAll(',', ';').replace('2.4', '2,4'),
    );
    expect(placesOf(text)).toEqual(['13:12 decimal-comma']);
  });
});

describe('a fault of the table stands at its line', () => {
  const CASES: readonly [string, string, string[]][] = [
    ['a column twice, under comments', '# one\n# two\ndate,rain_mm,rain_mm\n2025-08-12,1,2\n', ['3:1 column-twice']],
    ['an unknown column, once, in the header', '# one\ndate,cloud\n2025-08-12,1\n2025-08-13,2\n', ['2:6 unknown-key']],
    ['a column without its unit', 'date,tmax\n2025-08-12,30\n', ['1:6 unit-missing']],
    ['a dew point without its own', 'date,dew\n2025-08-12,14\n', ['1:6 unit-missing']],
    ['wind in two units on one day', 'date,wind_m_s,wind_km_h\n2025-08-12,2,7.2\n', ['2:14 two-units']],
    ['air more than full of damp', 'date,rh_max_pct,rh_min_pct\n2025-08-12,101,40\n', ['2:12 out-of-range']],
    ['damp as a part of one is a number all the same', 'date,rh_min_pct\n2025-08-12,0.4\n', []],
    ['a per cent sign in the cell', 'date,rh_min_pct\n2025-08-12,40%\n', ['2:12 unit-in-value']],
    ['more sun than a day has', 'date,sun_h\n2025-08-12,24.5\n', ['2:12 out-of-range']],
    ['wind that was guessed', 'date,wind_m_s\n2025-08-12,about 2\n', ['2:12 about-not-allowed']],
    ['more of the sun’s energy than reaches the ground', 'date,solar_mj_m2\n2025-08-12,45.1\n', ['2:12 out-of-range']],
    ['no date column', 'day,rain_mm\n2025-08-12,1\n', ['1:1 unknown-key']],
    ['a cell too many, and nothing read from its row', 'date,tmax_c,tmin_c\n2025-08-12,3,30,9\n', ['2:1 cell-count']],
    ['a cell too few', 'date,tmax_c,tmin_c\n2025-08-12,30\n', ['2:1 cell-count']],
    ['a quote not closed, where it opens', 'date,note\n2025-08-12,"open\n2025-08-13,b\n2025-08-14,c\n', ['2:1 csv']],
    ['a quote inside a text', 'date,note\n2025-08-12,a\n2025-08-13,the 12" pot\n', ['3:1 csv']],
    [
      'a cell of several lines before it',
      'date,rain_mm,note\n2025-08-12,1,"a\nb"\n2025-08-13,x,"c\nd"\n',
      ['4:12 not-a-number'],
    ],
    ['a comment between rows', 'date,rain_mm\n\n# no\n2025-08-12,1\n# no\n2025-08-13,x\n', ['6:12 not-a-number']],
    ['no header', '# only words\n', ['1:1 csv-empty']],
    ['an empty file', '', ['1:1 csv-empty']],
    ['names every object has', 'date,__proto__,constructor\n2025-08-12,1,2\n', ['1:6 unknown-key', '1:16 unknown-key']],
  ];
  for (const [name, text, places] of CASES) test(name, () => expect(placesOf(text)).toEqual(places));
});

test('columns a spreadsheet leaves empty are passed over', () => {
  expect(placesOf('date,rain_mm,,\n2025-08-12,1,,\n')).toEqual([]);
});
