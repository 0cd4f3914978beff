import { expect, test } from 'vitest';
import type { Answer } from '../../../content/variety/answer.ts';
import { heldModel } from '../../../content/variety/held-model.ts';
import { tasteModels } from '../../../content/variety/taste-model.ts';
import { type TrialModel, trialModel } from '../../../content/variety/trial-model.ts';
import type { Book } from '../../../src/book/book.ts';
import type { CropTrial } from '../../../src/ledger/trial/crop-trial.ts';
import { buildSite } from '../../../src/site/build-site.ts';
import { createDraw } from '../../../src/site/draw.ts';
import { type Reading, readPage } from '../../books/reading.ts';
import { siteOfTexts } from '../../site/built.ts';
import { markupFaults } from '../../site/page-faults.ts';
import { bookOfTexts, mounds, pageAt, SIX_CROPS, trialOf, triedGarden } from './tried-garden.ts';

const book = bookOfTexts(triedGarden(SIX_CROPS));
const fan = trialOf(book.facts, 'fan');
const page = pageAt(book.pages, 'variety/all/fan/');

function modelOf(trial: CropTrial): TrialModel {
  const model = trialModel(book.facts, trial, null);
  if (!model) throw new Error('no model');
  return model;
}
const model = modelOf(fan);

/** The report with other contents, each on a page of its own, read as its reader meets them. */
async function reports(changes: Readonly<Record<string, Partial<TrialModel>>>): Promise<Record<string, Reading>> {
  const names = Object.keys(changes);
  const pages = names.map((name) => ({
    ...page,
    path: `variety/all/${name}/`,
    model: { ...model, ...changes[name] },
    figures: [],
  }));
  const site = await buildSite({ ...book, pages: [...book.pages, ...pages] } as Book, {
    layouts: 'layouts',
    content: 'content',
    version: '0.0.0',
    draw: createDraw(),
  });
  return Object.fromEntries(
    names.map((name) => {
      const html = String(site.get(`variety/all/${name}/index.html`));
      expect(markupFaults(name, html), name).toEqual([]);
      return [name, readPage(html)];
    }),
  );
}

const bet = (trait: string, of_twenty: number, more = 'Fern', less = 'Field') =>
  ({ trait, more, less, of_twenty, n: 3, of: 'mound' }) as const;

test('the boldest bet of each trait stands before a second of any, four at most', () => {
  const chances: Readonly<Record<string, Readonly<Record<string, number>>>> = {
    // Against Fern, the yardstick: Field, Fleet, Flint, Foam.
    sound_kg_per_plant: { field: 4, fleet: 3, flint: 2, foam: 1 },
    first_ripe_days: { field: 15, fleet: 12, flint: 10, foam: 6 },
  };
  const traits = fan.traits.map((one) => ({
    ...one,
    rows: one.rows.map((row) => {
      const value = chances[one.trait.id]?.[row.variety.id] ?? null;
      return { ...row, better: { ...row.better, value } };
    }),
  }));
  expect(modelOf({ ...fan, traits }).bets.map(({ trait, of_twenty }) => `${trait} ${of_twenty}`)).toEqual([
    'sound_kg_per_plant 19',
    'first_ripe_days 15',
    'sound_kg_per_plant 18',
    'sound_kg_per_plant 17',
  ]);
});

test('a bet the finding makes is not made again beneath it; a list’s finding makes none', () => {
  const egg = trialOf(book.facts, 'egg');
  const told = trialModel(book.facts, egg, null);
  expect(told?.answer.bets).toHaveLength(1);
  expect(told?.bets[0]).toEqual(told?.answer.bets[0]);
  expect(told?.more_bets).toEqual(told?.bets.slice(1));
  expect(model.answer.state).toBe('list');
  expect(model.more_bets).toEqual(model.bets);
});

