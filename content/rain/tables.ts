import { column, type Table } from '../../src/book/table.ts';
import type { CropRain } from '../../src/ledger/rain-sugar/crop-rain.ts';
import { WINDOWS } from '../../src/ledger/rain-sugar/reading.ts';

/** Every ripe metered fruit with the rain before its picking. */
export const readingsTable = ({ crop, readings, apart, fit }: CropRain): Table => ({
  id: `sugar-and-rain-${crop.id}`.toLowerCase(),
  title: `Sugar and rain, ${crop.id}`,
  columns: [
    column('season', 'Season'),
    column('variety', 'Variety'),
    column('mound', 'Mound'),
    column('picked_on', 'Picked'),
    column('brix', 'Sugar, °Brix', 'brix'),
    column('rain_mm', 'Rain before picking, mm', 'mm'),
    ...WINDOWS.map((days) => column(`rain_${days}_days_mm`, `Rain of ${days} days, mm`, 'mm')),
    column('partial_brix', 'Sugar, all else taken out, °Brix', 'brix'),
    column('forecast', 'Picked before rain that was coming'),
  ],
  rows: [...readings, ...apart].map((one, index) => [
    one.season,
    one.variety,
    one.mound,
    one.picked_on,
    one.brix,
    one.rain_mm,
    ...one.windows,
    (fit && [...fit.partial_brix, ...fit.apart_brix][index]) ?? null,
    one.forecast ? 'yes' : 'no',
  ]),
});

/** The slope of every crop by every window, with its range and degrees of freedom, or why there is none. */
export const slopesTable = (crops: readonly CropRain[]): Table => ({
  id: 'rain-slopes',
  title: 'Slopes of sugar on rain',
  columns: [
    column('crop', 'Crop'),
    column('window_days', 'Days of rain'),
    column('brix_per_mm', '°Brix per mm'),
    column('low', 'Low end'),
    column('high', 'High end'),
    column('fruits', 'Fruits'),
    column('picking_days', 'Picking days'),
    column('reason', 'Why not'),
  ],
  rows: crops.flatMap(({ crop, windows }) =>
    windows.map(({ days, slope: { value, interval, n, replicate, reason } }) => [
      crop.id,
      days,
      value,
      interval?.low ?? null,
      interval?.high ?? null,
      n,
      replicate?.count ?? null,
      reason?.code ?? null,
    ]),
  ),
});
