/**
 * Weeks in remission of 21 leukaemia patients on 6-mercaptopurine; `high` null where remission still held. Freireich
 * et al. 1963, Blood 21:699-716, as in Cox & Oakes 1984 and most textbooks. Data and printed values from memory; R
 * 4.2.2 with survival 3.5.3 gives every printed digit from these data (make.R).
 */
const SEEN = [6, 6, 6, 7, 10, 13, 16, 22, 23];
const HELD = [6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35];

export const LEUKAEMIA = {
  observations: [
    ...SEEN.map((week) => ({ low: week, high: week })),
    ...HELD.map((week) => ({ low: week, high: null })),
  ],
  /** Week, patients at risk, relapses, share still in remission, its standard error. */
  printed: [
    [6, 21, 3, '0.857', '0.0764'],
    [7, 17, 1, '0.807', '0.0869'],
    [10, 15, 1, '0.753', '0.0963'],
    [13, 12, 1, '0.690', '0.1068'],
    [16, 11, 1, '0.627', '0.1141'],
    [22, 7, 1, '0.538', '0.1282'],
    [23, 6, 1, '0.448', '0.1346'],
  ] as const,
  median: 23,
};
