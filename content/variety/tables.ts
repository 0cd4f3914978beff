import type { Facts } from '../../src/book/chapter.ts';
import { column, type Table } from '../../src/book/table.ts';
import type { Variety } from '../../src/garden/garden.ts';
import type { VarietySeason } from '../../src/ledger/variety-season.ts';
import type { TimeHere } from './ripen-here.ts';

/** Every variety in every season it was planted in. */
export function varietiesTable({ garden, ledger }: Facts): Table {
  return {
    id: 'varieties-by-season',
    title: 'Varieties by season',
    columns: [
      column('variety', 'Variety'),
      column('season', 'Season'),
      column('plants_set', 'Plants set', 'plants'),
      column('fruits', 'Fruits', 'fruits'),
      column('sound_fruits', 'Sound fruits', 'fruits'),
      column('kg', 'Mass, kg', 'kg'),
      column('mean_measure', 'Measure of the mean'),
      column('mean', 'Mean'),
      column('low', 'Low end'),
      column('high', 'High end'),
      column('heaviest_kg', 'Heaviest fruit, kg', 'kg'),
      column('least_brix', 'Least sugar of a ripe fruit, °Brix', 'brix'),
      column('most_brix', 'Most sugar of a ripe fruit, °Brix', 'brix'),
      column('first_picked_on', 'First ripe fruit picked'),
      column('first_pick_days', 'Days from planting to the first pick', 'days'),
    ],
    rows: garden.varieties.flatMap(({ id }) =>
      (ledger.varieties.get(id) ?? []).map((season) => [
        id,
        season.label,
        season.totals.plants_set.value,
        season.totals.measures.fruits.total.value,
        season.totals.measures.sound_fruits.total.value,
        season.totals.measures.kg.total.value,
        `${season.measure}_per_plant`,
        season.mean.value,
        season.mean.interval?.low ?? null,
        season.mean.interval?.high ?? null,
        season.heaviest.value,
        season.least_sugar.value,
        season.most_sugar.value,
        season.first_pick?.picked_on.text ?? null,
        season.first_pick_days.value,
      ]),
    ),
  };
}

/** The days each variety needs against the days it has here. */
export const ripenTable = (times: readonly TimeHere[]): Table => ({
  id: 'varieties-ripen-here',
  title: 'Days to ripen, needed and had',
  columns: [
    column('crop', 'Crop'),
    column('variety', 'Variety'),
    column('days_here', 'Days here', 'days'),
    column('days_needed', 'Days needed', 'days'),
    column('known_from', 'How known'),
    column('days_to_spare', 'Days to spare', 'days'),
    column('verdict', 'So'),
  ],
  rows: times.flatMap(({ crop, days, varieties }) =>
    varieties.map(({ id, needs, from, spare, verdict }) => [
      crop.id,
      id,
      days.value,
      needs.value,
      from,
      spare.value,
      verdict,
    ]),
  ),
});

/** The mass of every weighed fruit. */
export const massesTable = ({ id, name }: Variety, seasons: readonly VarietySeason[]): Table => ({
  id: `masses-${id.toLowerCase()}`,
  title: `Fruits weighed, ${name}`,
  columns: [column('season', 'Season'), column('mass_kg', 'Mass, kg', 'kg')],
  rows: seasons.flatMap(({ label, masses_kg }) => masses_kg.map((mass) => [label, mass])),
});
