import { type Figure, type FigureUnit, reckoned } from '../../src/figure.ts';

type FigureOf = (name: string, value: number, unit: FigureUnit) => Figure;

/** Figures of the tank that share a basis and a method; `years` are the past years under each. */
export const figureOf =
  (basis: string, method: string, source: string | null, years = 0): FigureOf =>
  (name, value, unit) =>
    reckoned({
      id: `water.tank.${name}`,
      value,
      unit,
      n: years,
      replicate: years > 0 ? { kind: 'year', count: years } : null,
      method,
      source,
      basis,
    });
