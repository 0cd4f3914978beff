import { column, type Table } from '../../src/book/table.ts';
import type { Figure } from '../../src/figure.ts';
import type { Comparison } from '../../src/ledger/comparison.ts';
import { MEASURES, unitOf } from '../../src/ledger/measure.ts';
import type { CropYield, SeasonYield } from '../../src/ledger/season-yield.ts';
import type { Totals } from '../../src/ledger/totals.ts';

/** The mounds and means under a chart of varieties: one row a mound, then one row a variety. */
export function moundsTable({ season }: SeasonYield, { crop }: CropYield, comparison: Comparison): Table {
  const unit = unitOf(comparison.measure, 'plant');
  const rate = `${comparison.measure}_per_plant`;
  return {
    id: `yield-${season.slug}-${crop.id}-mounds`.toLowerCase(),
    title: `Mounds under the means, ${crop.id}, ${season.label}`,
    columns: [
      column('variety', 'Variety'),
      column('spot', 'Spot'),
      column('block', 'Block'),
      column(rate, 'A plant', unit),
    ],
    rows: comparison.means.flatMap(({ variety, mounds }) =>
      mounds.map(({ spot, block, value }) => [variety.id, spot, block, value]),
    ),
  };
}

/** Means of varieties with their ranges, by every measure. */
export function varietiesTable({ season }: SeasonYield, { crop, comparisons }: CropYield): Table {
  const figures = MEASURES.flatMap((measure) =>
    comparisons[measure].means.map(
      ({ variety, mean }) => [variety.id, `${measure}_per_plant`, ...estimateCells(mean), mean.method] as const,
    ),
  );
  return {
    id: `yield-${season.slug}-${crop.id}-varieties`.toLowerCase(),
    title: `Means of varieties, ${crop.id}, ${season.label}`,
    columns: [
      column('variety', 'Variety'),
      column('measure', 'Measure'),
      ...ESTIMATE_COLUMNS,
      column('method', 'Method'),
    ],
    rows: figures.map((row) => [...row]),
  };
}

/** Every difference of two varieties that could be computed, by every measure. */
export function differencesTable({ season }: SeasonYield, { crop, comparisons }: CropYield): Table {
  const rows = MEASURES.flatMap((measure) =>
    comparisons[measure].differences.map(({ a, b, difference }) => [
      a.id,
      b.id,
      `${measure}_per_plant`,
      ...estimateCells(difference),
    ]),
  );
  return {
    id: `yield-${season.slug}-${crop.id}-differences`.toLowerCase(),
    title: `Differences of varieties, ${crop.id}, ${season.label}`,
    columns: [
      column('variety', 'Variety'),
      column('less', 'Less variety'),
      column('measure', 'Measure'),
      ...ESTIMATE_COLUMNS,
    ],
    rows,
  };
}

const ESTIMATE_COLUMNS = [
  column('value', 'Value'),
  column('low', 'Low end'),
  column('high', 'High end'),
  column('level', 'Level'),
  column('spots', 'Spots'),
  column('reason', 'Why not'),
];

const estimateCells = ({ value, interval, replicate, reason }: Figure) => [
  value,
  interval?.low ?? null,
  interval?.high ?? null,
  interval?.level ?? null,
  replicate?.count ?? null,
  reason?.code ?? null,
];

/** The analysis of variance behind the ranges: each term adjusted for the other (type II). */
export function analysisTable({ season }: SeasonYield, { crop, comparisons }: CropYield): Table {
  const rows = MEASURES.flatMap((measure) =>
    (comparisons[measure].fit?.analysis_of_variance ?? []).map(({ term, df, ss, ms, f, p }) => [
      `${measure}_per_plant`,
      term === 'treatment' ? 'variety' : term,
      df,
      ss,
      ms,
      f,
      p,
    ]),
  );
  return {
    id: `yield-${season.slug}-${crop.id}-analysis`.toLowerCase(),
    title: `Analysis of variance, ${crop.id}, ${season.label}`,
    columns: [
      column('measure', 'Measure'),
      column('term', 'Term'),
      column('df', 'Degrees of freedom'),
      column('ss', 'Sum of squares'),
      column('ms', 'Mean square'),
      column('f', 'F'),
      column('p', 'p'),
    ],
    rows,
  };
}

const TOTAL_COLUMNS = [
  column('plants_set', 'Plants set', 'plants'),
  column('plants_alive', 'Plants alive', 'plants'),
  column('area_m2', 'Area', 'm2'),
  ...MEASURES.flatMap((measure) => [
    column(measure, measure, unitOf(measure)),
    column(`${measure}_per_plant`, measure, unitOf(measure, 'plant')),
    column(`${measure}_per_plant_alive`, measure, unitOf(measure, 'plant')),
    column(`${measure}_per_m2`, measure, unitOf(measure, 'm2')),
    column(`${measure}_remark`, 'Remark'),
  ]),
];

const totalCells = (totals: Totals) => [
  totals.plants_set.value,
  totals.plants_alive.value,
  totals.area_m2.value,
  ...MEASURES.flatMap((measure) => {
    const { total, per_plant_set, per_plant_alive, per_m2 } = totals.measures[measure];
    return [total.value, per_plant_set.value, per_plant_alive.value, per_m2.value, total.reason?.code ?? null];
  }),
];

/** Every spot of one season. */
export function spotsTable({ season, spots }: SeasonYield): Table {
  return {
    id: `yield-${season.slug}-spots`.toLowerCase(),
    title: `Spots, ${season.label}`,
    columns: [column('spot', 'Spot'), column('kind', 'Kind'), column('variety', 'Variety'), ...TOTAL_COLUMNS],
    rows: spots.map(({ spot, plantings, totals }) => [
      spot.id,
      spot.kind,
      plantings.map(({ variety }) => variety?.id ?? 'unknown').join(' '),
      ...totalCells(totals),
    ]),
  };
}

/** Every season of the garden, the first first. */
export function seasonsTable(seasons: readonly SeasonYield[]): Table {
  return {
    id: 'yield-seasons',
    title: 'Seasons',
    columns: [column('season', 'Season'), column('crop', 'Crop'), ...TOTAL_COLUMNS],
    rows: seasons.flatMap(({ season, garden, crops }) => [
      [season.label, 'all', ...totalCells(garden)],
      ...crops.map(({ crop, totals }) => [season.label, crop.id, ...totalCells(totals)]),
    ]),
  };
}
