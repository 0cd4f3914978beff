import type { Facts } from '../../src/book/chapter.ts';
import type { Chart } from '../../src/book/chart.ts';
import { estimateRows } from '../../src/charts/estimate-rows.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { CropMaturity, SeasonMaturity } from '../../src/ledger/maturity/season-maturity.ts';
import { singleDaysTable } from './tables.ts';

/** Every fruit whose set and ripe day are known; the same axis for the crop in all seasons. Null when there is none. */
export function daysChart(
  { format, ledger, garden }: Facts,
  { season }: SeasonMaturity,
  { crop, varieties }: CropMaturity,
): Chart | null {
  const rows = varieties.filter(({ single_days }) => single_days.length > 0);
  if (rows.length === 0) return null;
  const all = ledger.maturity.flatMap(({ crops }) =>
    crops
      .filter((one) => one.crop.id === crop.id)
      .flatMap((one) => one.varieties.flatMap(({ single_days }) => single_days)),
  );
  const { many } = cropNames(crop, garden.about.locale);
  return {
    id: `maturity-${season.slug.toLowerCase()}-${crop.id.toLowerCase()}`,
    title: `From set to a ripe pick, ${many}, ${season.label}`,
    description: `${rows
      .map(
        ({ variety, single_days }) =>
          `${variety.name}: ${single_days.map((days) => format.count(days)).join(', ')} days`,
      )
      .join('. ')}.`,
    spec: estimateRows(
      {
        rows: rows.map(({ variety, single_days }) => ({
          name: variety.name,
          values: single_days,
          estimate: null,
          count: format.count(single_days.length),
        })),
        unit: 'days',
        axisTitle: 'days from set to a ripe pick',
        strip: null,
        largest: Math.max(...all),
      },
      format,
    ),
    table: singleDaysTable(season, crop, rows),
  };
}
