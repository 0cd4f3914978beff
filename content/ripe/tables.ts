import { column, type Table } from '../../src/book/table.ts';
import type { CropRipeness } from '../../src/ledger/ripeness/crop-ripeness.ts';
import { cutWay } from '../../src/ledger/ripeness/cut-way.ts';
import type { Evidence } from '../../src/ledger/ripeness/evidence.ts';
import type { LookedFruit } from '../../src/statistics/signs/ripe-chance.ts';

/** What the cuts say of every sign of every crop; blank where they are too few. */
export function signsTable(crops: readonly CropRipeness[]): Table {
  const rowOf = (crop: string, sign: string, { ripe, unripe }: Evidence) => [
    crop,
    sign,
    ripe.n,
    ripe.value,
    unripe.n,
    unripe.value,
  ];
  return {
    id: 'ripe-signs',
    title: 'Outside signs against what the knife found',
    columns: [
      column('crop', 'Crop'),
      column('sign', 'Sign'),
      column('ripe_fruits', 'Ripe fruits looked at', 'fruits'),
      column('ripe_of_ten', 'Of ten ripe, showed it'),
      column('unripe_fruits', 'Unripe fruits looked at', 'fruits'),
      column('unripe_of_ten', 'Of ten unripe, showed it'),
    ],
    rows: crops.flatMap(({ crop, days, signs }) => [
      ...(days ? [rowOf(crop.id, 'days', days)] : []),
      ...signs.map((one) => rowOf(crop.id, one.sign.id, one)),
    ]),
    primaryKey: ['crop', 'sign'],
  };
}

/** What every sign of every crop is worth in both questions; blank where the cuts are too few. */
export const worthTable = (crops: readonly CropRipeness[]): Table => ({
  id: 'ripe-sign-worth',
  title: 'How many times as often a sign shows',
  columns: [
    column('crop', 'Crop'),
    column('sign', 'Sign'),
    column('question', 'Question'),
    column('yes_shown', 'Of those for which the answer is yes, showed it', 'fruits'),
    column('yes_looked', 'Of those, looked at for it', 'fruits'),
    column('no_shown', 'Of those for which it is no, showed it', 'fruits'),
    column('no_looked', 'Of those, looked at for it', 'fruits'),
    column('lot_yes_shown', 'Cut by lot, yes, showed it', 'fruits'),
    column('lot_yes_looked', 'Cut by lot, yes, looked at', 'fruits'),
    column('lot_no_shown', 'Cut by lot, no, showed it', 'fruits'),
    column('lot_no_looked', 'Cut by lot, no, looked at', 'fruits'),
    column('times', 'Times as often where the answer is yes'),
    column('times_low', 'Low end, 9 times in 10'),
    column('times_high', 'High end, 9 times in 10'),
  ],
  rows: crops.flatMap(({ crop, days, signs }) =>
    [
      ...(days ? [{ id: 'days', worth: days.worth }] : []),
      ...signs.map(({ sign, worth }) => ({ id: sign.id, worth })),
    ].flatMap(({ id, worth }) =>
      worth.map(({ question, counts, by_lot, ratio }) => [
        crop.id,
        id,
        question,
        ...[counts.yes, counts.no, by_lot.yes, by_lot.no].flatMap(({ shown, looked }) => [shown, looked]),
        ratio.value,
        ratio.interval?.low ?? null,
        ratio.interval?.high ?? null,
      ]),
    ),
  ),
  primaryKey: ['crop', 'sign', 'question'],
});

