import { expect, test } from 'vitest';
import { type Answer, answersOf } from '../../../content/variety/answer.ts';
import { type Bet, betsOf } from '../../../content/variety/bet.ts';
import type { Facts } from '../../../src/book/chapter.ts';
import type { CropTrial, TraitRow, TrialTrait } from '../../../src/ledger/trial/crop-trial.ts';
import { TRAITS, type TraitId } from '../../../src/ledger/trial/trait.ts';
import { readPage } from '../../books/reading.ts';
import { siteOfTexts } from '../../site/built.ts';
import { bookOfTexts, mounds, SIX_CROPS, triedGarden } from './tried-garden.ts';

const six = triedGarden(SIX_CROPS);
const { facts, pages } = bookOfTexts(six);
const answers = answersOf(facts);
const of = (crop: string): Answer => {
  const found = answers.find((one) => one.crop === crop);
  if (!found) throw new Error(`no answer of ${crop}`);
  return found;
};

test('each crop has its state, and those with most to say stand first', () => {
  expect(answers.map(({ crop, state }) => `${crop} ${state}`)).toEqual([
    'fan list',
    'egg bets',
    'disc same',
    'cone few',
    'bell alone',
    'arc none',
  ]);
});

test('a list chooses among those that are known, in the alphabet’s order, and bets beside it', () => {
  // Frost has one mound.
  expect(of('fan')).toMatchObject({ choice: 5, only: 'Fern', this_summer: '2025', seasons: 1 });
  expect(of('fan').listed).toEqual(of('fan').listed.toSorted());
  expect(of('fan').listed.length).toBeGreaterThanOrEqual(3);
  expect(of('fan').listed).toEqual(expect.arrayContaining(['Fern', 'Field']));
  expect(of('fan').listed).not.toContain('Foam');
  // The finding of a list holds no bet, so all stand beneath it.
  expect(of('fan').more_bets).toEqual(of('fan').bets);
});

test('of a few the finding holds the first bet, and the others stand beneath', () => {
  // No yardstick is marked: three mounds each, so the first in the alphabet.
  expect(of('egg')).toMatchObject({ listed: [], yardstick: 'East' });
  expect(of('egg').bets).toEqual([
    { trait: 'sound_kg_per_plant', more: 'Ember', less: 'East', of_twenty: 16, n: 3, of: 'mound' },
  ]);
  expect(of('egg').more_bets).toEqual([]);
});

test('the others hold no bet, and one alone is named', () => {
  for (const crop of ['disc', 'cone', 'bell', 'arc']) expect(of(crop), crop).toMatchObject({ bets: [], listed: [] });
  expect(of('bell').only).toBe('Beryl');
  expect(of('arc').only).toBeNull();
});

test('a community has a report and a poster of each crop whose varieties are compared, a home book none', () => {
  const reports = (paths: readonly string[]): string[] =>
    paths.filter((path) => path.startsWith('variety/all/') || path.startsWith('sheets/results-')).sort();
  const compared = ['disc', 'egg', 'fan'];
  expect(reports(pages.map(({ path }) => path))).toEqual([
    ...compared.map((crop) => `sheets/results-${crop}/`),
    ...compared.map((crop) => `variety/all/${crop}/`),
  ]);
  expect(answers.filter(({ path }) => path !== null).map(({ path }) => path)).toEqual([
    'variety/all/fan/',
    'variety/all/egg/',
    'variety/all/disc/',
  ]);
  const home = bookOfTexts(triedGarden({ ...SIX_CROPS, edition: 'home' }));
  expect(reports(home.pages.map(({ path }) => path))).toEqual([]);
  expect(answersOf(home.facts).filter(({ path }) => path !== null)).toEqual([]);
});

