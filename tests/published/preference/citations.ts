/**
 * How often articles of one journal cite those of another, 1987 to 1989: Stigler 1994, Statistical Science 9:94-108, as
 * on p. 448 of Agresti 2002, Categorical Data Analysis, 2nd ed., from the copy in the package BradleyTerry2. Estimates
 * above Biometrika's as Firth 2005, Journal of Statistical Software 12(1), prints them (from memory; R gives the same,
 * make.R).
 */
export const CITATIONS = {
  /** Cited journal, citing journal, times. */
  cited: [
    ['Comm Statist', 'Biometrika', 33],
    ['JASA', 'Biometrika', 320],
    ['JRSS-B', 'Biometrika', 284],
    ['Biometrika', 'Comm Statist', 730],
    ['JASA', 'Comm Statist', 813],
    ['JRSS-B', 'Comm Statist', 276],
    ['Biometrika', 'JASA', 498],
    ['Comm Statist', 'JASA', 68],
    ['JRSS-B', 'JASA', 325],
    ['Biometrika', 'JRSS-B', 221],
    ['Comm Statist', 'JRSS-B', 17],
    ['JASA', 'JRSS-B', 142],
  ] as const,
  printed: { 'Comm Statist': '-2.94907', JASA: '-0.47957', 'JRSS-B': '0.26895' },
};