/** Every fruit looked over in the days before it was cut, and those still growing with what their looks say. */
export const looksTable = (crops: readonly CropRipeness[]): Table => ({
  id: 'ripe-looks',
  title: 'Fruit looked over on the vine',
  columns: [
    column('crop', 'Crop'),
    column('season', 'Season'),
    column('fruit', 'Fruit'),
    column('state', 'What the knife found; blank while it grows'),
    column('cut_as', 'How it came to be cut'),
    column('days_since_set', 'Days since set, the middle', 'days'),
    column('signs_looked_for', 'Signs looked for on the vine'),
    column('signs_shown', 'Signs shown'),
    column('ripe_of_ten', 'Of ten such, so many are ripe'),
    column('ripe_chance_low', 'Low end of the chance, 9 times in 10'),
    column('ripe_chance_high', 'High end of the chance, 9 times in 10'),
    column('over_chance', 'Chance that it is past its best'),
  ],
  rows: crops.flatMap(({ crop, together: { known, growing } }) => [
    ...known.map(({ judged, look }) => [
      crop.id,
      judged.season.label,
      judged.fruit.id,
      judged.state,
      cutWay(judged.fruit),
      ...lookCells(look),
      null,
      null,
      null,
      null,
    ]),
    ...growing.map(({ season, fruit, look, claim }) => [
      crop.id,
      season.label,
      fruit.id,
      null,
      null,
      ...lookCells(look),
      claim?.of_ten ?? null,
      claim?.ripe.interval.low ?? null,
      claim?.ripe.interval.high ?? null,
      claim?.over ?? null,
    ]),
  ]),
  primaryKey: ['crop', 'season', 'fruit'],
});

const lookCells = ({ days_since_set, signs }: LookedFruit): (number | null)[] => [
  days_since_set,
  signs.filter((one) => one !== null).length,
  signs.filter((one) => one === true).length,
];

/** Every cut fruit told without its season, both questions. */
export const claimsTable = (crops: readonly CropRipeness[]): Table => ({
  id: 'ripe-claims',
  title: 'Cut fruit told without its season',
  columns: [
    column('crop', 'Crop'),
    column('question', 'Question'),
    column('season', 'Season'),
    column('fruit', 'Fruit'),
    column('chance', 'Chance of yes, before any cap'),
    column('of_ten', 'As it would have been printed, of ten'),
    column('came', 'The knife found'),
    column('missed', 'Missed'),
  ],
  rows: heldOf(crops).flatMap(({ crop, held }) =>
    held.claims.map(({ judged, question, chance, of_ten, came, missed }) => [
      crop,
      question,
      judged.season.label,
      judged.fruit.id,
      chance,
      of_ten,
      came ? 'yes' : 'no',
      missed ? 'yes' : 'no',
    ]),
  ),
  primaryKey: ['crop', 'question', 'season', 'fruit'],
});

/** The same claims counted by what they said, and how far they lay off. */
export const scoresTable = (crops: readonly CropRipeness[]): Table => ({
  id: 'ripe-claim-scores',
  title: 'How claims of a season not seen came out',
  columns: [
    column('crop', 'Crop'),
    column('question', 'Question'),
    column('what', 'What'),
    column('claims', 'Claims'),
    column('said_of_ten', 'Said on average, of ten'),
    column('came', 'Answer was yes'),
    column('score', 'Mean squared distance; 0.25 is a coin’s'),
  ],
  rows: heldOf(crops).flatMap(({ crop, held: { question, bins, scores, claims } }) => [
    ...bins.map(({ from, to, claims: count, said, came }) => [
      crop,
      question,
      `said-${from}-to-${to}`,
      count,
      said,
      came,
      null,
    ]),
    ...[
      { what: 'signs-together', score: scores.together },
      { what: 'the-same-of-all', score: scores.base },
      { what: 'best-single-sign', score: scores.best_sign?.score ?? null },
    ].map(({ what, score }) => [crop, question, what, claims.length, null, null, score]),
  ]),
  primaryKey: ['crop', 'question', 'what'],
});

const heldOf = (crops: readonly CropRipeness[]) =>
  crops.flatMap(({ crop, together: { ripe_yet, too_late } }) =>
    [ripe_yet.held, too_late.held].flatMap((held) => (held ? [{ crop: crop.id, held }] : [])),
  );