test('the page says all of it in a sentence a crop, those without a harvest left out', async () => {
  const site = await siteOfTexts(six);
  const { findings, all } = readPage(String(site.get('variety/index.html')));
  const listed = of('fan').listed;
  const names = `${listed.slice(0, -1).join(', ')} and ${listed.at(-1)}`;
  expect(findings).toEqual([
    [
      `Of 5 fan varieties, ${names} stand on our short list.`,
      'Eggs, if we had to bet: 16 in 20 that Ember gives more than East.',
      'We cannot tell our discs apart yet: every difference could be nothing.',
      'Which cone is better nobody can say yet: it takes three ripe fruits, or three spots, of two varieties.',
      'Beryl, our only bell with a harvest, has nothing to be held against.',
    ].join(' '),
  ]);
  expect(all).toContain('All of it: Fans, variety against variety.');
  expect(all).toContain('That is 2025, one summer.');
  // A report speaks of its own crop alone.
  const report = readPage(String(site.get('variety/all/egg/index.html')));
  expect(report.findings).toEqual(['Eggs, if we had to bet: 16 in 20 that Ember gives more than East.']);
  expect(report.all).not.toMatch(/Fern|Foam|Dune|Cedar|Beryl|Aster/);
  expect(report.all).not.toContain('How each stands to Fern');
});

test('a home page of a variety has one sentence of it, a community’s a table', async () => {
  const home = readPage(
    String((await siteOfTexts(triedGarden({ ...SIX_CROPS, edition: 'home' }))).get('variety/ember/index.html')),
  );
  expect(home.paragraphs.filter((text) => /bet|in 20/.test(text))).toEqual([
    expect.stringMatching(/^If we had to bet on our records: 16 in 20 that Ember .* East\. That is one summer\.$/),
  ]);
  expect(home.all).not.toMatch(/What to expect|variety against variety|short list/);
});

const rowOf = (name: string, of_twenty: number | null): TraitRow =>
  ({
    variety: { id: name.toLowerCase(), name },
    numbers: { n: 7 },
    better: { value: of_twenty },
  }) as unknown as TraitRow;

function traitOf(id: TraitId, rows: readonly (readonly [string, number | null])[]): TrialTrait {
  const trait = TRAITS.find((one) => one.id === id);
  if (!trait) throw new Error(`no trait ${id}`);
  return { trait, rows: rows.map(([name, value]) => rowOf(name, value)) } as unknown as TrialTrait;
}

const YARDSTICK = { yardstick: { variety: { id: 'amber', name: 'Amber' }, by: 'marked' } } as unknown as CropTrial;
const said = (bets: readonly Bet[]): string[] =>
  bets.map(({ more, less, of_twenty }) => `${of_twenty} ${more} ${less}`);

test('a bet is turned the bolder way round, and one under 15 in 20 is dropped', () => {
  const bets = betsOf(
    YARDSTICK,
    traitOf('brix', [
      ['Birch', 17],
      ['Copper', 3],
      ['Dusk', 14],
      ['Ember', 6],
      ['Flint', null],
      ['Gorse', 15],
      ['Heath', 5],
      ['Iris', 10],
    ]),
  );
  expect(said(bets).toSorted()).toEqual(['15 Amber Heath', '15 Gorse Amber', '17 Amber Copper', '17 Birch Amber']);
  expect(bets[0]).toMatchObject({ trait: 'brix', n: 7, of: 'fruit' });
});

test('the boldest stands first; of equals what beats the yardstick, then the alphabet’s order', () => {
  const rows = [
    ['Birch', 3],
    ['Copper', 16],
    ['Dusk', 17],
    ['Ember', 17],
    ['Flint', 2],
  ] as const;
  expect(said(betsOf(YARDSTICK, traitOf('brix', rows)))).toEqual([
    '18 Amber Flint',
    '17 Dusk Amber',
    '17 Ember Amber',
    '17 Amber Birch',
    '16 Copper Amber',
  ]);
});

test('fewer days are better: the chance is read as the trait means it', () => {
  // Of days, `better` is the chance of being ripe sooner already.
  expect(said(betsOf(YARDSTICK, traitOf('first_ripe_days', [['Birch', 18]])))).toEqual(['18 Birch Amber']);
});

