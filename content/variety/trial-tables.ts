import { type Cell, column, type Table } from '../../src/book/table.ts';
import type { Figure } from '../../src/figure.ts';
import type { CropTrial, TrialTrait } from '../../src/ledger/trial/crop-trial.ts';
import type { TraitId } from '../../src/ledger/trial/trait.ts';
import { type PlainInPrint, plainInPrint } from './plain-in-print.ts';
import { TRAIT_WORDS } from './trait-words.ts';

/** Every estimate of every crop, a row each. */
export const estimatesTable = (trials: readonly CropTrial[]): Table => ({
  id: 'variety-estimates',
  title: 'Varieties compared: every estimate',
  columns: [
    column('crop', 'Crop'),
    column('about', 'About'),
    column('variety', 'Variety'),
    column('season', 'Season'),
    column('what', 'What'),
    column('unit', 'Unit'),
    column('value', 'Value'),
    column('low', 'Low end'),
    column('high', 'High end'),
    column('n', 'Observations'),
    column('replicate', 'Replicate'),
    column('replicates', 'Replicates'),
    column('method', 'Method'),
    column('basis', 'Basis'),
    column('reason', 'Why none'),
  ],
  rows: trials.flatMap((trial) => [
    ...trial.traits.flatMap((trait) => traitRows(trial, trait)),
    ...trial.list.flatMap(({ variety, better, best }) => [
      told(trial, 'list', variety.id, null, 'better-than-yardstick', better),
      told(trial, 'list', variety.id, null, 'among-best-three', best),
    ]),
    ...trial.sound.map(({ variety, of_ten }) => told(trial, 'sound', variety.id, null, 'share', of_ten)),
    ...trial.tastes.flatMap(({ taste, rows }) =>
      rows.map(({ variety, better }) => told(trial, taste.question, variety.id, null, 'better-than-yardstick', better)),
    ),
    ...trial.held_out.flatMap(({ trait, season, variety, said, told: { came } }) => [
      told(trial, trait.id, variety.id, season.slug, 'difference-told-from-other-seasons', said),
      bare(trial, trait.id, variety.id, season.slug, 'difference-that-came', said.unit, came),
    ]),
  ]),
});

function traitRows(trial: CropTrial, { trait, rows, summers }: TrialTrait): Cell[][] {
  return [
    ...rows.flatMap(({ variety, level, difference, better, best, numbers: { plain } }) => [
      told(trial, trait.id, variety.id, null, 'level', level),
      told(trial, trait.id, variety.id, null, 'difference-from-yardstick', difference),
      told(trial, trait.id, variety.id, null, 'better-than-yardstick', better),
      told(trial, trait.id, variety.id, null, 'among-best-three', best),
      ...(plain ? plainRows(trial, trait.id, variety.id, difference.unit, plainInPrint(trait, plain)) : []),
    ]),
    ...summers.map(({ season, share }) => told(trial, trait.id, null, season.slug, 'season-share', share)),
  ];
}

/** What a pencil tells: where it tells nothing there is no row. */
function plainRows(trial: CropTrial, trait: TraitId, variety: string, unit: string, plain: PlainInPrint): Cell[][] {
  const row = (what: string, value: number | null, ends: { low: number; high: number } | null = null): Cell[] =>
    bare(trial, trait, variety, null, what, unit, value, ends);
  const known = (what: string, value: number | null): Cell[][] => (value === null ? [] : [row(what, value)]);
  return [
    row('plain-difference', plain.value),
    ...known('plain-standard-error', plain.sed),
    ...known('plain-standard-error-over-seasons', plain.over_seasons_se),
    ...(plain.without_mound ? [row('plain-without-one-mound', null, plain.without_mound)] : []),
    ...(plain.without_season ? [row('plain-without-one-season', null, plain.without_season)] : []),
    ...plain.seasons.map(({ season, difference }) =>
      bare(trial, trait, variety, season, 'plain-difference', unit, difference),
    ),
  ];
}

const told = (
  { crop }: CropTrial,
  about: string,
  variety: string | null,
  season: string | null,
  what: string,
  { unit, value, interval, n, replicate, method, basis, reason }: Figure,
): Cell[] => [
  crop.id,
  about,
  variety,
  season,
  what,
  unit,
  value,
  interval?.low ?? null,
  interval?.high ?? null,
  n,
  replicate?.kind ?? null,
  replicate?.count ?? null,
  method,
  basis,
  reason?.code ?? null,
];

const bare = (
  { crop }: CropTrial,
  about: string,
  variety: string,
  season: string | null,
  what: string,
  unit: string,
  value: number | null,
  ends: { readonly low: number; readonly high: number } | null = null,
): Cell[] => [
  crop.id,
  about,
  variety,
  season,
  what,
  unit,
  value,
  ends?.low ?? null,
  ends?.high ?? null,
  null,
  null,
  null,
  'shared-difference',
  null,
  null,
];

/** Every value that any estimate rests on. */
export const valuesTable = (trials: readonly CropTrial[]): Table => ({
  id: 'variety-values',
  title: 'Varieties compared: the values',
  columns: [
    column('crop', 'Crop'),
    column('trait', 'Trait'),
    column('variety', 'Variety'),
    column('season', 'Season'),
    column('block', 'Block'),
    column('spot', 'Spot'),
    column('picked_on', 'Picking day'),
    column('value', 'Value'),
    column('record', 'Record'),
  ],
  rows: trials.flatMap(({ crop, values }) =>
    values.map(({ trait, variety, season, block, spot, day, value, key }) => [
      crop.id,
      trait,
      variety,
      season,
      block,
      spot,
      day,
      value,
      key,
    ]),
  ),
});

/** The numbers of one chart of differences. */
export const againstTable = ({ crop }: CropTrial, { trait, rows }: TrialTrait): Table => ({
  id: `variety-${crop.id.toLowerCase()}-${trait.id.replaceAll('_', '-')}-against`,
  title: `${TRAIT_WORDS[trait.id].name}, against the yardstick`,
  columns: [
    column('variety', 'Variety'),
    column('difference', 'Difference', trait.unit),
    column('low', 'Low end', trait.unit),
    column('high', 'High end', trait.unit),
    column('better_of_twenty', 'Better, of twenty', 'of_twenty'),
  ],
  rows: rows.map(({ variety, difference, better }) => [
    variety.id,
    difference.value,
    difference.interval?.low ?? null,
    difference.interval?.high ?? null,
    better.value,
  ]),
});

/** The numbers of the panels. */
export const panelsTable = ({ crop, values }: CropTrial, trait: TraitId): Table => ({
  id: `variety-${crop.id.toLowerCase()}-seasons`,
  title: `${TRAIT_WORDS[trait].name}, season by season`,
  columns: [column('variety', 'Variety'), column('season', 'Season'), column('spot', 'Spot'), column('value', 'Value')],
  rows: values
    .filter((one) => one.trait === trait)
    .map(({ variety, season, spot, value }) => [variety, season, spot, value]),
});
