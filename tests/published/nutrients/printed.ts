/** Nutrients by mass, as printed. */

/**
 * Element in its oxide. Three places: Mattilsynet (Norwegian Food Safety Authority), "Hva er forskjell på P og P2O5?",
 * 2013, read at mattilsynet.no, factors also of Regulation (EU) 2019/1009 (from memory). Two: Penn State Extension, "How
 * Much Phosphorus and Potassium are Really in Your Fertilizer?", 2022, read at plantscience.psu.edu. Four, for P: usual
 * in handbooks, from memory. The 0.8301 for K that goes with it is cut off, not rounded.
 */
export const ELEMENT_IN_OXIDE = { p: ['0.436', '0.44', '0.4364'], k: ['0.830', '0.83'], k_cut_off: 0.8301 };

/** % P in 4.0 % P₂O₅, by that page. */
export const MATTILSYNET_P_IN_4 = '1.7';

/** % by Penn State's page, of P in 20 % P₂O₅ and of K in 10 % K₂O; it reckons with two places. */
export const PENN_STATE = { p_in_20: 8.8, k_in_10: 8.3 };

/**
 * Nitrogen of organic materials: per cent, pounds a ton of 2000 lb, tons spread an acre, pounds an acre. Ohio State
 * University Extension, fact sheet ANR-34, table 1 (read).
 */
export const ANR_34: readonly (readonly [percent: number, lb_ton: string, tons: number, lb_acre: string])[] = [
  [0.8, '16.0', 4, '64.0'],
  [0.89, '17.8', 4, '71.2'],
  [1.01, '20.2', 4, '80.8'],
  [1.75, '35.0', 2, '70.0'],
  [2.01, '40.2', 2, '80.4'],
  [2.5, '50', 2, '100'],
  [4, '80', 2, '160'],
];

/** Of the row 0.96 % the table prints 19.1 lb a ton where arithmetic gives 19.2, and 76.4 an acre from the 19.1. */
export const ANR_34_MISPRINT = { percent: 0.96, lb_ton: 19.1 };