/** Wishes of a trial with hand-made chances, on the trial of the eggs. */
function betting(wishes: CropTrial['wishes'], traits: readonly TrialTrait[]): Answer {
  const egg = facts.ledger.trials.find(({ crop }) => crop.id === 'egg');
  if (!egg) throw new Error('no eggs');
  const trial = { ...egg, ...YARDSTICK, wishes, traits } as CropTrial;
  const [answer] = answersOf({ ...facts, ledger: { ...facts.ledger, trials: [trial] } } as Facts);
  if (!answer) throw new Error('no answer');
  return answer;
}

const TOLD = [
  traitOf('brix', [
    ['Birch', 16],
    ['Copper', 17],
  ]),
  traitOf('sound_kg_per_plant', [
    ['Birch', 15],
    ['Copper', 1],
  ]),
  traitOf('mass_kg', [['Birch', 19]]),
  traitOf('first_ripe_days', [['Birch', 12]]),
].map((one) => ({ ...one, numbers: { cannot: null } }) as unknown as TrialTrait);

test('one bet a trait, the boldest of it, in the order of the wishes, two at most', () => {
  const answer = betting(
    [
      { key: 'sweet', trait: 'brix', weight: 1 },
      { key: 'plenty', trait: 'sound_kg_per_plant', weight: 2 },
      { key: 'big', trait: 'mass_kg', weight: 1 },
      { key: 'early', trait: 'first_ripe_days', weight: 3 },
    ],
    TOLD,
  );
  // Early weighs most and has no bold bet; then plenty; sweet before big, which weigh alike.
  expect(answer.bets.map(({ trait, more, of_twenty }) => [trait, more, of_twenty])).toEqual([
    ['sound_kg_per_plant', 'Amber', 19],
    ['brix', 'Copper', 17],
  ]);
  expect(answer.more_bets).toEqual(answer.bets.slice(1));
});

test('two wishes told by one trait make one bet, and a wish of weight 0 none', () => {
  const answer = betting(
    [
      { key: 'plenty', trait: 'sound_kg_per_plant', weight: 1 },
      { key: 'reliable', trait: 'sound_kg_per_plant', weight: 1 },
      { key: 'sweet', trait: 'brix', weight: 0 },
    ],
    TOLD,
  );
  expect(answer.bets.map(({ trait }) => trait)).toEqual(['sound_kg_per_plant']);
});

test('of one season nothing is said surer than 16 in 20, of two than 18', () => {
  const apart = [...mounds('east', [3.9, 4, 4.1], [10, 14, 18]), ...mounds('ember', [18, 18.2, 18.4], [20, 24, 28])];
  const garden = (seasons: Record<string, typeof apart>) =>
    answersOf(bookOfTexts(triedGarden({ crops: { egg: ['east', 'ember'] }, seasons })).facts);
  const boldest = (seasons: Record<string, typeof apart>): number =>
    Math.max(...garden(seasons).flatMap(({ bets }) => bets.map(({ of_twenty }) => of_twenty)));
  expect(boldest({ 2025: apart })).toBe(16);
  expect(boldest({ 2024: apart, 2025: apart })).toBe(18);
  expect(garden({ 2024: apart, 2025: apart })[0]).toMatchObject({ seasons: 2, this_summer: null });
});

test('a marked yardstick of which too little is told is named as what is lacking', async () => {
  const texts = triedGarden({
    crops: { kite: ['kelp', 'kohl', 'knoll'] },
    of: { kelp: ', yardstick: yes' },
    seasons: { 2025: [...mounds('kelp', [3]), ...mounds('kohl', [4, 5, 6]), ...mounds('knoll', [1, 2, 3])] },
  });
  const [answer] = answersOf(bookOfTexts(texts).facts);
  expect(answer).toMatchObject({ state: 'few', yardstick: 'Kelp', yardstick_untold: true });
  const { findings } = readPage(String((await siteOfTexts(texts)).get('variety/index.html')));
  expect(findings).toEqual(['Too little is told of Kelp, our yardstick, to hold other kites against it.']);
  expect(of('cone').yardstick_untold).toBe(false);
});
