import { describe, expect, test } from 'vitest';
import { byHand } from './by-hand.ts';
import { gardensOf } from './gardens.ts';
import { settingNamed } from './settings.ts';
import { writtenFruits } from './written.ts';

type Point = readonly [x: number, y: number];

/** Slope of the straight line of least squares through points with errors of one size, and its standard error. */
function line(points: readonly Point[]): { slope: number; error: number } {
  const n = points.length;
  const mean = (of: (point: Point) => number): number => points.reduce((sum, point) => sum + of(point), 0) / n;
  const [x0, y0] = [mean(([x]) => x), mean(([, y]) => y)];
  const sxx = n * mean(([x]) => (x - x0) ** 2);
  const slope = (n * mean(([x, y]) => (x - x0) * (y - y0))) / sxx;
  const left = n * mean(([x, y]) => (y - y0 - slope * (x - x0)) ** 2);
  return { slope, error: Math.sqrt(left / (n - 2) / sxx) };
}

describe.each([
  ['3 seasons in blocks', 0.03],
  ['3 seasons, rain dilutes nothing', 0],
  ['picked early before rain', 0.03],
  ['picked early before rain, rain dilutes nothing', 0],
])('%s', (name, dilution) => {
  const gardens = gardensOf(settingNamed(name), 15);
  const picks = gardens.flatMap(({ texts, truth }, garden) => {
    const hand = byHand(truth);
    return truth.seasons.flatMap(({ slug, fruits }) => {
      const written = new Map(writtenFruits(texts, slug).map((row) => [row.id, row]));
      return fruits.flatMap((fruit) => {
        const brix = written.get(fruit.id)?.cut?.brix_centre;
        if (!fruit.pick || !brix || fruit.pick.brix <= 1) return [];
        const { picked_on, ripeness_brix, day_effect_brix } = fruit.pick;
        const y = Number(brix) - fruit.traits.brix - ripeness_brix;
        return [
          { key: `${garden} ${picked_on}`, pick: fruit.pick, x: hand.window(picked_on), y, day: day_effect_brix },
        ];
      });
    });
  });

  test('rain counts from the third day before picking to the eve, and takes sugar by the slope', () => {
    expect(picks.length).toBeGreaterThan(1200);
    for (const { pick, x } of picks) {
      expect(pick.rain_window_mm).toBeCloseTo(x, 9);
      expect(pick.dilution_brix).toBeCloseTo(-dilution * x, 9);
    }
    expect(gardens.every(({ truth }) => truth.dilution_brix_per_mm === dilution)).toBe(true);
    for (const { truth } of gardens)
      for (const { date, rain_window_mm } of truth.seasons.flatMap(({ picking_days }) => picking_days))
        expect(rain_window_mm).toBeCloseTo(byHand(truth).window(date), 9);
  });

  // What is left about the line is the meter's error alone, the same for all fruits.
  test('least squares finds the slope in the records once sugar at prime, ripeness and day are out', () => {
    const { slope, error } = line(picks.map(({ x, y, day }) => [x, y - day]));
    expect(Math.abs(slope + dilution)).toBeLessThan(4 * error);
    expect(error).toBeLessThan(0.001);
  });

  // Fruits of a day share its effect, so a day is one point; days differ in number of fruits, but the day's own effect
  // is by far the larger part of a point's error.
  test('and with a point a day, the day left in', () => {
    const days = new Map<string, typeof picks>();
    for (const one of picks) days.set(one.key, [...(days.get(one.key) ?? []), one]);
    const { slope, error } = line(
      [...days.values()].map(
        (own): Point => [own[0]?.x ?? Number.NaN, own.reduce((s, { y }) => s + y, 0) / own.length],
      ),
    );
    expect(Math.abs(slope + dilution)).toBeLessThan(4 * error);
    expect(error).toBeLessThan(0.003);
  });
});
