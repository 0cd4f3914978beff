import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { tankChart } from '../../../content/water/tank-charts.ts';
import { figuresOfTank, type TankModel, tankModel } from '../../../content/water/tank-model.ts';
import { tankTables } from '../../../content/water/tank-tables.ts';
import type { Facts } from '../../../src/book/chapter.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { addDays, type Day } from '../../../src/day.ts';
import type { TankPlan } from '../../../src/ledger/water/tank-plan.ts';
import type { Afford } from '../../../src/ledger/water/tank-replay.ts';
import { createFilters } from '../../../src/site/filters.ts';
import { createMessages } from '../../../src/site/messages.ts';
import { createTemplates } from '../../../src/site/templates.ts';
import { INCH_EXAMPLES } from '../../published/water/roof-runoff.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

const reference = loadReference('data/reference');

/** A box of 1000 litres, 100 of them below the tap. */
const BOX = 'shape: box, length_cm: 100, width_cm: 100, height_cm: 100, tap_cm: 10';

interface Rows {
  readonly tank?: string | null;
  readonly edition?: 'home' | 'community';
  readonly units?: 'metric' | 'us';
  readonly today?: string;
}

/** Ten millimetres fall between two dips; one spot is watered from the tank, and another time from the main. */
function factsOf({
  tank = `${BOX}, roof_m2: 10, roof_of: tiles, first_flush_l: 5, flow_l_min: 5`,
  edition = 'community',
  units = 'metric',
  today = '2025-07-20',
}: Rows = {}): Facts {
  const { garden, problems } = linkTexts({
    'garden.yaml': `name: T\nedition: ${edition}\nunits: ${units}\npaper: A4\nlocale: en-GB\nmeasures: {can_l: 10}\nweather: {station: post, read: evening}\n${tank === null ? '' : `tank: {${tank}}\n`}spots: [{id: S1, kind: mound, area_m2: 4}]\n`,
    'varieties.yaml': '- {id: amber, name: Amber, crop: watermelon, seed: unknown}\n',
    'weather/post.csv':
      'date,rain_mm\n2025-06-30,0\n2025-07-01,0\n2025-07-02,10\n2025-07-03,0\n2025-07-04,0\n2025-07-05,0\n',
    'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-09-30\n',
    'seasons/2025/plantings.yaml': '- {id: P1, spot: S1, variety: amber, planted_on: 2025-05-20, plants_set: 2}\n',
    ...(tank !== null && {
      'seasons/2025/dips.yaml':
        '- {dipped_on: 2025-07-01, volume_l: 500}\n- {dipped_on: 2025-07-04, volume_l: 553}\n- {dipped_on: 2025-07-12, volume_l: 400}\n',
      'seasons/2025/waterings.yaml':
        '- {watered_on: 2025-07-03, spots: [S1], cans_each: 2}\n- {watered_on: 2025-07-03, spots: [S1], cans_each: 1, from: mains}\n',
    }),
  });
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid garden: ${JSON.stringify(errors)}`);
  return bookOf({ reference }, garden, today as Day).facts;
}

/** Fifteen past years from 1 June to 20 August, 81 days; four of them ran dry. */
const DRY_DAYS = [40, 52, 60, 71];
const replay = (dry_days: readonly number[]): TankPlan['replay'] => ({
  years: Array.from({ length: 15 }, (_, index) => ({ label: `${2010 + index}`, dry_day: dry_days[index] ?? null })),
  dry: dry_days.length,
  of: 15,
});
const PLAN: TankPlan = {
  first: '2025-06-01' as Day,
  last: '2025-08-20' as Day,
  start_l: 1000,
  start_from: 'full',
  replay: replay(DRY_DAYS),
  thirstier: replay([...DRY_DAYS, 75, 78]),
  afford: { less_l_week: 10, wanted_l_week: 140, dry: 1, of: 15 },
  band: Array.from({ length: 81 }, (_, day) => ({
    lowest_l: 1000 - 11 * day,
    middle_l: 1000 - 5 * day,
    highest_l: 1000,
  })),
  wanted_l_week: 140,
};

/** The same facts with a plan worked out by hand. */
function planned(plan: Partial<TankPlan> = {}, rows: Rows = {}): Facts {
  const facts = factsOf(rows);
  if (!facts.ledger.water) throw new Error('there is no water');
  return { ...facts, ledger: { ...facts.ledger, water: { ...facts.ledger.water, tank_plan: { ...PLAN, ...plan } } } };
}

function modelOf(facts: Facts): TankModel {
  const model = tankModel(facts);
  if (!model) throw new Error('there is no tank');
  return model;
}

const keysOf = ({ ledger }: Facts, basis: string | undefined): readonly string[] =>
  ledger.bases.all()[basis ?? ''] ?? [];

describe('how many past years ran dry', () => {
  const facts = planned();
  const { plan } = modelOf(facts);

  // 1 June and 40 days are 11 July, and 71 days 11 August.
  test('is a count, with the soonest and the latest day in the year of the plan', () => {
    expect(plan).toMatchObject({ of: 15, soonest: '2025-07-11', latest: '2025-08-11', last: '2025-08-20' });
    expect(plan?.dry).toMatchObject({ id: 'water.tank.dry_years', value: 4, unit: 'years', n: 15, interval: null });
    expect(plan?.dry.replicate).toEqual({ kind: 'year', count: 15 });
    expect(plan?.thirstier.value).toBe(6);
  });
  test('stands with what is wanted, in cans too, and how long a full tank lasts', () => {
    expect([plan?.wanted.value, plan?.wanted_cans.value]).toEqual([140, 14]);
    // 900 litres above the tap, twenty a day.
    expect(plan?.lasts).toMatchObject({ value: 45, unit: 'days' });
  });
  test('and has the station, the planting and the tank’s waterings under it', () => {
    const keys = keysOf(facts, plan?.dry.basis);
    expect(keys).toContain('weather/post/2025-06-30..2025-07-05');
    expect(keys.filter((key) => key.includes('waterings'))).toHaveLength(1);
    expect(keys.filter((key) => key.includes('plantings'))).toHaveLength(1);
    expect(keys.filter((key) => key.includes('dips'))).toHaveLength(0);
    const running = planned({ start_from: 'dip', start_l: 400 });
    expect(keysOf(running, modelOf(running).plan?.dry.basis).filter((key) => key.includes('dips'))).toHaveLength(1);
  });
  test('none dry has no day', () => {
    expect(modelOf(planned({ replay: replay([]) })).plan).toMatchObject({ soonest: null, latest: null });
  });
  test('every figure of a model is listed once', () => {
    const ids = figuresOfTank(modelOf(planned({ start_from: 'dip', start_l: 400 }))).map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toHaveLength(18);
    expect(ids.every((id) => /^water\.(2025\.)?tank\./.test(id))).toBe(true);
  });
});

describe('what giving up some water would do', () => {
  const cut = (afford: Afford | null): [string | undefined, number | null | undefined] => {
    const { plan } = modelOf(planned({ afford }));
    return [plan?.cut, plan?.less?.litres.value ?? null];
  };
  const less = (less_l_week: number): Afford => ({ less_l_week, wanted_l_week: 140, dry: 1, of: 15 });

  test('ten litres a week are one can, and leave one dry year', () => {
    expect(modelOf(planned()).plan?.less).toMatchObject({
      litres: { value: 10, unit: 'l_per_week' },
      cans: { value: 1 },
      dry: { value: 1 },
    });
  });
  test('a cut that leaves half is told, one that leaves less is not, and none is none', () => {
    expect(cut(less(70))).toEqual(['less', 70]);
    expect(cut(less(75))).toEqual(['too-much', null]);
    expect(cut(null)).toEqual(['too-much', null]);
    expect(cut(less(0))).toEqual(['stands', null]);
  });
});

describe('off the roof', () => {
  // 10 mm on 10 m² of tiles, of which 0.8 to 0.9 run off: 80 to 90 litres, less the first five.
  test('by hand', () => {
    const { roof } = modelOf(factsOf());
    expect([roof?.low.value, roof?.high.value, roof?.first_flush_l]).toEqual([75, 85, 5]);
    expect(roof?.low).toMatchObject({ method: 'roof-water', source: 'enhealth-tanks' });
  });
  // Worked for shingle by Root Simple, with 0.6 gallons a square foot and inch for the exact 144 / 231.
  test('an inch, as a worked example prints it', () => {
    const example = INCH_EXAMPLES.find(({ from }) => from.startsWith('Root Simple'));
    if (!example) throw new Error('there is no example');
    const { roof } = modelOf(
      factsOf({ units: 'us', tank: `${BOX}, roof_ft2: ${example.footprint_ft2}, roof_of: shingle` }),
    );
    expect(roof?.rain_mm).toBe(25.4);
    const gallons = (roof?.high.value ?? 0) / 3.785411784;
    const printed = (Number(example.printed_gal) / example.rain_in / example.gal_ft2_in) * (144 / 231);
    expect(gallons / printed).toBeCloseTo(1, 5);
  });
});

describe('a tap left open', () => {
  // 900 litres above the tap at five a minute are three hours; 300 of them one hour, told in minutes.
  test('empties the tank and fills a can, by hand', () => {
    const { tap } = modelOf(planned({ start_from: 'dip', start_l: 400 }));
    expect(tap?.full).toMatchObject({ value: 3, unit: 'hours' });
    expect(tap?.today).toMatchObject({ value: 60, unit: 'minutes' });
    expect(tap?.can).toMatchObject({ value: 2, unit: 'minutes' });
  });
  test('says nothing of today without a dip, and nothing at all without a measured flow', () => {
    expect(modelOf(planned()).tap?.today).toBeNull();
    expect(modelOf(factsOf({ tank: BOX })).tap).toBeNull();
  });
});

describe('dips against what was reckoned', () => {
  const facts = factsOf();
  const { dips } = modelOf(facts);

  // 500 litres; 10 mm bring 0.85 · 100 − 5 = 80, two cans take 20: 560. The stick says 553, three days later: −7 · 7 / 3.
  // From 4 to 12 July nobody told the rain, so that pair does not count.
  test('by hand', () => {
    expect(dips).toMatchObject({ season: '2025', pairs: 1 });
    expect(dips?.bias.value).toBeCloseTo((-7 * 7) / 3, 9);
    expect(dips?.bias).toMatchObject({ id: 'water.2025.tank.bias_l_per_week', unit: 'l_per_week', n: 1 });
    expect(dips?.widest.value).toBeCloseTo(7, 9);
  });
  test('have both dips, the cans from the tank and the station under them, and no cans from the main', () => {
    const keys = keysOf(facts, dips?.bias.basis);
    expect(keys.filter((key) => key.includes('dips'))).toHaveLength(2);
    expect(keys.filter((key) => key.includes('waterings'))).toHaveLength(1);
    expect(keys.filter((key) => key.startsWith('weather/'))).toHaveLength(1);
  });
  test('without a roof there is nothing to hold them against', () =>
    expect(modelOf(factsOf({ tank: BOX })).dips).toBeNull());
});

describe('without a plan', () => {
  test.each([
    ['roof', { tank: BOX }],
    ['thermometer', {}],
  ] as const)('it says that the %s is missing', (lacks, rows) =>
    expect(modelOf(factsOf(rows))).toMatchObject({ plan: null, lacks, chart: null }),
  );
  test('a garden without a tank, or with one of unknown size, has no such part', () => {
    expect(tankModel(factsOf({ tank: null }))).toBeNull();
    expect(tankModel(factsOf({ tank: 'roof_m2: 10' }))).toBeNull();
  });
});

describe('the chart and the tables', () => {
  test('a community’s book draws the levels; a home’s has them as a table alone', () => {
    const ids = (facts: Facts): string[] => tankTables(facts).map(({ id }) => id);
    const community = planned();
    expect(tankChart(community)?.table.id).toBe('tank-levels');
    expect(ids(community)).toEqual(['tank-replay', 'tank-dips']);
    const home = planned({}, { edition: 'home' });
    expect(tankChart(home)).toBeNull();
    expect(ids(home)).toEqual(['tank-replay', 'tank-levels', 'tank-dips']);
    expect(ids(factsOf({ tank: null }))).toEqual([]);
  });
  test('dips stand on it while their season runs, and not beside the plan of the next', () => {
    expect(modelOf(planned()).chart).toEqual({ id: 'tank-levels', dipped: true });
    const next = planned({ first: '2026-06-01' as Day, last: '2026-08-20' as Day });
    expect(modelOf(next).chart).toEqual({ id: 'tank-levels', dipped: false });
    expect(JSON.stringify(tankChart(next)?.spec)).not.toContain('"litres":553');
    expect(JSON.stringify(tankChart(planned())?.spec)).toContain('"litres":553');
  });
  test('rows are dated: the dry day of each year, each day of the levels, each dip', () => {
    const [replayed, , dips] = tankTables(planned({}, { edition: 'home' }));
    expect(replayed?.rows[0]).toEqual(['2010', '2025-07-11', '2025-07-11']);
    expect(replayed?.rows[4]).toEqual(['2014', null, addDays('2025-06-01' as Day, 75)]);
    expect(dips?.rows).toEqual([
      ['2025', '2025-07-01', 500, null, null],
      ['2025', '2025-07-04', 553, 560, 3],
      ['2025', '2025-07-12', 400, null, null],
    ]);
  });
});

describe('on the page', () => {
  const text = (name: string): string => readFileSync(`layouts/messages/${name}.yaml`, 'utf8');
  const messages = createMessages('en-GB', text('en'), text('en-GB'));

  /** Words of the part alone, tags taken away. */
  function words(facts: Facts): string {
    const templates = createTemplates(
      ['layouts', 'content'],
      createFilters(facts.format, messages),
      messages,
      () => '',
    );
    const drawn = tankChart(facts);
    const charts = drawn ? { [drawn.id]: { ...drawn, svg: '', csv: '' } } : {};
    const { edition, paper } = facts.garden.about;
    return templates
      .render('water/tank.njk', {
        model: { tank: tankModel(facts) },
        book: { edition, paper },
        leaf: { root: '' },
        charts,
      })
      .replace(/<[^>]+>/g, ' ')
      .replaceAll('&nbsp;', ' ')
      .replace(/\s+/g, ' ')
      .replace(/ ([.,:;])/g, '$1');
  }

  test('the count comes first, then how sure, and never as a chance', () => {
    const said = words(planned());
    expect(said).toContain(
      'In 4 of 15 years gone by this plan would have run the tank dry before 20 Aug, the soonest on 11 Jul, the latest on 11 Aug.',
    );
    expect(said).toContain('Give up 10 litres a week, about one can, and it is 1 of 15.');
    expect(said).toContain('no chance of this one');
    expect(said).toContain('one pair of dips in 2025 the stick found 16 less than was reckoned, in litres a week');
    expect(said).toContain('With a fifth more wanted 6 of 15');
    expect(said).not.toMatch(/%|probab|likely|undefined|null|NaN/);
  });
  test('where no cut helps it says so, and who comes first', () => {
    const said = words(planned({ afford: null, replay: replay(Array.from({ length: 15 }, () => 20)) }));
    expect(said).toContain('In every one of 15 years gone by');
    expect(said).toContain('on 21 Jun. It starts full');
    expect(said).toContain('No cut helps that leaves half');
    expect(said).toMatch(/Who gets water first: those with set fruit.*Common practice, no source/);
  });
  test('a plan that may stand, from today’s level', () => {
    const afford = { less_l_week: 0, wanted_l_week: 140, dry: 0, of: 15 };
    const said = words(planned({ afford, replay: replay([]), start_from: 'dip', start_l: 400 }));
    expect(said).toContain('In none of 15 years gone by');
    expect(said).toContain('Nothing need be given up.');
    expect(said).toContain('with 400 litres, reckoned on from the last dip');
    expect(said).toContain('from today’s level in 60 minutes');
  });
  test('a home book has it short', () => {
    const [home, community] = [words(planned({}, { edition: 'home' })), words(planned())];
    expect(home).toContain('In 4 of 15 years gone by');
    expect(home).toContain('16 less than was reckoned');
    expect(home).not.toContain('in numbers');
    expect(home.length).toBeLessThan(0.75 * community.length);
  });
  test.each([
    [{ tank: BOX }, /without the roof that fills it/],
    [{}, /a gauge, a thermometer and the place/],
  ])('what is missing is told in words: %o', (rows, says) => expect(words(factsOf(rows))).toMatch(says));
  test('without a tank nothing is printed', () => expect(words(factsOf({ tank: null })).trim()).toBe(''));
});
