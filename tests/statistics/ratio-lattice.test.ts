import { expect, it } from 'vitest';
import { type RatioLattice, ratioLattice } from '../../src/statistics/ratio-lattice.ts';

const expected = ({ points }: RatioLattice, of: (ratios: readonly number[]) => number): number =>
  points.reduce((sum, { ratios, share }) => sum + share * of(ratios), 0);

it.each([{ scales: [1.5] }, { scales: [1.5, 0.5] }, { scales: [0.2, 1, 4] }, { scales: [1.5, 1, 0.5, 0.5] }])(
  'half-normal scales have their own squares: $scales',
  ({ scales }) => {
    const half = (ratios: readonly number[]): number =>
      -ratios.reduce((sum, ratio, k) => sum + (ratio / (scales[k] ?? 1)) ** 2, 0) / 2;
    const lattice = ratioLattice(
      half,
      scales.map((scale) => ({ scale, bend: 0.2 })),
    );
    expect(lattice.points.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    for (const [k, scale] of scales.entries()) {
      expect(Math.abs(expected(lattice, (ratios) => (ratios[k] ?? 0) ** 2) / scale ** 2 - 1)).toBeLessThan(0.01);
    }
  },
);

it('a bend of the likelihood near 0 is not stepped over', () => {
  // Density 1 / (1 + 400τ²) · exp(-τ²/2): ∫ is ½π/20 · exp(1/800) · erfc(1/√800) by Abramowitz & Stegun 7.4.11, and
  // τ² + 1/400 times it is √(π/2)/400, so that the mean of τ² is a quotient of the two. erfc from its series, 7.1.5.
  const root = 1 / Math.sqrt(800);
  const erfc = 1 - (2 / Math.sqrt(Math.PI)) * (root - root ** 3 / 3 + root ** 5 / 10);
  const whole = ((Math.PI / 2) * Math.exp(root ** 2) * erfc) / 20;
  const square = Math.sqrt(Math.PI / 2) / 400 / whole - 1 / 400;
  const lattice = ratioLattice(([tau = 0]) => -Math.log1p(400 * tau ** 2) - tau ** 2 / 2, [{ scale: 1, bend: 0.05 }]);
  expect(Math.abs(expected(lattice, ([tau = 0]) => tau ** 2) / square - 1)).toBeLessThan(0.001);
});

it('a ridge is followed to both its ends', () => {
  // On a ring τ₁² + τ₂² = 1 of width 0.05 each square has half of the whole.
  const ring = ([one = 0, other = 0]: readonly number[]): number => -(((one ** 2 + other ** 2 - 1) / 0.1) ** 2) / 2;
  const lattice = ratioLattice(ring, [
    { scale: 1, bend: 0.5 },
    { scale: 1, bend: 0.5 },
  ]);
  expect(expected(lattice, ([one = 0]) => one ** 2)).toBeCloseTo(0.5, 2);
  expect(expected(lattice, ([, other = 0]) => other ** 2)).toBeCloseTo(0.5, 2);
});

it('cells of the lattice lie side by side above 0', () => {
  const lattice = ratioLattice(([tau = 0]) => -(tau ** 2) / 2, [{ scale: 1, bend: 0.3 }]);
  const cells = lattice.points
    .map((point) => [lattice.withinCell(point, [0])[0] ?? Number.NaN, lattice.withinCell(point, [1])[0] ?? Number.NaN])
    .sort(([a = 0], [b = 0]) => a - b);
  expect(cells[0]?.[0]).toBeCloseTo(0, 12);
  for (const [at, [, end]] of cells.slice(0, -1).entries()) expect(cells[at + 1]?.[0]).toBeCloseTo(end ?? 0, 9);
});
