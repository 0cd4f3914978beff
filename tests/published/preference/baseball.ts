/**
 * The games of seven teams of the American League East in 1987, thirteen between any two: Agresti 2002, Categorical
 * Data Analysis, 2nd ed., p. 438; whose field they were played on is of no matter here. The games are from the copy in
 * the package BradleyTerry2, the estimates those of table 10.11 as its tests give them, with standard errors "about
 * 0.3". Which estimate is whose is from memory; R gives the same (make.R).
 */
export const BASEBALL = {
  /** Home team, away team, home wins, away wins. */
  games: [
    ['Milwaukee', 'Detroit', 4, 3],
    ['Milwaukee', 'Toronto', 4, 2],
    ['Milwaukee', 'New York', 4, 3],
    ['Milwaukee', 'Boston', 6, 1],
    ['Milwaukee', 'Cleveland', 4, 2],
    ['Milwaukee', 'Baltimore', 6, 0],
    ['Detroit', 'Milwaukee', 3, 3],
    ['Detroit', 'Toronto', 4, 2],
    ['Detroit', 'New York', 4, 3],
    ['Detroit', 'Boston', 6, 0],
    ['Detroit', 'Cleveland', 6, 1],
    ['Detroit', 'Baltimore', 4, 3],
    ['Toronto', 'Milwaukee', 2, 5],
    ['Toronto', 'Detroit', 4, 3],
    ['Toronto', 'New York', 2, 4],
    ['Toronto', 'Boston', 4, 3],
    ['Toronto', 'Cleveland', 4, 2],
    ['Toronto', 'Baltimore', 6, 0],
    ['New York', 'Milwaukee', 3, 3],
    ['New York', 'Detroit', 5, 1],
    ['New York', 'Toronto', 2, 5],
    ['New York', 'Boston', 4, 3],
    ['New York', 'Cleveland', 4, 2],
    ['New York', 'Baltimore', 6, 1],
    ['Boston', 'Milwaukee', 5, 1],
    ['Boston', 'Detroit', 2, 5],
    ['Boston', 'Toronto', 3, 3],
    ['Boston', 'New York', 4, 2],
    ['Boston', 'Cleveland', 5, 2],
    ['Boston', 'Baltimore', 6, 0],
    ['Cleveland', 'Milwaukee', 2, 5],
    ['Cleveland', 'Detroit', 3, 3],
    ['Cleveland', 'Toronto', 3, 4],
    ['Cleveland', 'New York', 4, 3],
    ['Cleveland', 'Boston', 4, 2],
    ['Cleveland', 'Baltimore', 2, 4],
    ['Baltimore', 'Milwaukee', 2, 5],
    ['Baltimore', 'Detroit', 1, 5],
    ['Baltimore', 'Toronto', 1, 6],
    ['Baltimore', 'New York', 2, 4],
    ['Baltimore', 'Boston', 1, 6],
    ['Baltimore', 'Cleveland', 3, 4],
  ] as const,
  /** Log-worth above Baltimore's. */
  printed: {
    Milwaukee: '1.58',
    Detroit: '1.44',
    Toronto: '1.29',
    'New York': '1.25',
    Boston: '1.11',
    Cleveland: '0.68',
  },
};
