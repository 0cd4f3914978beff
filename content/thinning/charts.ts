import type { Facts } from '../../src/book/chapter.ts';
import type { Chart } from '../../src/book/chart.ts';
import { scatterBand } from '../../src/charts/scatter-band.ts';
import type { CropLoad } from './load.ts';
import { loadTable } from './tables.ts';

/** Spots below which a table says as much. */
const FEWEST_MARKS = 3;

/** Mean mass against fruits kept a plant, a mark a spot and no line; null with too few marks. */
export function loadChart({ format }: Facts, load: CropLoad): Chart | null {
  const points = load.rows.flatMap(({ kept, mean_kg, variety }) =>
    kept.value === null || mean_kg.value === null
      ? []
      : [{ x: kept.value, y: mean_kg.value, kind: variety ?? 'not known', label: null, apart: false }],
  );
  if (points.length < FEWEST_MARKS) return null;
  const { names, label, slug, crop } = load;
  const id = `thinning-${slug.toLowerCase()}-${crop.toLowerCase()}`;
  return {
    id,
    title: `Fruits kept a plant and their mass, ${names.many}, ${label}`,
    description: `${points.map(({ x, y, kind }) => `${kind}: ${format.amount(x, 'fruits_per_plant')}, ${format.amount(y, 'kg')}`).join('. ')}.`,
    spec: scatterBand(
      {
        points,
        line: null,
        xUnit: 'fruits_per_plant',
        yUnit: 'kg',
        xTitle: 'fruits kept a plant',
        yTitle: `mean mass of a fruit, ${format.unitLabel('kg')}`,
      },
      format,
    ),
    table: loadTable([load], `${id}-spots`),
  };
}