test('one more spot: the best named, a second that teaches nearly as much beside it, and nobody where none teaches', () => {
  const [fern, field, fleet, frost] = ['fern', 'field', 'fleet', 'frost'].map((id) =>
    fan.varieties.find((variety) => variety.id === id),
  );
  if (!fern || !field || !fleet || !frost) throw new Error('no varieties');
  const again = (next: CropTrial['next']): readonly string[] => modelOf({ ...fan, next }).try_again;
  const spot = (variety: typeof fern, gain: number, grown = true) => ({ variety, gain, grown });
  expect(again([spot(field, 0.2), spot(fern, 0.15), spot(fleet, 0.1)])).toEqual(['Field']);
  // Eight tenths of the most are nearly as much.
  expect(again([spot(field, 0.2), spot(fern, 0.17), spot(fleet, 0.165)])).toEqual(['Field', 'Fern']);
  expect(again([spot(field, 0.009)])).toEqual([]);
  expect(again([])).toEqual([]);
  // One never grown here is named as such, and not as the one to try again.
  const untried = modelOf({ ...fan, next: [spot(frost, 0.9, false), spot(field, 0.2)] });
  expect(untried).toMatchObject({ try_again: ['Field'], untried: ['Frost'] });
});

test('each season told from the others: all misses, then hits up to ten rows, the rest counted', () => {
  const [variety] = fan.varieties;
  const [season] = fan.seasons;
  const [trait] = fan.traits;
  const said = trait?.rows[0]?.level;
  if (!variety || !season || !trait || !said) throw new Error('no trial');
  const row = (hit: boolean, came: number): CropTrial['held_out'][number] => ({
    variety,
    trait: trait.trait,
    season,
    said,
    told: {
      trait: trait.trait.id,
      season: season.slug,
      variety: variety.id,
      said: { value: 0, interval: { low: 0, high: 0, level: 0.9 } },
      came,
      hit,
      from: 1,
    },
  });
  const held = (misses: number, hits: number) =>
    heldModel({ ...fan, held_out: Array.from({ length: misses + hits }, (_, at) => row(at < hits, at)) });
  const few = held(3, 12);
  expect(few).toMatchObject({ said: 15, hits: 12, more: 5 });
  expect(few?.rows.map(({ hit }) => hit)).toEqual([false, false, false, ...Array(7).fill(true)]);
  // The hits were handed over first.
  expect(few?.rows.map(({ came }) => came)).toEqual([12, 13, 14, 0, 1, 2, 3, 4, 5, 6]);
  const many = held(12, 3);
  expect(many).toMatchObject({ said: 15, hits: 3, more: 3 });
  expect(many?.rows.map(({ hit }) => hit)).toEqual(Array(12).fill(false));
  expect(held(0, 2)).toMatchObject({ said: 2, hits: 2, more: 0 });
  expect(heldModel({ ...fan, held_out: [] })).toBeNull();
});

test('a wish is told by its trait, or told of as untold; one of weight none is left out', () => {
  const wishes = modelOf({ ...fan, weights: { sweet: 2, plenty: 3, big: 0, early: 1 } }).wishes;
  expect(wishes).toEqual([
    { key: 'sweet', weight: 2, trait: null },
    { key: 'plenty', weight: 3, trait: 'sound_kg_per_plant' },
    { key: 'early', weight: 1, trait: 'first_ripe_days' },
  ]);
});

test('plain means are printed of the two wishes that weigh most', () => {
  const weighing = (plenty: number, big: number, early: number): string[] =>
    modelOf({
      ...fan,
      wishes: [
        { key: 'plenty', trait: 'sound_kg_per_plant', weight: plenty },
        { key: 'big', trait: 'mass_kg', weight: big },
        { key: 'early', trait: 'first_ripe_days', weight: early },
      ],
    }).against.map(({ trait, plainly }) => `${trait} ${plainly}`);
  expect(weighing(1, 2, 3)).toEqual(['sound_kg_per_plant false', 'mass_kg true', 'first_ripe_days true']);
  // A ratio has no chart: without its table nothing is left to print.
  expect(weighing(2, 1, 3)).toEqual(['sound_kg_per_plant true', 'first_ripe_days true']);
});

test('what cannot be held against the yardstick at all has no section', () => {
  const bare = fan.traits.map((one) =>
    one.trait.id === 'first_ripe_days'
      ? {
          ...one,
          rows: one.rows.map((row) => ({ ...row, numbers: { ...row.numbers, difference: null, plain: null } })),
        }
      : one,
  );
  expect(modelOf({ ...fan, traits: bare }).against.map(({ trait }) => trait)).toEqual(['sound_kg_per_plant']);
  expect(model.against.map(({ trait }) => trait)).toEqual(['sound_kg_per_plant', 'first_ripe_days']);
});

