import type { Facts } from '../../src/book/chapter.ts';
import type { Chart } from '../../src/book/chart.ts';
import { estimateRows } from '../../src/charts/estimate-rows.ts';
import type { Variety } from '../../src/garden/garden.ts';
import type { VarietySeason } from '../../src/ledger/variety-season.ts';
import { massesTable } from './tables.ts';

/** Every weighed fruit of a variety, season by season; the same axis for all varieties of the crop. Null without a scale. */
export function massChart(
  { garden, ledger, format }: Facts,
  variety: Variety,
  seasons: readonly VarietySeason[],
): Chart | null {
  const weighed = seasons.filter(({ masses_kg }) => masses_kg.length > 0).reverse();
  if (weighed.length === 0) return null;
  const ofCrop = garden.varieties.filter(({ crop }) => crop.id === variety.crop.id);
  const largest = ofCrop.flatMap(({ id }) => (ledger.varieties.get(id) ?? []).flatMap(({ masses_kg }) => masses_kg));
  return {
    id: `variety-${variety.id.toLowerCase()}-fruits`,
    title: `Every fruit weighed, ${variety.name}`,
    description: `${weighed
      .map(
        ({ label, masses_kg, heaviest }) =>
          `${label}: ${format.count(masses_kg.length)} weighed, the lightest ${format.amount(masses_kg[0] ?? 0, 'kg')}, the heaviest ${format.amount(heaviest.value ?? 0, 'kg')}`,
      )
      .join('. ')}.`,
    spec: estimateRows(
      {
        rows: weighed.map(({ label, masses_kg }) => ({
          name: label,
          values: masses_kg,
          estimate: null,
          count: format.count(masses_kg.length),
        })),
        unit: 'kg',
        axisTitle: `one fruit, ${format.unitLabel('kg')}`,
        strip: null,
        largest: Math.max(...largest),
      },
      format,
    ),
    table: massesTable(variety, weighed),
  };
}
