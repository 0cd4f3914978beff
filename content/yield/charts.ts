import type { Facts } from '../../src/book/chapter.ts';
import type { Chart } from '../../src/book/chart.ts';
import { estimateRows } from '../../src/charts/estimate-rows.ts';
import type { Comparison } from '../../src/ledger/comparison.ts';
import { unitOf } from '../../src/ledger/measure.ts';
import type { CropYield, SeasonYield } from '../../src/ledger/season-yield.ts';
import { moundsTable } from './tables.ts';

/** Every variety's mounds and mean on one axis; the same axis for this crop and measure in every season. */
export function varietyChart(
  facts: Facts,
  season: SeasonYield,
  crop: CropYield,
  names: { many: string },
  comparison: Comparison,
): Chart {
  const unit = unitOf(comparison.measure, 'plant');
  const { slug, label } = season.season;
  const rows = comparison.means.map(({ variety, mounds, mean }) => ({
    name: variety.name,
    values: mounds.map(({ value }) => value),
    estimate:
      mean.value === null || !mean.interval
        ? null
        : { value: mean.value, low: mean.interval.low, high: mean.interval.high },
    count: String(mounds.length),
  }));
  const strip =
    comparison.means.find(({ variety, mean }) => variety.yardstick === true && mean.value !== null)?.variety.name ??
    null;
  const axisTitle = `${AXIS_WORDS[comparison.measure]}, ${facts.format.unitLabel(unit)}`;
  return {
    id: `yield-${slug.toLowerCase()}-${crop.crop.id.toLowerCase()}`,
    title: `What each variety gave, ${names.many}, ${label}`,
    description: describe(facts, comparison),
    spec: estimateRows({ rows, unit, axisTitle, strip, largest: largestOf(facts, crop, comparison) }, facts.format),
    table: moundsTable(season, crop, comparison),
  };
}

const AXIS_WORDS = {
  kg: 'all fruit',
  sound_kg: 'sound fruit',
  fruits: 'all fruit',
  sound_fruits: 'sound fruit',
} as const;

function describe({ format }: Facts, { means, measure }: Comparison): string {
  const unit = unitOf(measure, 'plant');
  const lines = means.map(({ variety, mounds, mean }) => {
    if (mean.value === null || !mean.interval)
      return `${variety.name}: ${mounds.length === 0 ? 'nothing to show' : mounds.map(({ value }) => format.digits(value, unit)).join(', ')}`;
    return `${variety.name}: ${format.amount(mean.value, unit)}, range ${format.range(mean.interval, unit)}`;
  });
  return `${lines.join('. ')}.`;
}

/** The largest mound or upper end of this crop and measure over all seasons, in SI. */
function largestOf({ ledger }: Facts, { crop }: CropYield, { measure }: Comparison): number {
  const comparisons = ledger.yields.flatMap(({ crops }) =>
    crops.filter((other) => other.crop.id === crop.id).map((other) => other.comparisons[measure]),
  );
  const ends = comparisons.flatMap(({ means }) =>
    means.flatMap(({ mounds, mean }) => [...mounds.map(({ value }) => value), mean.interval?.high ?? 0]),
  );
  return Math.max(0, ...ends);
}
