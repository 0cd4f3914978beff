import type { Facts } from '../../src/book/chapter.ts';
import { column, type Table } from '../../src/book/table.ts';
import { type FirstFlowers, rowsOf } from './first-flowers.ts';
import { taggedLines } from './tagged.ts';

/** Over all seasons; those without a row are left out. */
export const tables = (facts: Facts, first: readonly FirstFlowers[]): Table[] =>
  [firstTable(facts, first), taggedTable(facts), insectsTable(facts)].filter(({ rows }) => rows.length > 0);

const firstTable = ({ garden: { seasons }, ledger }: Facts, first: readonly FirstFlowers[]): Table => ({
  id: 'flowers-first',
  title: 'First male and first female flowers',
  columns: [
    column('season', 'Season'),
    column('crop', 'Crop'),
    column('planting', 'Planting'),
    column('first_male', 'First male'),
    column('male_days', 'Days from planting out, male', 'days'),
    column('first_female', 'First female'),
    column('female_days', 'Days from planting out, female', 'days'),
  ],
  rows: ledger.years
    .filter(({ crop }) => first.some((one) => one.crop === crop.id))
    .flatMap(({ crop }) =>
      seasons.flatMap((season) =>
        rowsOf(season, crop).map(({ planting, male, female }) => [
          season.slug,
          crop.id,
          planting?.id ?? null,
          male?.on ?? null,
          male?.days ?? null,
          female?.on ?? null,
          female?.days ?? null,
        ]),
      ),
    ),
});

const taggedTable = (facts: Facts): Table => ({
  id: 'flowers-tagged',
  title: 'Flowers tagged and looked at again: how many set',
  columns: [
    column('season', 'Season'),
    column('crop', 'Crop'),
    column('carrier', 'Pollen carried by'),
    column('flowers', 'Flowers'),
    column('took', 'Of them set'),
    column('of_ten', 'Of ten', 'of_ten'),
    column('of_ten_low', 'Of ten, least', 'of_ten'),
    column('of_ten_high', 'Of ten, most', 'of_ten'),
  ],
  rows: facts.garden.seasons.flatMap((season) =>
    taggedLines(facts, season).map(({ crop, carrier, flowers, took, of_ten }) => [
      season.slug,
      crop,
      carrier,
      flowers,
      took,
      of_ten.value,
      of_ten.interval?.low ?? null,
      of_ten.interval?.high ?? null,
    ]),
  ),
});

const insectsTable = ({ garden: { seasons } }: Facts): Table => ({
  id: 'flowers-insects',
  title: 'Insects on the open flowers in ten minutes',
  columns: [column('season', 'Season'), column('seen_on', 'Seen'), column('insects', 'Insects')],
  rows: seasons.flatMap(({ slug, events }) =>
    events.flowering.flatMap(({ what, insects, seen_on }) =>
      what === 'insects-counted' && insects !== null ? [[slug, seen_on.text, insects]] : [],
    ),
  ),
});
