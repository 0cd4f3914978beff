/** How sure the book may say it is, in twentieths. */

export const OF = 20;

/**
 * The most that may be claimed, of 20, by the seasons both were grown. One summer cannot tell a variety from what that
 * summer made of it, and two hardly: simulated claims beyond these came true less often than they said (see the slow
 * report of varieties). Nobody is ever wholly sure.
 */
export const mostOf = (seasons: number): number => (seasons <= 1 ? 16 : seasons === 2 ? 18 : 19);

/** A share of 1 in twentieths, no nearer to all or none than so many seasons allow. */
export function twentieths(share: number, seasons: number): number {
  const most = mostOf(seasons);
  return Math.min(Math.max(Math.round(OF * share), OF - most), most);
}
