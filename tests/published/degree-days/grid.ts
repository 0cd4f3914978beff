/**
 * Days warm, cold and hot, by every method. No publisher printed these: computed with R 4.2.2, the sine and the
 * triangle as the mean over a day in 200 000 steps of the wave and of the straight lines, not by the closed formulas.
 * Sources of the methods: McMaster & Wilhelm 1997 (abstract read); Baskerville & Emin 1969 for the sine and Zalom et
 * al. 1983 for the triangle (from memory); UC IPM for the horizontal cut-off (glossary read).
 */

/** Without a cap: sine, triangle. With horizontal cut-off at the cap: sine_cut, triangle_cut. */
const COLUMNS = ['average', 'clipped', 'sine', 'sine_cut', 'triangle', 'triangle_cut'] as const;

const FAHRENHEIT_50_86 = `
  60/40    0.000000   5.000000   3.183099   3.183099   2.500000   2.500000
  60/35    0.000000   5.000000   2.808720   2.808720   2.000000   2.000000
  65/40    2.500000   7.500000   5.308720   5.308720   4.500000   4.500000
  90/48   19.000000  18.000000  19.186125  18.657068  19.047619  18.857143
  90/70   30.000000  28.000000  30.000000  29.224524  30.000000  29.600000
  80/60   20.000000  20.000000  20.000000  20.000000  20.000000  20.000000
  45/30    0.000000   0.000000   0.000000   0.000000   0.000000   0.000000
  95/88   41.500000  36.000000  41.500000  36.000000  41.500000  36.000000
`;

const CELSIUS_15_32 = `
  24/8     1.000000   4.500000   3.066399   3.066399   2.531250   2.531250
  30/12    6.000000   7.500000   6.528965   6.528965   6.250000   6.250000
  36/18   12.000000  10.000000  12.000000  11.180515  12.000000  11.555556
  14/5     0.000000   0.000000   0.000000   0.000000   0.000000   0.000000
  20/10    0.000000   2.500000   1.591549   1.591549   1.250000   1.250000
`;

interface GridDay {
  readonly name: string;
  readonly tmax: number;
  readonly tmin: number;
  readonly base: number;
  readonly cap: number;
  readonly heats: Readonly<Record<(typeof COLUMNS)[number], string>>;
}

function daysOf(table: string, base: number, cap: number): GridDay[] {
  return table
    .trim()
    .split('\n')
    .map((line) => {
      const [name = '', ...cells] = line.trim().split(/\s+/);
      const [tmax = Number.NaN, tmin = Number.NaN] = name.split('/').map(Number);
      const heat = (column: (typeof COLUMNS)[number]): string => cells[COLUMNS.indexOf(column)] ?? '';
      const heats = {
        average: heat('average'),
        clipped: heat('clipped'),
        sine: heat('sine'),
        sine_cut: heat('sine_cut'),
        triangle: heat('triangle'),
        triangle_cut: heat('triangle_cut'),
      };
      return { name, tmax, tmin, base, cap, heats };
    });
}

export const GRID: readonly GridDay[] = [...daysOf(FAHRENHEIT_50_86, 50, 86), ...daysOf(CELSIUS_15_32, 15, 32)];
