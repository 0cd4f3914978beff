import type { Facts } from '../../src/book/chapter.ts';
import type { Chart } from '../../src/book/chart.ts';
import type { Figure, FigureUnit } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { Comparison, Difference } from '../../src/ledger/comparison.ts';
import { mainMeasure } from '../../src/ledger/main-measure.ts';
import { type Measure, unitOf } from '../../src/ledger/measure.ts';
import type { LeftOut } from '../../src/ledger/mounds.ts';
import type { CropYield, SeasonYield } from '../../src/ledger/season-yield.ts';
import { varietyChart } from './charts.ts';

export interface CropSection {
  readonly id: string;
  readonly names: { readonly one: string; readonly many: string };
  readonly measure: Measure;
  readonly unit: FigureUnit;
  /** How its spots are spoken of. */
  readonly kind: string;
  readonly rows: readonly VarietyRow[];
  /** Varieties with single values and no range. */
  readonly too_few: readonly { readonly name: string; readonly count: number; readonly values: readonly number[] }[];
  readonly left_out: readonly { readonly code: LeftOut['code']; readonly spots: readonly string[] }[];
  /** Pairs whose range of the difference leaves out zero, the larger first. */
  readonly clear: readonly ClearPair[];
  readonly comparisons: number;
  readonly against: { readonly name: string; readonly rows: readonly AgainstRow[] } | null;
  /** How varieties came to their spots. */
  readonly placed: 'lot' | 'chosen' | 'unknown';
  readonly blocks: number;
  readonly adjusted: boolean;
  readonly df: number | null;
  /** At least one variety has a range. */
  readonly ranged: boolean;
  /** Why no ranges could be computed, though mounds enough; null when they could. */
  readonly refusal: string | null;
  readonly chart: Chart | null;
}

export interface VarietyRow {
  readonly name: string;
  readonly yardstick: boolean;
  readonly mounds: number;
  readonly plants: Figure;
  readonly fruits: Figure;
  readonly mass: Figure;
  readonly mean: Figure;
}

export interface ClearPair {
  readonly more: string;
  readonly less: string;
  /** Of the difference, both above zero. */
  readonly interval: { readonly low: number; readonly high: number; readonly level: number };
}

export interface AgainstRow {
  readonly name: string;
  readonly difference: Figure;
}

/** One crop's varieties in one season, by the fullest measure its records allow. */
export function cropSection(facts: Facts, season: SeasonYield, crop: CropYield): CropSection {
  const measure = mainMeasure(crop.comparisons);
  const comparison = crop.comparisons[measure];
  const names = cropNames(crop.crop, facts.garden.about.locale);
  return {
    id: crop.crop.id,
    names,
    measure,
    unit: unitOf(measure, 'plant'),
    kind: comparison.kind,
    rows: varietyRows(crop, comparison),
    too_few: comparison.means
      .filter(({ mean, mounds }) => mean.reason?.code === 'few-mounds' && mounds.length > 0)
      .map(({ variety, mounds }) => ({
        name: variety.name,
        count: mounds.length,
        values: mounds.map(({ value }) => value).sort((a, b) => a - b),
      })),
    left_out: leftOutByReason(comparison.left_out),
    clear: comparison.differences.flatMap(clearPair),
    comparisons: comparison.differences.length,
    against: againstYardstick(comparison),
    placed: placedOf(season, crop),
    blocks: comparison.fit?.blocks.length ?? 0,
    adjusted: comparison.means.some(({ mean }) => mean.method === 'adjusted-mean' && mean.value !== null),
    df: comparison.fit?.df ?? null,
    ranged: comparison.means.some(({ mean }) => mean.interval !== null),
    refusal: comparison.means.some(({ mean }) => mean.value !== null) ? null : (comparison.refusal?.code ?? null),
    chart: comparison.means.some(({ mounds }) => mounds.length > 0)
      ? varietyChart(facts, season, crop, names, comparison)
      : null,
  };
}

function varietyRows(crop: CropYield, comparison: Comparison): VarietyRow[] {
  return comparison.means.flatMap(({ variety, mounds, mean }) => {
    const totals = crop.varieties.find((row) => row.variety?.id === variety.id)?.totals;
    if (!totals) return [];
    const { fruits, kg } = totals.measures;
    return [
      {
        name: variety.name,
        yardstick: variety.yardstick === true,
        mounds: mounds.length,
        plants: totals.plants_set,
        fruits: fruits.total,
        mass: kg.total,
        mean,
      },
    ];
  });
}

function leftOutByReason(leftOut: readonly LeftOut[]): CropSection['left_out'] {
  const codes = [...new Set(leftOut.map(({ code }) => code))].sort();
  return codes.map((code) => ({
    code,
    spots: [...new Set(leftOut.filter((one) => one.code === code).map(({ planting }) => planting.spot.id))].sort(),
  }));
}

function clearPair({ a, b, difference: { interval } }: Difference): ClearPair[] {
  if (!interval || (interval.low <= 0 && interval.high >= 0)) return [];
  if (interval.low > 0) return [{ more: a.name, less: b.name, interval }];
  return [{ more: b.name, less: a.name, interval: { ...interval, low: -interval.high, high: -interval.low } }];
}

/** Each variety less the yardstick; null without a yardstick that has mounds enough. */
function againstYardstick({ differences, means }: Comparison): CropSection['against'] {
  const yardstick = means.find(({ variety, mean }) => variety.yardstick === true && mean.value !== null)?.variety;
  const rows = differences.flatMap(({ a, b, difference }): AgainstRow[] => {
    if (b.id === yardstick?.id) return [{ name: a.name, difference }];
    if (a.id === yardstick?.id) return [{ name: b.name, difference: turned(difference) }];
    return [];
  });
  return yardstick && rows.length > 0 ? { name: yardstick.name, rows } : null;
}

/** The same difference taken the other way round. */
function turned(figure: Figure): Figure {
  const { value, interval } = figure;
  return {
    ...figure,
    value: value === null ? null : -value,
    interval: interval && { ...interval, low: -interval.high, high: -interval.low },
  };
}

function placedOf({ season }: SeasonYield, crop: CropYield): CropSection['placed'] {
  const placed = season.plantings
    .filter(({ variety }) => variety?.crop.id === crop.crop.id)
    .map((planting) => planting.placed ?? 'unknown');
  if (placed.every((how) => how === 'lot')) return 'lot';
  return placed.includes('chosen') ? 'chosen' : 'unknown';
}