test('the yardstick is in the table and on the list, but not held against itself', () => {
  expect(model.yardstick).toEqual({ name: 'Fern', by: 'longest' });
  expect(model.rows.map(({ name }) => name)).toEqual(['Fern', 'Field', 'Fleet', 'Flint', 'Foam', 'Frost']);
  expect(model.list.filter(({ yardstick }) => yardstick).map(({ name }) => name)).toEqual(['Fern']);
  for (const { rows } of model.against)
    expect(rows.map(({ name }) => name)).toEqual(['Field', 'Fleet', 'Flint', 'Foam', 'Frost']);
  // One mound of Frost is too few to hold it against anything but with a pencil: 5 kg less 8.5.
  const frost = model.against[0]?.rows.find(({ name }) => name === 'Frost');
  expect(frost?.difference.value).toBeNull();
  expect(frost?.plain?.value).toBeCloseTo(5 - 8.5, 9);
});

test('the report in words', async () => {
  const answer = (more: Partial<Answer>): Partial<TrialModel> => ({ answer: { ...model.answer, ...more } });
  const standings = { listed: ['Fern'], again: [], goes: [], few: [] };
  const cell = model.list[1]?.better;
  if (!cell) throw new Error('no list');
  const taste = (cannot: string | null, value: number | null): Partial<TrialModel> => ({
    tastes: [
      {
        question: 'sweeter',
        ballots: 12,
        fruits: 5,
        ranked: value !== null,
        rows: [{ name: 'Field', fruits: 3, ballots: 11, cannot: cannot as 'few-fruits', better: { ...cell, value } }],
      },
    ],
  });
  const text = await reports({
    same: { ...answer({ state: 'same' }), more_bets: [] },
    list: { ...answer({ state: 'list', choice: 6, listed: ['Fern'] }), more_bets: [bet('brix', 15), bet('liked', 16)] },
    bets: { ...answer({ state: 'bets', bets: [bet('brix', 16)] }), more_bets: [bet('first_ripe_days', 15)] },
    nothing: { try_again: [], standings, untried: [], moved_by_prior: [], other_wishes: [] },
    goes: {
      standings: { listed: ['Fern'], again: ['Fleet'], goes: ['Foam'], few: ['Frost', 'Flint'] },
      try_again: ['Field', 'Fern'],
      untried: ['Gale'],
      moved_by_prior: ['Field', 'Fleet', 'Foam'],
      other_wishes: [
        { key: 'sweet', change: 'more', comes: ['Foam'], leaves: ['Fern', 'Field'] },
        { key: 'early', change: 'less', comes: [], leaves: ['Fleet'] },
        { key: 'big', change: 'more', comes: ['Flint'], leaves: [] },
      ],
    },
    own: {
      own_weights: true,
      wishes: [
        { key: 'big', weight: 3, trait: 'mass_kg' },
        { key: 'looks', weight: 1, trait: null },
      ],
      yardstick: { name: 'Fern', by: 'marked' },
      placed: 'lot',
    },
    three: { seasons: ['2023', '2024', '2025'], placed: 'chosen' },
    two: { seasons: ['2024', '2025'] },
    ranked: taste(null, 17),
    yardstick: taste('yardstick', null),
    fruits: taste('few-fruits', null),
    ballots: taste('few-ballots', null),
    untasted: taste('yardstick-untasted', null),
    unjoined: taste('not-joined', null),
  });
  const says = (name: string, ...texts: (string | RegExp)[]): void => {
    for (const one of texts) expect(text[name]?.all, name).toMatch(one instanceof RegExp ? one : literally(one));
  };
  const never = (name: string, ...texts: string[]): void => {
    for (const one of texts) expect(text[name]?.all, name).not.toContain(one);
  };
  expect(text.same?.findings).toEqual(['We cannot tell our fans apart yet: every difference could be nothing.']);
  expect(text.list?.findings).toEqual(['Of 6 fan varieties, Fern stands on our short list.']);
  says(
    'list',
    'If we had to bet on our records: 15 in 20 that Fern is sweeter than Field; 16 in 20 that Fern is liked better than Field.',
  );
  expect(text.bets?.findings).toEqual(['Fans, if we had to bet: 16 in 20 that Fern is sweeter than Field.']);
  says('bets', 'And 15 in 20 that Fern is ripe sooner than Field.');
  says(
    'nothing',
    'One more spot of any would hardly change this list.',
    'Expecting half, or twice, the usual spread among varieties moves nothing on this list.',
    'One step more or less of any of these leaves the list as it is.',
    'Each alike, as the house has it',
  );
  never('nothing', 'can go', 'Never harvested', 'Too little is known', 'another try');
  says(
    'goes',
    'Foam can go: fewer than 2 in 20 that it serves us better than Fern.',
    'Nothing speaks against another try of Fleet.',
    'Too little is known of Frost and Flint.',
    'One more spot would teach most if it went to Field or Fern.',
    'Never harvested here: Gale.',
    'would move Field, Fleet and Foam on this list',
    'Minding how sweet it is more brings in Foam and puts out Fern and Field.',
    'Minding how soon it is ripe less puts out Fleet.',
    'Minding how big it grows more brings in Flint.',
  );
  says(
    'own',
    'How big it grows, 3; how it looks, 1 (nothing told of it).',
    'as garden.yaml has it',
    'Places were drawn by lot.',
  );
  never('own', 'Each alike', 'grown the longest');
  says(
    'nothing',
    'Fern, because it was grown the longest; none is marked as such.',
    'nothing here is said surer than 16 in 20, and it is said of 2025',
  );
  says('two', 'nothing here is said surer than 18 in 20');
  says(
    'three',
    '3 seasons. Nothing is said surer than 16 in 20 of one summer beside the yardstick, than 18 of two, than 19 of more.',
    'Places were chosen, so good ground can pass for a good variety.',
  );
  says('ranked', 'Sweeter on the tongue: 12 ballots on 5 fruits', 'Field 3 11 17 in 20 that a fruit of it is sweeter');
  says('yardstick', 'Field 3 11 the yardstick');
  says('fruits', 'Field 3 11 too few fruits to speak of the variety');
  says('ballots', 'Field 3 11 under ten ballots');
  says('untasted', 'Field 3 11 the yardstick was hardly tasted');
  says('unjoined', 'Field 3 11 never beside it, nor beside anything it stood beside');
  never('nothing', 'What did the tasters say?', 'Would the book have been right?', 'What was the summer’s share?');
});

