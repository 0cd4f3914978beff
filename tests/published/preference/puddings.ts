/**
 * Six chocolate puddings tasted two at a time: Davidson 1970, Journal of the American Statistical Association
 * 65:317-328, example 2. The counts are from R. Hankin's notes on the set (robinhankin.github.io/hyper2/pudding.html);
 * the estimates are the log-worths above the first pudding's, their standard errors and log ν that the introduction to
 * the package PlackettLuce prints as Davidson's, after seven rounds of his iteration.
 */
export const PUDDINGS = {
  /** One pudding, another, preferred the one, preferred the other, no preference. */
  tasted: [
    ['1', '2', 19, 22, 16],
    ['1', '3', 16, 19, 12],
    ['2', '3', 19, 19, 10],
    ['1', '4', 18, 23, 13],
    ['2', '4', 23, 19, 9],
    ['3', '4', 19, 20, 15],
    ['1', '5', 13, 19, 18],
    ['2', '5', 16, 20, 12],
    ['3', '5', 16, 15, 17],
    ['4', '5', 17, 14, 16],
    ['1', '6', 18, 21, 12],
    ['2', '6', 22, 20, 12],
    ['3', '6', 13, 18, 10],
    ['4', '6', 14, 19, 18],
    ['5', '6', 11, 21, 12],
  ] as const,
  tastings: 745,
  printed: {
    '2': ['0.2202', '0.1872'],
    '3': ['0.1530', '0.1935'],
    '4': ['0.1753', '0.1882'],
    '5': ['0.1339', '0.1927'],
    '6': ['0.3771', '0.1924'],
  } as const,
  printed_log_ties: ['-0.2919', '0.0825'] as const,
};
