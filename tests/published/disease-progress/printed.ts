/** Areas under disease progress curves: days, severities, area. */
interface Curve {
  readonly days: readonly number[];
  readonly severities: readonly number[];
  readonly area: number;
  readonly source: string;
}

export const CURVES: readonly Curve[] = [
  {
    days: [14, 21, 28],
    severities: [40, 80, 90],
    // The page's text says 1045; its own figure, 7 · 60 + 7 · 85, says 1015.
    area: 1015,
    source: 'help page of audpc in the R package agricolae (read)',
  },
  {
    days: [0, 2, 5, 6],
    severities: [1, 2, 7, 7.5],
    // The page gives the numbers and the formula and leaves the sum to the reader: 3 + 13.5 + 7.25.
    area: 23.75,
    source: 'American Phytopathological Society, Ecology and Epidemiology in R, AUDPC (read)',
  },
];
