import { describe, expect, test } from 'vitest';
import { seasonOf, yieldPages } from './yield-page.ts';

describe('how many of ten were sound', () => {
  /** One spot: so many whole fruits, so many split ones, so many nobody looked at. */
  const tenOf = (whole: number, split: number, unseen = 0) => {
    const picks = (count: number, pick: string): string[] => Array.from({ length: count }, () => pick);
    const all = [
      ...picks(whole, 'condition: whole'),
      ...picks(split, 'condition: split'),
      ...picks(unseen, 'reason: ripe'),
    ];
    return seasonOf({ spots: [{ variety: 'amber', picks: all }] }).sound_of_ten;
  };

  test('to the fruit, where it comes out even', () => {
    expect(tenOf(7, 3)).toEqual({ filled: 7, exact: true, of_all: true });
    expect(tenOf(10, 0)).toEqual({ filled: 10, exact: true, of_all: true });
    expect(tenOf(0, 10)).toEqual({ filled: 0, exact: true, of_all: true });
  });

  test('to the nearest tenth, and said to be about, where it does not', () => {
    expect(tenOf(8, 4)).toEqual({ filled: 7, exact: false, of_all: true });
    expect(tenOf(5, 7)).toEqual({ filled: 4, exact: false, of_all: true });
  });

  test('full or empty only when it is so to the last fruit', () => {
    expect(tenOf(29, 1)).toMatchObject({ filled: 9, exact: false });
    expect(tenOf(1, 29)).toMatchObject({ filled: 1, exact: false });
  });

  test('of those looked over, when a third at most was not', () => {
    expect(tenOf(8, 2, 2)).toEqual({ filled: 8, exact: true, of_all: false });
    expect(tenOf(7, 3, 5)).toMatchObject({ filled: 7, of_all: false });
    expect(tenOf(16, 4, 10)).toMatchObject({ filled: 8, of_all: false });
    expect(tenOf(16, 4, 11)).toBeNull();
  });

  test('not under ten fruits, nor where nobody looked', () => {
    expect(tenOf(9, 0)).toBeNull();
    expect(tenOf(0, 0, 20)).toBeNull();
  });
});

test('an earlier season has a page of its own, a season without a harvest is only named', () => {
  const season = (year: number): string => `label: ${year}\nstarts_on: ${year}-04-01\nends_on: ${year}-10-01\n`;
  const pages = yieldPages({
    spots: [{ variety: 'amber', picks: ['condition: whole'] }],
    more: {
      'seasons/2023/season.yaml': season(2023),
      'seasons/2024/season.yaml': season(2024),
      'seasons/2024/plantings.yaml': '- {id: E1, spot: S1, variety: unknown, planted_on: 2024-05-20, plants_set: 1}\n',
      'seasons/2024/pickings.yaml': '- {planting: E1, picked_on: 2024-08-12, count: 3}\n',
    },
  });
  expect([...pages.keys()]).toEqual(['yield/', 'yield/2024/']);
  expect(pages.get('yield/')?.model).toMatchObject({ season: { label: '2025', waiting: ['2023'] } });
  expect(pages.get('yield/2024/')).toMatchObject({
    title: 'What did we get in 2024?',
    listed: false,
    model: { season: { label: '2024', crops: [], unknown: { plantings: 1 } } },
  });
});

test('nothing picked in any season: the page says which it waits for', () => {
  const pages = yieldPages({ spots: [{ variety: 'amber', picks: [] }] });
  expect(pages.get('yield/')?.model).toEqual({ season: null, waiting: ['2025'] });
});
