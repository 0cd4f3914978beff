/** Tanks and taps, as printed. */

/**
 * Area of a circle below a level line, in squares of its diameter, by depth in diameters: hydraulic elements of a
 * circular channel after Chow, Open-channel hydraulics, 1959, as printed by engdatabase.com (read).
 */
export const CIRCLE_BELOW: readonly (readonly [depth: number, area: string])[] = [
  [0.05, '0.014681'],
  [0.1, '0.040875'],
  [0.15, '0.073875'],
  [0.55, '0.442616'],
  [0.6, '0.492028'],
  [0.65, '0.540418'],
  [0.7, '0.587230'],
  [0.75, '0.631852'],
  [0.8, '0.673574'],
];

/**
 * Worked example of Torricelli’s law by calculatorlib.com (read): 1 m² of water 2 m deep through a hole of 0.01 m² leaves
 * at 3.884 m/s to begin with and is gone after 102.99 s.
 */
export const TORRICELLI = { volume_l: 2000, first_l_s: 38.84, printed_s: '102.99' };
