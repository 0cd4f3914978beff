import { column, type Table } from '../../src/book/table.ts';
import type { CropPickOrWait } from '../../src/ledger/pick-or-wait/crop-pick-or-wait.ts';
import { RAIN_WORDS, type RainWord } from '../../src/statistics/pick-or-wait/card.ts';

/** Every storm of every crop in which a fruit hung that could split. */
export const stormsTable = (crops: readonly CropPickOrWait[]): Table => ({
  id: 'ripe-storms',
  title: 'Storms, and the fruit that split',
  columns: [
    column('crop', 'Crop'),
    column('season', 'Season'),
    column('first', 'First wet day'),
    column('last', 'Last wet day'),
    column('rain_mm', 'Rain, mm', 'mm'),
    column('dry_days', 'Dry days before'),
    column('roots_missing_of_ten', 'Missing of the roots’ water on the eve, of ten'),
    column('hanging', 'Fruits that hung near ripe'),
    column('split', 'Split'),
  ],
  rows: crops.flatMap(({ crop, storms: { storms } }) =>
    storms.map(({ storm, hanging, split, missing_of_ten }) => [
      crop.id,
      storm.season.slug,
      storm.first,
      storm.last,
      storm.rain_mm,
      storm.dry_days,
      missing_of_ten,
      hanging.length,
      split,
    ]),
  ),
});

/** Every cell of every card, with the difference it rests on in units of a little loss. */
export const cardsTable = (crops: readonly CropPickOrWait[]): Table => ({
  id: 'ripe-pick-or-wait',
  title: 'Pick or wait before rain, cell by cell',
  columns: [
    column('crop', 'Crop'),
    column('ripe_of_ten', 'Ripe of ten', 'of_ten'),
    column('rain', 'Heavy rain'),
    column('rain_of_ten', 'Taken as, of ten', 'of_ten'),
    column('split_of_ten', 'Split if it rains, of ten', 'of_ten'),
    column('thinned_of_ten', 'Thinned if it rains, of ten', 'of_ten'),
    column('lost_of_ten', 'Lost by the next look, of ten', 'of_ten'),
    column('answer', 'Answer'),
    column('waiting_costs', 'What waiting costs more, little losses'),
    column('low', 'Low end'),
    column('high', 'High end'),
    column('hinges_on', 'Turned by one word of'),
  ],
  rows: crops.flatMap(({ crop, rows, storms, dilution_of_ten, lost_of_ten }) =>
    rows.flatMap(({ ripe_of_ten, cells }) =>
      (Object.keys(cells) as RainWord[]).map((rain) => {
        const { answer, waiting_costs, interval, hinges_on } = cells[rain];
        return [
          crop.id,
          ripe_of_ten,
          rain,
          10 * RAIN_WORDS[rain].mean,
          storms.split.value,
          dilution_of_ten.value,
          lost_of_ten.value,
          answer,
          waiting_costs,
          interval.low,
          interval.high,
          hinges_on.join(' '),
        ];
      }),
    ),
  ),
});