const literally = (text: string): RegExp => new RegExp(text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));

/** Two southern summers, a wish for size and one for looks that nobody wrote of; orders of tasting in the second. */
const order = (fruits: readonly string[]): string => `- {tasted_on: 2026-02-21, best_first: [${fruits.join(', ')}]}\n`;
const BIG = triedGarden({
  crops: { globe: ['amber', 'birch', 'copper'] },
  seasons: {
    '2024/25': [...mounds('amber', [4, 4.4, 4.2]), ...mounds('birch', [6, 6.6, 6.2])],
    '2025/26': [
      { variety: 'amber', fruits: [{ kg: 4 }, { kg: 4.2, cut: 'state: prime' }], more: ', plants_alive: 1' },
      {
        variety: 'amber',
        fruits: [
          { kg: 4.5, cut: 'state: prime' },
          { kg: 4.1, cut: 'state: prime' },
        ],
      },
      {
        variety: 'birch',
        fruits: [
          { kg: 8, cut: 'state: prime' },
          { kg: 8.4, cut: 'state: prime' },
        ],
        more: ', plants_alive: 0',
      },
      { variety: 'birch', fruits: [{ kg: 9, cut: 'state: prime' }] },
      { variety: 'copper', fruits: [{ kg: 5, cut: 'state: prime' }] },
    ],
  },
  settings: 'weights: {big: 2, looks: 1}\n',
  tastings: {
    '2025/26': [
      ...Array.from({ length: 10 }, () => order(['S3-1', 'S3-2', 'S4-1', 'S1-2', 'S2-1', 'S2-2'])),
      order(['S5-1', 'S1-2']),
    ].join(''),
  },
});
const big = bookOfTexts(BIG);
const globe = trialOf(big.facts, 'globe');

