import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { answersOf } from '../../../content/variety/answer.ts';
import { figuresOf } from '../../../content/variety/trial-page.ts';
import { estimatesTable, valuesTable } from '../../../content/variety/trial-tables.ts';
import type { Book } from '../../../src/book/book.ts';
import type { Cell, Table } from '../../../src/book/table.ts';
import type { Figure } from '../../../src/figure.ts';
import type { CropTrial } from '../../../src/ledger/trial/crop-trial.ts';
import { folderOf, GARDENS } from '../../books/garden-list.ts';
import { bookOfFolder } from '../../site/built.ts';
import { bookOfTexts, mounds, SIX_CROPS, triedGarden } from './tried-garden.ts';

const FOLDERS: Readonly<Record<string, string>> = {
  ...Object.fromEntries(GARDENS.map(({ name }) => [name, folderOf(name)])),
  'the demo': 'data/garden',
};

const books = new Map<string, Book>();
function bookIn(name: string): Book {
  const found = books.get(name);
  if (found) return found;
  const made = bookOfFolder(FOLDERS[name] ?? '');
  books.set(name, made);
  return made;
}

type Row = Readonly<Record<string, Cell>>;
const rowsOf = ({ columns, rows }: Table): Row[] =>
  rows.map((row) => Object.fromEntries(columns.map(({ key }, at) => [key, row[at] ?? null])));
const texts = (row: Row, ...keys: string[]): string => keys.map((key) => row[key] ?? '').join(' ');

/** What a row of estimates is called, by the last part of its figure's id. */
const WHAT: Readonly<Record<string, string>> = {
  level: 'level',
  difference: 'difference-from-yardstick',
  better_of_twenty: 'better-than-yardstick',
  best_three_of_twenty: 'among-best-three',
  sound_of_ten: 'share',
};

/** The row a figure has to stand in, read off its id. */
function rowOfId(id: string, crop: string): string {
  const [about = '', ...rest] = id.slice(`variety.${crop}.`.length).split('.');
  const [first = '', second = '', third = ''] = rest;
  if (about === 'taste') return [crop, first, second, '', WHAT[third]].join(' ');
  if (first === 'season') return [crop, about, '', second, 'season-share'].join(' ');
  if (first === 'held-out') return [crop, about, third, second, 'difference-told-from-other-seasons'].join(' ');
  return [crop, about, first, '', WHAT[second]].join(' ');
}

const same = (row: Row, figure: Figure): boolean =>
  row.value === figure.value &&
  row.low === (figure.interval?.low ?? null) &&
  row.high === (figure.interval?.high ?? null) &&
  row.unit === figure.unit &&
  row.n === figure.n &&
  row.replicates === (figure.replicate?.count ?? null) &&
  row.method === figure.method &&
  row.basis === figure.basis &&
  row.reason === (figure.reason?.code ?? null);

function faultsOfEstimates(trials: readonly CropTrial[]): string[] {
  const rows = rowsOf(estimatesTable(trials));
  const names = rows.map((row) => texts(row, 'crop', 'about', 'variety', 'season', 'what'));
  return [
    ...names.filter((name, at) => names.indexOf(name) !== at).map((name) => `twice: ${name}`),
    ...rows
      .filter((row) => row.value === null && row.low === null && row.reason === null)
      .map((row) => `neither value nor reason: ${texts(row, 'about', 'variety', 'what')}`),
    ...rows
      .filter((row) =>
        [row.value, row.low, row.high].some((cell) => typeof cell === 'number' && !Number.isFinite(cell)),
      )
      .map((row) => `no number: ${texts(row, 'about', 'variety', 'what')}`),
    ...rows
      .filter((row) => typeof row.low === 'number' && typeof row.high === 'number' && row.low > row.high)
      .map((row) => `ends the wrong way round: ${texts(row, 'about', 'variety', 'what')}`),
    ...trials.flatMap((trial) =>
      figuresOf(trial).flatMap((figure) => {
        const own = rows.filter((_, at) => names[at] === rowOfId(figure.id, trial.crop.id));
        return own.length === 1 && own[0] && same(own[0], figure) ? [] : [`${own.length} rows of ${figure.id}`];
      }),
    ),
  ];
}

