/**
 * A diagnostic test of 744 ill and 842 well: 670 and 202 tested positive (Scott, Greenberg & Poole 2008, as the help
 * page of epiR's epi.tests prints it): from memory; the formula of Simel, Samsa & Matchar 1991, Journal of Clinical
 * Epidemiology 44:763-770, gives every printed digit.
 */
export const SCOTT = {
  yes: { shown: 670, looked: 744 },
  no: { shown: 202, looked: 842 },
  level: 0.95,
  positive: { ratio: '3.75', low: '3.32', high: '4.24' },
  negative: { ratio: '0.13', low: '0.11', high: '0.16' },
} as const;