test('a wish for size is told in times, in a table and in no chart', async () => {
  const told = trialModel(big.facts, globe, null);
  expect(told?.against).toMatchObject([{ trait: 'mass_kg', unit: 'times', chart: null, plainly: true }]);
  const birch = told?.against[0]?.rows.find(({ name }) => name === 'Birch');
  // Means of logarithms: in 2024/25 the cube roots of 6 · 6.6 · 6.2 and 4 · 4.4 · 4.2; in 2025/26 mounds
  // of √(8 · 8.4) and 9 beside √(4 · 4.2) and √(4.5 · 4.1).
  const first = Math.cbrt((6 * 6.6 * 6.2) / (4 * 4.4 * 4.2));
  const second = Math.sqrt((Math.sqrt(8 * 8.4) * 9) / (Math.sqrt(4 * 4.2) * Math.sqrt(4.5 * 4.1)));
  expect(birch?.plain?.value).toBeCloseTo(Math.sqrt(first * second), 9);
  // Over two seasons: half the difference of their logarithms, as times.
  expect(birch?.plain?.over_seasons_se).toBeCloseTo(Math.sqrt(second / first), 9);
  const page = pageAt(big.pages, 'variety/all/globe/');
  expect(page.charts.map(({ id }) => id)).toEqual(['variety-globe-seasons']);
  const { all } = readPage(String((await siteOfTexts(BIG)).get('variety/all/globe/index.html')));
  expect(all).toContain('One fruit, by plain means over the seasons both stood in, times');
  expect(all).toMatch(/Birch 2 1\.7 times 1\.0 1\.2 \S+ times to /);
  // Copper stood in one mound of one season: without it nothing is left.
  expect(all).toMatch(/Copper 1 1\.2 times .* nothing left What was the summer’s share\?/);
  expect(all).toContain('18 in 20 that Birch is heavier than Amber');
  expect(all).toContain('How big it grows, 2; how it looks, 1 (nothing told of it).');
});

test('southern summers keep their label, in the table, the panels and what was left out', () => {
  const told = trialModel(big.facts, globe, null);
  expect(told?.seasons).toEqual(['2024/25', '2025/26']);
  expect(told?.summers.map(({ label }) => label)).toEqual(['2024/25', '2025/26']);
  expect(new Set(told?.held?.rows.map(({ season }) => season))).toEqual(new Set(['2024/25', '2025/26']));
  expect(told?.entries.map(({ name, seasons }) => `${name} ${seasons.join(' ')}`)).toEqual([
    'Amber 2024/25 2025/26',
    'Birch 2024/25 2025/26',
    'Copper 2025/26',
  ]);
  const [panels] = pageAt(big.pages, 'variety/all/globe/').charts;
  expect(panels?.description).toContain('Birch, 2024/25: 6.0, 6.6, 6.2.');
  expect(panels?.description).not.toMatch(/20\d\d-\d\d/);
});

test('plants alive are told of the plants that were counted', () => {
  // Amber: five plants, one counted and alive; Birch: five, one counted and dead; Copper: none counted.
  const told = trialModel(big.facts, globe, null);
  expect(told?.entries.map((one) => [one.plants_set, one.plants_alive, one.plants_counted])).toEqual([
    [5, 1, 1],
    [5, 0, 1],
    [1, null, 0],
  ]);
});

test('tasters: three fruits and ten ballots of a variety before it is held against the yardstick', () => {
  const [better, ...others] = tasteModels(globe);
  expect(others).toEqual([]);
  // Six fruits in ten orders, and one order of Copper’s only fruit beside Amber’s.
  expect(better).toMatchObject({ question: 'better', ballots: 11, fruits: 7, ranked: true });
  expect(better?.rows).toMatchObject([
    { name: 'Amber', fruits: 3, ballots: 11, cannot: 'yardstick', better: { value: null } },
    { name: 'Birch', fruits: 3, ballots: 10, cannot: null, better: { value: expect.any(Number) } },
    { name: 'Copper', fruits: 1, ballots: 1, cannot: 'few-fruits', better: { value: null } },
  ]);
  // All of Birch before all of Amber, ten times; in one season, so at most 16.
  const value = better?.rows[1]?.better.value ?? 0;
  expect(value).toBeGreaterThan(13);
  expect(value).toBeLessThanOrEqual(16);
});
