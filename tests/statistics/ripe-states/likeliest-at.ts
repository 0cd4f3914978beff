/**
 * Where a function is highest near a start, by the simplex method of Nelder & Mead 1965, The Computer Journal 7:308-313
 * (from memory), begun again until it stays.
 */
export function likeliestAt(
  height: (at: readonly number[]) => number,
  start: readonly number[],
  size: number,
  close: number,
): readonly number[] {
  let best = start;
  for (let round = 0; round < 20; round++) {
    const next = simplex(height, best, size, close);
    const moved = Math.max(...next.map((one, k) => Math.abs(one - (best[k] ?? 0))));
    best = next;
    if (moved < 10 * close) break;
  }
  return best;
}

function simplex(
  height: (at: readonly number[]) => number,
  start: readonly number[],
  size: number,
  close: number,
): readonly number[] {
  const corner = (at: readonly number[]) => ({ at, height: height(at) });
  const corners = [start, ...start.map((one, k) => start.with(k, one + size))].map(corner);
  for (let step = 0; step < 2000; step++) {
    corners.sort((a, b) => b.height - a.height);
    const [best, worst] = [corners[0], corners.at(-1)];
    const second = corners.at(-2);
    if (!best || !worst || !second) break;
    const width = Math.max(...start.map((_, k) => Math.abs((best.at[k] ?? 0) - (worst.at[k] ?? 0))));
    if (width < close) break;
    const others = corners.slice(0, -1);
    const middle = start.map((_, k) => others.reduce((sum, { at }) => sum + (at[k] ?? 0), 0) / others.length);
    const along = (by: number) => corner(middle.map((one, k) => one + by * (one - (worst.at[k] ?? 0))));
    const mirrored = along(1);
    const wanted =
      mirrored.height > best.height
        ? [along(2), mirrored].sort((a, b) => b.height - a.height)[0]
        : mirrored.height > second.height
          ? mirrored
          : along(mirrored.height > worst.height ? 0.5 : -0.5);
    if (wanted && wanted.height > Math.min(worst.height, second.height)) corners[corners.length - 1] = wanted;
    else if (wanted && wanted.height > worst.height) corners[corners.length - 1] = wanted;
    else
      for (const [k, { at }] of corners.entries())
        if (k > 0) corners[k] = corner(at.map((one, j) => ((best.at[j] ?? 0) + one) / 2));
  }
  return corners[0]?.at ?? start;
}
