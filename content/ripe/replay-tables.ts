import { column, type Table } from '../../src/book/table.ts';
import type { Replay } from '../../src/ledger/replay/replay.ts';

const KEY = ['season', 'week', 'crop', 'fruit'];
const FRUIT = [
  column('season', 'Season'),
  column('week', 'Book of Saturday'),
  column('crop', 'Crop'),
  column('fruit', 'Fruit'),
];

/** All that the books of past weeks said, a row each, and what came. Blank where the knife did not judge it. */
export const replayTables = ({ crops }: Replay): Table[] => [
  {
    id: 'ripe-replay-claims',
    title: 'Claims of ripeness, week by week, and what the knife found',
    columns: [
      ...FRUIT,
      column('looked_on', 'Looked at on'),
      column('cuts', 'Cut fruits known'),
      column('claim_of_ten', 'Said ripe, of ten'),
      column('chance', 'The same before rounding, of 1'),
      column('base_chance', 'Share of cuts known that were ripe, of 1'),
      column('best_sign', 'Best single sign till then'),
      column('sign_chance', 'By that sign alone, of 1'),
      column('found', 'The knife found'),
      column('ripe', 'Ripe'),
      column('missed', 'Missed'),
    ],
    rows: crops.flatMap(({ claims }) =>
      claims.map((one) => [
        one.season,
        one.week,
        one.crop,
        one.fruit,
        one.looked_on,
        one.cuts,
        one.of_ten,
        one.chance,
        one.base_chance,
        one.best_sign,
        one.sign_chance,
        one.state,
        one.came === null ? null : yesNo(one.came),
        one.came === null ? null : yesNo(one.missed),
      ]),
    ),
    primaryKey: KEY,
  },
  {
    id: 'ripe-replay-windows',
    title: 'Windows of ripening, week by week, and when the fruit came off',
    columns: [
      ...FRUIT,
      column('half_from', 'Ripe from, 5 times in 10'),
      column('half_to', 'to'),
      column('most_from', 'Ripe from, 9 times in 10'),
      column('most_to', 'to'),
      column('over_from', 'Over from, 9 times in 10'),
      column('over_to', 'to'),
      column('off_first', 'Came off, first day'),
      column('off_last', 'last day'),
      column('found', 'The knife found'),
      column('half_came', 'So, of the 5 in 10'),
      column('most_came', 'So, of the 9 in 10'),
    ],
    rows: crops.flatMap(({ windows }) =>
      windows.map((one) => [
        one.season,
        one.week,
        one.crop,
        one.fruit,
        one.half.from,
        one.half.to,
        one.most.from,
        one.most.to,
        one.over?.from ?? null,
        one.over?.to ?? null,
        one.off?.first ?? null,
        one.off?.last ?? null,
        one.state,
        one.half_came,
        one.most_came,
      ]),
    ),
    primaryKey: KEY,
  },
  {
    id: 'ripe-replay-advice',
    title: 'Pick or wait, week by week, and what either cost; a little loss is 1',
    columns: [
      ...FRUIT,
      column('looked_on', 'Looked at on'),
      column('row_of_ten', 'Row of the card, of ten'),
      column('rain', 'Rain that came'),
      column('answer', 'The card said'),
      column('picking_cost', 'Picking cost'),
      column('waiting_cost', 'Waiting cost'),
      column('regret', 'The card cost beyond the better'),
    ],
    rows: crops.flatMap(({ advice }) =>
      advice.map((one) => [
        one.season,
        one.week,
        one.crop,
        one.fruit,
        one.looked_on,
        one.row,
        one.rain,
        one.answer,
        one.picking,
        one.waiting,
        one.regret,
      ]),
    ),
    primaryKey: KEY,
  },
];

const yesNo = (is: boolean): string => (is ? 'yes' : 'no');
