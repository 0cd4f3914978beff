import type { Facts } from '../../src/book/chapter.ts';
import type { Chart } from '../../src/book/chart.ts';
import { scatterBand } from '../../src/charts/scatter-band.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { CropRain } from '../../src/ledger/rain-sugar/crop-rain.ts';
import { dayLabels } from './day-labels.ts';
import { readingsTable } from './tables.ts';

const LINE_STEPS = 20;

/** Sugar against rain, fruit by fruit, with what else differs taken out where there is a fit. Null without a reading. */
export function rainChart({ garden, format }: Facts, found: CropRain): Chart | null {
  const { crop, readings, apart, fit, settings } = found;
  if (readings.length === 0) return null;
  const nameOf = (id: string): string => garden.varieties.find((one) => one.id === id)?.name ?? id;
  const fitted = readings.map((one, index) => ({ ...one, y: fit?.partial_brix[index] ?? one.brix }));
  const labels = dayLabels(found, fitted, format);
  const beside = apart.flatMap((one, index) => {
    const y = fit ? (fit.apart_brix[index] ?? null) : one.brix;
    return y === null ? [] : [{ ...one, y }];
  });
  const points = [...fitted, ...beside].map(({ key, rain_mm, variety, forecast, y }) => ({
    x: rain_mm,
    y,
    kind: nameOf(variety),
    label: labels.get(key) ?? null,
    apart: forecast,
  }));
  const line = fit && lineOf(points.slice(0, readings.length), fit);
  const { many } = cropNames(crop, garden.about.locale);
  return {
    id: `rain-${crop.id.toLowerCase()}`,
    title: `Sugar of ripe ${many} against the rain before picking`,
    description: `${format.count(readings.length)} fruits, with ${format.amount(Math.min(...points.map(({ x }) => x)), 'mm')} to ${format.amount(Math.max(...points.map(({ x }) => x)), 'mm')} of rain in the ${settings.rain_days} days before picking.`,
    spec: scatterBand(
      {
        points,
        xUnit: 'mm',
        yUnit: 'brix',
        xTitle: `rain in the ${settings.rain_days} days before picking, ${format.unitLabel('mm')}`,
        yTitle: `sugar, ${format.unitLabel('brix')}${fit ? ', all else taken out' : ''}`,
        line,
      },
      format,
    ),
    table: readingsTable(found),
  };
}

/** The line through the middle of the marks, and the band its slope's range sweeps. */
function lineOf(
  points: readonly { readonly x: number; readonly y: number }[],
  { estimate, interval }: NonNullable<CropRain['fit']>,
) {
  const mean = (of: (point: { x: number; y: number }) => number): number =>
    points.reduce((sum, point) => sum + of(point), 0) / points.length;
  const [mx, my] = [mean(({ x }) => x), mean(({ y }) => y)];
  const most = Math.max(...points.map(({ x }) => x));
  return Array.from({ length: LINE_STEPS + 1 }, (_, step) => {
    const x = (step * most) / LINE_STEPS;
    const turned = [interval.low, interval.high].map((slope) => my + slope * (x - mx));
    return { x, y: my + estimate * (x - mx), low: Math.min(...turned), high: Math.max(...turned) };
  });
}