describe.each(Object.keys(FOLDERS))('the tables of %s', (name) => {
  test('every figure of the pages stands in the estimates once, and no row is empty', () => {
    const { facts } = bookIn(name);
    expect(faultsOfEstimates(facts.ledger.trials)).toEqual([]);
  });

  test('every value is a record’s, once, and every basis is listed', () => {
    const { facts } = bookIn(name);
    const { garden, ledger } = facts;
    const plantings = garden.seasons.flatMap((season) => season.plantings);
    const keys = new Set(plantings.flatMap(({ key, fruits }) => [key, ...fruits.map((fruit) => fruit.key)]));
    const rows = rowsOf(valuesTable(ledger.trials));
    expect(rows.filter(({ record }) => !keys.has(String(record)))).toEqual([]);
    const names = rows.map((row) => texts(row, 'trait', 'record'));
    expect(names.filter((one, at) => names.indexOf(one) !== at)).toEqual([]);
    const slugs = garden.seasons.map(({ slug }) => slug);
    const ids = garden.varieties.map(({ id }) => id);
    expect(rows.filter((row) => !slugs.includes(String(row.season)) || !ids.includes(String(row.variety)))).toEqual([]);
    const bases = ledger.bases.all();
    const told = rowsOf(estimatesTable(ledger.trials)).filter(({ method }) => method !== 'shared-difference');
    expect(told.filter(({ basis }) => !bases[String(basis)])).toEqual([]);
  });

  test('nothing is claimed surer than the seasons allow', () => {
    const { facts } = bookIn(name);
    const most = [16, 16, 18][facts.garden.seasons.length] ?? 19;
    const rows = rowsOf(estimatesTable(facts.ledger.trials)).filter(({ unit }) => unit === 'of_twenty');
    const bold = rows.filter(({ value }) => typeof value === 'number' && (value > most || value < 20 - most));
    expect(bold).toEqual([]);
    const bets = answersOf(facts).flatMap((one) => one.bets);
    expect(bets.filter(({ of_twenty }) => of_twenty < 15 || of_twenty > most)).toEqual([]);
  });

  test('a home book has neither report nor poster, a community’s has both of what is compared', () => {
    const { facts, pages } = bookIn(name);
    const reports = pages.filter(({ path }) => path.startsWith('variety/all/')).map(({ path }) => path.split('/')[2]);
    const posters = pages
      .filter(({ path }) => path.startsWith('sheets/results-'))
      .map(({ path }) => path.slice('sheets/results-'.length, -1));
    const compared = facts.ledger.trials
      .filter(({ traits }) => traits.some(({ numbers }) => numbers.varieties.filter(({ level }) => level).length > 1))
      .map(({ crop }) => crop.id.toLowerCase());
    const wanted = facts.garden.about.edition === 'home' ? [] : compared;
    expect([reports, posters]).toEqual([wanted, wanted]);
  });

  test('a chart’s table holds what its chart draws', () => {
    const charts = bookIn(name)
      .pages.filter(({ chapter, path }) => chapter === 'variety' && path.startsWith('variety/all/'))
      .flatMap((page) => page.charts);
    for (const { id, table } of charts) {
      expect(table.id, id).toBe(id);
      const rows = rowsOf(table);
      expect(rows.length, id).toBeGreaterThan(0);
      expect(rows.filter((row) => Object.keys(row).length !== table.columns.length)).toEqual([]);
      if (id.endsWith('-against'))
        // A difference, its range and its chance together, or none of them.
        for (const row of rows)
          expect(new Set(['difference', 'low', 'high', 'better_of_twenty'].map((key) => row[key] === null)).size).toBe(
            1,
          );
      else expect(rows.filter(({ value }) => typeof value !== 'number')).toEqual([]);
    }
  });
});

test('the demo is the community garden of several seasons these tables need', () => {
  const { facts } = bookIn('the demo');
  const rows = rowsOf(estimatesTable(facts.ledger.trials));
  expect(new Set(rows.map(({ what }) => what))).toEqual(
    new Set([
      ...Object.values(WHAT),
      'season-share',
      'difference-told-from-other-seasons',
      'difference-that-came',
      'plain-difference',
      'plain-standard-error',
      'plain-standard-error-over-seasons',
      'plain-without-one-mound',
      'plain-without-one-season',
    ]),
  );
  expect(rows.some(({ about }) => about === 'better' || about === 'sweeter')).toBe(true);
});

test('of ratios a plain standard error is in times, as is the difference beside it', () => {
  // Logarithms of masses 2, 4 and 8, 16: twice four times apart, each mound √2 from its middle.
  const seasons = { 2025: [...mounds('amber', [2, 4, 2, 4]), ...mounds('birch', [8, 16, 8, 16])] };
  const { facts } = bookOfTexts(
    triedGarden({ crops: { globe: ['amber', 'birch'] }, seasons, settings: 'weights: {big: 1}\n' }),
  );
  const rows = rowsOf(estimatesTable(facts.ledger.trials)).filter(({ about }) => about === 'mass_kg');
  const of = (what: string): Row | undefined => rows.find((row) => row.what === what && row.season === null);
  expect(of('plain-difference')).toMatchObject({ unit: 'times', value: expect.closeTo(4, 9) });
  // Squares (ln √2)² of eight mounds on six degrees of freedom, times √(1/4 + 1/4).
  const logarithm = Math.sqrt((8 * Math.log(Math.SQRT2) ** 2) / 6) * Math.sqrt(1 / 2);
  expect(of('plain-standard-error')).toMatchObject({ unit: 'times', value: expect.closeTo(Math.exp(logarithm), 9) });
});

test('a value that cannot be had has no row: one season has no error over seasons', () => {
  const { facts } = bookOfTexts(triedGarden(SIX_CROPS));
  expect(faultsOfEstimates(facts.ledger.trials)).toEqual([]);
  const rows = rowsOf(estimatesTable(facts.ledger.trials));
  expect(rows.filter(({ what }) => String(what).includes('over-seasons'))).toEqual([]);
  expect(rows.filter(({ what }) => what === 'plain-without-one-season')).toEqual([]);
});

test('these gardens are all there are', () => {
  expect(readdirSync('tests/books/gardens').toSorted()).toEqual(GARDENS.map(({ name }) => name).toSorted());
});
