import type { FigureUnit } from '../figure.ts';
import type { Format } from '../format.ts';

/** A scale in SI whose ticks are whole steps of the print unit. */
export interface ValueScale {
  /** In SI. */
  readonly domain: readonly [number, number];
  /** Positions of the ticks, in SI. */
  readonly values: readonly number[];
  /** Vega expression that prints a tick. */
  readonly labelExpr: string;
}

const STEPS = [1, 2, 5];
const MOST_TICKS = 7;

/** From zero to the first whole step past the largest value. */
export function scaleFromZero(largest: number, unit: FigureUnit, format: Format): ValueScale {
  const perPrint = 1 / format.toPrint(1, unit);
  const top = largest > 0 ? format.toPrint(largest, unit) : 1;
  const step = stepFor(top);
  const count = Math.ceil(top / step - 1e-9);
  const ticks = Array.from({ length: count + 1 }, (_, index) => index * step);
  const labels = ticks.map((tick) => format.decimal(tick, decimalsOf(step)));
  return {
    domain: [0, count * step * perPrint],
    values: ticks.map((tick) => tick * perPrint),
    labelExpr: `${JSON.stringify(labels)}[round(datum.value / ${step * perPrint})]`,
  };
}

const decimalsOf = (step: number): number => (step < 1 ? Math.ceil(-Math.log10(step)) : 0);

/** From the whole step under the smallest value to the one past the largest. */
export function scaleAround(
  { smallest, largest, ticks: most }: { smallest: number; largest: number; ticks: number },
  unit: FigureUnit,
  format: Format,
): ValueScale {
  const zero = format.toPrint(0, unit);
  const toSi = (print: number): number => (print - zero) / (format.toPrint(1, unit) - zero);
  const [low, high] = [format.toPrint(smallest, unit), format.toPrint(largest, unit)];
  const step = stepFor(Math.max(high - low, 1), most);
  const [from, to] = [Math.floor(low / step), Math.max(Math.ceil(high / step), Math.floor(low / step) + 1)];
  const ticks = Array.from({ length: to - from + 1 }, (_, index) => (from + index) * step);
  const labels = ticks.map((tick) => format.decimal(tick, decimalsOf(step)));
  const perStep = toSi(step) - toSi(0);
  return {
    domain: [toSi(from * step), toSi(to * step)],
    values: ticks.map(toSi),
    labelExpr: `${JSON.stringify(labels)}[round((datum.value - ${toSi(from * step)}) / ${perStep})]`,
  };
}

/** The smallest of 1, 2, 5, 10 … that needs no more than a few ticks. */
function stepFor(top: number, most = MOST_TICKS): number {
  let power = 10 ** Math.floor(Math.log10(top / most));
  for (;;) {
    for (const step of STEPS) if (top / (step * power) <= most) return step * power;
    power *= 10;
  }
}
