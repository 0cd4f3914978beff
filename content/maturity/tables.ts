import { column, type Table } from '../../src/book/table.ts';
import type { Crop, Season } from '../../src/garden/garden.ts';
import type { SeasonMaturity } from '../../src/ledger/maturity/season-maturity.ts';
import { ORIGINS, type VarietyMaturity } from '../../src/ledger/maturity/variety-maturity.ts';

/** Every variety by every origin, in days and in heat, each heat with its method, base and cap. */
export function maturityTable({ season, crops }: SeasonMaturity): Table {
  return {
    id: `ripe-times-${season.slug}`.toLowerCase(),
    title: `Days and heat to ripe, ${season.label}`,
    columns: [
      column('crop', 'Crop'),
      column('variety', 'Variety'),
      column('from', 'From'),
      column('unit', 'Unit'),
      column('heat_method', 'Heat method'),
      column('base_c', 'Base, °C', 'c'),
      column('cap_c', 'Cap, °C', 'c'),
      column('set_fruits', 'Fruits set', 'fruits'),
      column('ripe_fruits', 'Fruits found ripe', 'fruits'),
      column('told', 'Fruits with both days told'),
      column('spots', 'Spots'),
      column('earliest', 'Earliest'),
      column('middle', 'Middle'),
      column('last', 'Last'),
    ],
    rows: crops.flatMap(({ crop, heat_settings: { method, base_c, cap_c }, varieties }) =>
      varieties.flatMap(({ variety, set, ripened, days, heat }) =>
        ORIGINS.flatMap((origin) =>
          ([days, heat] as const).map((lengths) => {
            const { earliest, middle, last, n, spots } = lengths[origin];
            const told = lengths === heat ? [method, base_c, method === 'average' ? null : cap_c] : [null, null, null];
            return [
              crop.id,
              variety.id,
              origin,
              lengths === heat ? 'degC·d' : 'd',
              ...told,
              set.value,
              ripened.value,
              n,
              spots,
              earliest.value,
              middle.value,
              last.value,
            ];
          }),
        ),
      ),
    ),
  };
}

/** The days of every fruit whose set and ripe day are known to the day. */
export const singleDaysTable = (season: Season, { id }: Crop, varieties: readonly VarietyMaturity[]): Table => ({
  id: `set-to-ripe-${season.slug}-${id}`.toLowerCase(),
  title: `Days from set to a ripe pick, ${id}, ${season.label}`,
  columns: [column('variety', 'Variety'), column('days', 'Days', 'days')],
  rows: varieties.flatMap(({ variety, single_days }) => single_days.map((days) => [variety.id, days])),
});
