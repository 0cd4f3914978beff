/**
 * Exact two-sided p of Spearman's rank correlation of an order with 1, 2, 3 …, over all n! orders: R 4.2.2,
 * cor.test(method = "spearman", exact = TRUE). `CRITICAL`: the least ρ with p of 0.05 or less, by n, as the printed
 * tables have it (Zar 1972, JASA 67:578-580, from memory).
 */
export const ORDERS: readonly { order: readonly number[]; rho: string; p: number }[] = [
  { order: [1, 2, 3, 4, 5], rho: '1.000', p: 2 / 120 },
  { order: [2, 1, 3, 4, 5], rho: '0.900', p: 0.0833333333333 },
  { order: [1, 3, 2, 4, 6, 5], rho: '0.886', p: 0.0333333333333 },
  { order: [1, 2, 5, 4, 3, 6], rho: '0.771', p: 0.102777777778 },
  { order: [2, 4, 1, 3, 5, 7, 6], rho: '0.786', p: 0.0480158730159 },
  { order: [4, 2, 1, 3, 5, 6, 7], rho: '0.750', p: 0.0662698412698 },
  { order: [3, 1, 2, 5, 4, 7, 6], rho: '0.821', p: 0.034126984127 },
];

export const CRITICAL: Readonly<Record<number, number>> = { 5: 1, 6: 0.886, 7: 0.786 };
