import { describe, expect, test } from 'vitest';
import type { Day } from '../../src/day.ts';
import { asOf } from '../../src/garden/as-of.ts';
import { type Ledger, openLedger } from '../../src/ledger/ledger.ts';
import type { CropRipeness, SignEvidence } from '../../src/ledger/ripeness/crop-ripeness.ts';
import type { JudgedFruit } from '../../src/ledger/ripeness/judged-fruit.ts';
import { daysReached } from '../../src/ledger/ripeness/sign-shown.ts';
import { linkTexts } from '../reading/garden-texts.ts';
import { planting, type Rows, smallGarden } from './small-garden.ts';

const sign = (id: string, shown: string, on_card = 'yes'): string =>
  `  - {id: ${id}, drawing: size, names: {en: ${id}}, helps: {en: look}, on_card: ${on_card}, shown: {${shown}}, sources: []}\n`;
const TENDRIL = sign('tendril', 'tendril: [half-brown, dry]');
const DAYS = 'ripe_days: {set_days_low: 35, set_days_high: 45, sources: []}\n';
/** On the card: days, tendril, spot, sound, and last how it parts. */
const CROP = `${DAYS}signs:\n${TENDRIL}${sign('spot', 'ground_spot: [butter, deep]')}${sign('sound', 'sound: [hollow]')}${sign('skin', 'rind: [matte]', 'no')}${sign('parts', 'parted: [at-a-lift, with-a-tug]')}`;

const ON = '2025-08-12';
const fruit = (id: string, parts: string, fate = 'picked'): string =>
  `- {id: ${id}, planting: P1, fate: ${fate}, ${parts}}\n`;
const pick = (more = '', on = ON): string => `pick: {picked_on: ${on}${more && `, ${more}`}}`;
const cut = (state: string, more = '', on = ON): string =>
  `cut: {cut_on: ${on}, state: ${state}${more && `, ${more}`}}`;
const visit = (id: string, on: string, looks: string, more = ''): string =>
  `- {id: ${id}, visited_on: ${on}${more}, fruits: [${looks}]}\n`;

function ledgerOf(rows: Partial<Rows>, today = '2025-09-30'): Ledger {
  const garden = smallGarden({ plantings: planting('P1', 'S1'), crop: CROP, ...rows });
  return openLedger(asOf(garden, today as Day), today as Day);
}

function ripeness(rows: Partial<Rows>, today?: string): CropRipeness {
  const [found] = ledgerOf(rows, today).ripeness;
  if (!found) throw new Error('no crop with signs');
  return found;
}

const judged = (rows: Partial<Rows>, today?: string): readonly JudgedFruit[] => ripeness(rows, today).judged;

function only(fruits: readonly JudgedFruit[]): JudgedFruit {
  const [first, ...more] = fruits;
  if (!first || more.length > 0) throw new Error(`not one fruit but ${fruits.length}`);
  return first;
}

describe('judged fruits', () => {
  const idsOf = (fruits: string, rows: Partial<Rows> = {}): string[] =>
    judged({ fruits, ...rows }).map((one) => `${one.fruit.id} ${one.is_ripe ? 'ripe' : 'unripe'}`);

  test('are those cut and told apart: all states but unripe are ripe', () => {
    const told = ['just-ripe', 'prime', 'over', 'unripe'].map((state, index) =>
      fruit(`F${index + 1}`, `${pick()}, ${cut(state)}`),
    );
    expect(idsOf(told.join(''))).toEqual(['F1 ripe', 'F2 ripe', 'F3 ripe', 'F4 unripe']);
    const untold = fruit('F5', `${pick()}, cut: {cut_on: ${ON}, sweet: 3}`) + fruit('F6', pick());
    expect(idsOf(untold + fruit('F7', 'set: {set_on: 2025-07-01}', 'growing'))).toEqual([]);
  });

  test('leave out fruit cut to thin the vine, and no other unripe fruit', () => {
    const whys = ['thinned', 'damaged', 'lot', 'season-end', 'curious', 'ripe'];
    const fruits = whys.map((why, index) => fruit(`F${index}`, `${pick()}, ${cut('unripe', `why: ${why}`)}`));
    expect(idsOf(fruits.join(''))).toEqual(['F1', 'F2', 'F3', 'F4', 'F5'].map((id) => `${id} unripe`));
  });

  test('leave out a fruit whose fate is thinned, whether or not the cut says why', () => {
    expect(idsOf(fruit('F1', `end: {ended_on: 2025-07-10}, ${cut('unripe', '', '2025-07-10')}`, 'thinned'))).toEqual(
      [],
    );
  });

  test('need the day they came off: the pick’s, else the cut’s', () => {
    expect(idsOf(fruit('F1', `${pick('', 'unknown')}, ${cut('prime', '', 'unknown')}`))).toEqual([]);
    expect(idsOf(fruit('F1', `${pick('', 'unknown')}, ${cut('prime')}`))).toEqual([]);
    expect(idsOf(fruit('F1', cut('unripe'), 'left'))).toEqual(['F1 unripe']);
    expect(idsOf(fruit('F1', `${pick()}, ${cut('prime', '', 'unknown')}`))).toEqual(['F1 ripe']);
  });

  test('are of the crop: a fruit of a variety nobody knows belongs to none', () => {
    const fruits = fruit('F1', `${pick()}, ${cut('prime')}`);
    expect(idsOf(fruits, { plantings: planting('P1', 'S1').replace('amber', 'unknown') })).toEqual([]);
    expect(idsOf(fruits, { plantings: planting('P1', 'S1').replace('amber', 'birch') })).toEqual(['F1 ripe']);
  });
});

describe('what a fruit had shown', () => {
  const CUT = fruit('F1', `${pick()}, ${cut('prime')}`);
  const shownOn = (on: string, picked = ON): string | null =>
    only(judged({ fruits: CUT.replaceAll(ON, picked), visits: visit('V1', on, '{fruit: F1, tendril: dry}') })).signs
      .tendril;

  test.each([
    ['2025-08-08', null], // 4 days before
    ['2025-08-09', 'dry'],
    ['2025-08-10', 'dry'],
    ['2025-08-11', 'dry'],
    ['2025-08-12', 'dry'], // on the day
    ['2025-08-13', null],
  ])('a look of %s at a fruit picked on 12 August: %s', (on, step) => {
    expect(shownOn(on)).toBe(step);
  });

  test('the days are those of the calendar, over the end of a month', () => {
    expect([shownOn('2025-07-29', '2025-08-02'), shownOn('2025-07-30', '2025-08-02')]).toEqual([null, 'dry']);
  });

  test('picked some day of a span: looks up to its first day, from three days before that', () => {
    const span = '2025-08-12..2025-08-15';
    expect(['08', '09', '12', '13'].map((day) => shownOn(`2025-08-${day}`, span))).toEqual([null, 'dry', 'dry', null]);
  });

  test('the last look at each sign counts, whatever the order of the rows', () => {
    const early = visit('V1', '2025-08-10', '{fruit: F1, tendril: dry, sound: hollow, ground_spot: cream}');
    const late = visit('V2', '2025-08-11', '{fruit: F1, tendril: wilting}');
    for (const visits of [early + late, late + early]) {
      const { signs } = only(judged({ fruits: CUT, visits }));
      expect(signs).toMatchObject({ tendril: 'wilting', sound: 'hollow', ground_spot: 'cream', rind: null });
    }
    // Of one day the visit with the later id, here not the one written last.
    const sameDay = late.replace('V2', 'V0').replace('08-11', '08-10');
    expect(only(judged({ fruits: CUT, visits: early + sameDay })).signs.tendril).toBe('dry');
    const unsure = visit('V2', '2025-08-11', '{fruit: F1, sound: unsure}');
    expect(only(judged({ fruits: CUT, visits: early + unsure })).signs.sound).toBe('unsure');
  });

  test('a look too old does not stand in for one that is blank', () => {
    const old = visit('V1', '2025-08-05', '{fruit: F1, sound: hollow}');
    const { signs } = only(judged({ fruits: CUT, visits: old + visit('V2', ON, '{fruit: F1, tendril: dry}') }));
    expect([signs.tendril, signs.sound]).toEqual(['dry', null]);
  });

  test('looks at another fruit, or at that id in another season, are not its own', () => {
    expect(
      only(
        judged({
          fruits: `${CUT}${fruit('F2', 'set: {set_on: 2025-07-01}', 'growing')}`,
          visits: visit('V1', ON, '{fruit: F2, tendril: dry}'),
        }),
      ).signs.tendril,
    ).toBeNull();
    const season = (year: string, fruits: string, visits: string): Record<string, string> => ({
      [`seasons/${year}/season.yaml`]: `label: ${year}\nstarts_on: ${year}-04-01\nends_on: ${year}-10-31\n`,
      [`seasons/${year}/plantings.yaml`]: planting('P1', 'S1').replace('2025', year),
      [`seasons/${year}/fruits.yaml`]: fruits.replaceAll('2025', year),
      [`seasons/${year}/visits.yaml`]: visits.replaceAll('2025', year),
    });
    const { garden } = linkTexts({
      'garden.yaml':
        'name: Test\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\nspots: [{id: S1, kind: mound}]\n',
      'crops/globe.yaml': `id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n${CROP}`,
      'varieties.yaml': '- {id: amber, name: Amber, crop: globe, seed: unknown}\n',
      ...season('2024', CUT, visit('V1', ON, '{fruit: F1, tendril: dry}')),
      ...season('2025', CUT, ''),
    });
    const [found] = garden ? openLedger(garden, '2025-09-30' as Day).ripeness : [];
    expect(found?.judged.map(({ season: { label }, signs }) => [label, signs.tendril])).toEqual([
      ['2024', 'dry'],
      ['2025', null],
    ]);
    expect(found?.seasons.map(({ label }) => label)).toEqual(['2024', '2025']);
  });

  test('how it came off stands with the pick; blank is nobody tried', () => {
    const parted = (picked: string): string | null =>
      only(judged({ fruits: fruit('F1', `${picked}${cut('prime')}`, picked ? 'picked' : 'left') })).parted;
    expect(parted(`${pick('parted: with-a-tug')}, `)).toBe('with-a-tug');
    expect([parted(`${pick()}, `), parted('')]).toEqual([null, null]);
  });
});

describe('days since set', () => {
  const days = (set: string, picked = ON): JudgedFruit =>
    only(judged({ fruits: fruit('F1', `set: {${set}}, ${pick('', picked)}, ${cut('prime', '', 'unknown')}`) }));

  test.each([
    ['set_on: 2025-07-08', ON, 35, 35],
    ['set_on: about 2025-07-08', ON, 35, 35],
    ['set_on: 2025-07', ON, 12, 42], // 31 July to 12 August, 1 July to 12 August
    ['set_on: 2025-07-01..2025-07-04', ON, 39, 42],
    ['set_on: 2025-07-08', '2025-08-12..2025-08-14', 35, 37],
    ['first_seen_on: 2025-07-12, first_seen_size: pea', ON, 31, 34], // seen 31 days before, 0 to 3 days old
    ['first_seen_on: 2025-07-12, first_seen_size: walnut', ON, 33, 38],
    ['first_seen_on: 2025-07-12, first_seen_size: egg', ON, 35, 42],
    ['first_seen_on: 2025-07-12, first_seen_size: fist', ON, 38, 48],
    ['first_seen_on: 2025-07-12, first_seen_size: head', ON, 45, 61],
    ['set_on: 2025-08', ON, 0, 11], // never fewer than none
  ])('%s, picked %s: %d to %d', (set, picked, fewest, most) => {
    expect(days(set, picked).days_set).toEqual({ fewest, most });
  });

  test('are not known without a day or a size', () => {
    for (const set of ['set_on: unknown', 'first_seen_on: 2025-07-12']) expect(days(set).days_set).toBeNull();
  });

  test('have reached so many surely, surely not, or nobody can say', () => {
    const egg = days('first_seen_on: 2025-07-12, first_seen_size: egg');
    expect([34, 35, 36, 42, 43].map((least) => daysReached(least)(egg))).toEqual([true, true, null, null, false]);
    const sharp = days('set_on: 2025-07-08');
    expect([35, 36].map((least) => daysReached(least)(sharp))).toEqual([true, false]);
    expect(daysReached(1)(days('set_on: unknown'))).toBeNull();
  });
});

/** Fruits that were the same in everything told. */
interface Told {
  readonly state: string;
  readonly look?: string;
  readonly set?: string;
  readonly parted?: string;
}

const times = (count: number, told: Told): Told[] => Array.from({ length: count }, () => told);

/** Fruits F1, F2 … in the order told, all picked and cut on one day and looked at the day before. */
function rowsOf(told: readonly Told[]): Partial<Rows> {
  const fruits = told.map(({ state, set, parted }, index) =>
    fruit(
      `F${index + 1}`,
      `${set ? `set: {set_on: ${set}}, ` : ''}${pick(parted && `parted: ${parted}`)}, ${cut(state)}`,
    ),
  );
  const looks = told.flatMap(({ look }, index) => (look ? [`{fruit: F${index + 1}, ${look}}`] : []));
  return {
    fruits: fruits.join(''),
    ...(looks.length > 0 && { visits: visit('V1', '2025-08-11', looks.join(', ')) }),
  };
}

const cropOf = (told: readonly Told[], crop = CROP): CropRipeness => ripeness({ ...rowsOf(told), crop });

function signOf({ signs }: CropRipeness, id: string): SignEvidence {
  const found = signs.find(({ sign }) => sign.id === id);
  if (!found) throw new Error(`no sign ${id}`);
  return found;
}

const keys = (from: number, to: number): string[] =>
  Array.from({ length: to - from + 1 }, (_, index) => `fruits/2025/F${from + index}`).sort();

describe('what a sign is worth', () => {
  const DRY = 'tendril: dry';
  const GREEN = 'tendril: green';
  /** So many ripe fruits, the first half of them dry, and unripe ones, one of them dry. */
  const cuts = (ripe: number, unripe: number): Told[] => [
    ...times(Math.floor(ripe / 2), { state: 'prime', look: DRY }),
    ...times(Math.ceil(ripe / 2), { state: 'over', look: 'tendril: wilting' }),
    ...times(unripe > 0 ? 1 : 0, { state: 'unripe', look: 'tendril: half-brown' }),
    ...times(unripe - 1, { state: 'unripe', look: GREEN }),
  ];

  test('of ten ripe and of ten unripe, each from its own group', () => {
    const { ripe, unripe } = signOf(cropOf(cuts(14, 6)), 'tendril');
    expect(ripe).toMatchObject({
      value: 5,
      n: 14,
      unit: 'of_ten',
      reason: null,
      id: 'ripe.globe.sign.tendril.ripe_of_ten',
    });
    expect(unripe).toMatchObject({ n: 6, reason: null });
    expect(unripe.value).toBeCloseTo(1.6667, 4);
    const base = cropOf(cuts(14, 6)).base;
    expect(base).toMatchObject({ value: 7, n: 20, reason: null }); // 14 of 20
  });

  test.each([
    ['19 cuts, 6 unripe', 13, 6],
    ['20 cuts, 5 unripe', 15, 5],
    ['30 cuts, none ripe', 0, 30],
    ['30 cuts, none unripe', 30, 0],
  ])('nothing is said of %s', (_, ripe, unripe) => {
    const found = cropOf(cuts(ripe, unripe));
    const reason = { code: 'few-cuts', values: { cuts: ripe + unripe, unripe, need_cuts: 20, need_unripe: 6 } };
    const tendril = signOf(found, 'tendril');
    for (const figure of [tendril.ripe, tendril.unripe, found.base])
      expect(figure).toMatchObject({ value: null, reason });
    expect([tendril.ripe.n, tendril.unripe.n]).toEqual([ripe, unripe]);
  });

  test('only fruits looked at for that very sign count, and they are its basis', () => {
    const told = [
      ...times(13, { state: 'prime', look: `${DRY}, sound: hollow` }),
      ...times(6, { state: 'unripe', look: `${GREEN}, sound: ringing` }),
      ...times(1, { state: 'prime', look: GREEN }),
      ...times(5, { state: 'unripe' }),
    ];
    const ledger = ledgerOf(rowsOf(told));
    const [found] = ledger.ripeness;
    if (!found) throw new Error('no crop');
    const basisOf = (id: string) => ledger.bases.all()[signOf(found, id).ripe.basis];
    expect(signOf(found, 'tendril').ripe.value).toBeCloseTo(9.2857, 4); // 13 of 14
    expect(signOf(found, 'tendril').unripe).toMatchObject({ value: 0, n: 6 });
    expect(basisOf('tendril')).toEqual(keys(1, 20));
    expect(signOf(found, 'sound').ripe).toMatchObject({ value: null, reason: { values: { cuts: 19, unripe: 6 } } });
    expect(basisOf('sound')).toEqual(keys(1, 19));
    expect(basisOf('skin')).toEqual([]);
    expect(found.base).toMatchObject({ value: 5.6, n: 25 }); // 14 of 25
    expect(ledger.bases.all()[found.base.basis]).toEqual(keys(1, 25));
  });

  test('a sound nobody was sure of was looked for, and not heard', () => {
    const told = [
      ...times(7, { state: 'prime', look: 'sound: hollow' }),
      ...times(7, { state: 'prime', look: 'sound: unsure' }),
      ...times(6, { state: 'unripe', look: 'sound: unsure' }),
    ];
    const { ripe, unripe } = signOf(cropOf(told), 'sound');
    expect([ripe.value, ripe.n, unripe.value, unripe.n]).toEqual([5, 14, 0, 6]);
  });

  test('parting is told at picking, from the pick', () => {
    const told = [
      ...times(7, { state: 'prime', parted: 'at-a-lift' }),
      ...times(2, { state: 'prime', parted: 'with-a-tug' }),
      ...times(5, { state: 'prime', parted: 'held' }),
      ...times(3, { state: 'unripe', parted: 'with-a-tug' }),
      ...times(3, { state: 'unripe', parted: 'held' }),
      ...times(4, { state: 'unripe' }),
    ];
    const { ripe, unripe, at_picking } = signOf(cropOf(told), 'parts');
    expect(ripe.value).toBeCloseTo(6.4286, 4); // 9 of 14
    expect([ripe.n, unripe.value, unripe.n, at_picking]).toEqual([14, 5, 6, true]);
    expect(signOf(cropOf(told), 'tendril').at_picking).toBe(false);
  });

  test('days count where the set day tells them', () => {
    const told = [
      ...times(10, { state: 'prime', set: '2025-07-08' }), // 35 days
      ...times(4, { state: 'prime', set: '2025-07-09' }), // 34
      ...times(6, { state: 'unripe', set: '2025-07-20' }),
      ...times(9, { state: 'unripe', set: '2025-07' }), // 12 to 42 days: nobody can say
    ];
    const { days } = cropOf(told);
    expect(days?.ripe.value).toBeCloseTo(7.1429, 4);
    expect([days?.ripe.n, days?.unripe.value, days?.unripe.n]).toEqual([14, 0, 6]);
    expect(cropOf(told, `signs:\n${TENDRIL}`).days).toBeNull();
  });
});

describe('ticks', () => {
  const THREE = 'tendril: dry, ground_spot: butter, sound: hollow';
  const TWO = 'tendril: dry, ground_spot: butter, sound: ringing';
  const NONE = 'tendril: green, ground_spot: white, sound: ringing';
  const ticksOf = (told: readonly Told[], crop?: string) => cropOf(told, crop).ticks;
  /** Fruits with three ticks, ripe and unripe, filled up with others to 20 fruits of which 6 are unripe. */
  const ticked = (ripe: number, unripe: number): Told[] => [
    ...times(ripe, { state: 'prime', look: THREE }),
    ...times(unripe, { state: 'unripe', look: THREE }),
    ...times(14 - ripe, { state: 'prime', look: TWO }),
    ...times(6 - unripe, { state: 'unripe', look: NONE }),
  ];

  test('of ten fruits with three, how many were ripe', () => {
    const ledger = ledgerOf(rowsOf(ticked(6, 3)));
    const { needed, ripe, is_capped } = ledger.ripeness[0]?.ticks ?? {};
    expect(ripe?.value).toBeCloseTo(6.6667, 4); // 6 of 9
    expect([needed, ripe?.n, ripe?.reason, is_capped]).toEqual([3, 9, null, false]);
    expect(ledger.bases.all()[ripe?.basis ?? '']).toEqual(keys(1, 20));
  });

  test.each([
    [7, 2, 7.7778, false],
    [8, 2, 8, true],
    [14, 0, 8, true],
  ])('%d ripe and %d unripe: %d in ten, capped: %s', (ripe, unripe, value, is_capped) => {
    const found = ticksOf(ticked(ripe, unripe));
    expect(found.ripe.value).toBeCloseTo(value, 4);
    expect(found.is_capped).toBe(is_capped);
  });

  test('fewer than six fruits with the ticks say nothing', () => {
    expect(ticksOf(ticked(5, 0))).toMatchObject({
      is_capped: false,
      ripe: { value: null, n: 5, reason: { code: 'few-ticked', values: { fruits: 5, need: 6 } } },
    });
    expect(ticksOf(ticked(5, 1)).ripe.value).toBeCloseTo(8, 9); // 5 of 6 is above the cap
    expect(ticksOf(ticked(3, 3)).ripe.value).toBe(5);
  });

  test('a fruit with fewer signs looked for is left out, and does not make the cuts enough', () => {
    const two = times(10, { state: 'unripe', look: 'tendril: dry, ground_spot: butter' });
    expect(ticksOf([...ticked(6, 3), ...two]).ripe.value).toBeCloseTo(6.6667, 4);
    const nineteen = ticked(6, 3).slice(1);
    expect(ticksOf([...nineteen, ...two]).ripe).toMatchObject({
      value: null,
      reason: { code: 'few-cuts', values: { cuts: 19, unripe: 6 } },
    });
  });

  test('neither parting nor a sign off the card is a tick', () => {
    const more = (told: Told): Told => ({ ...told, look: `${told.look}, rind: matte`, parted: 'at-a-lift' });
    expect(ticksOf(ticked(6, 3).map(more)).ripe).toMatchObject({ n: 9 });
    const two = times(20, { state: 'prime', look: 'tendril: dry, sound: hollow, rind: matte', parted: 'at-a-lift' });
    expect(ticksOf(two).ripe).toMatchObject({ n: 0, reason: { values: { cuts: 0 } } });
  });

  test('days are a tick where they are known', () => {
    const dry = 'tendril: dry, sound: hollow';
    const told = [
      ...times(8, { state: 'prime', look: dry, set: '2025-07-08' }), // 35 days, the third tick
      ...times(6, { state: 'prime', look: dry, set: '2025-07-09' }), // 34, two ticks of three
      ...times(6, { state: 'unripe', look: dry, set: '2025-07-20' }),
      ...times(5, { state: 'unripe', look: dry, set: '2025-07' }), // nobody can say: two looked for
    ];
    expect(ticksOf(told)).toMatchObject({ is_capped: true, ripe: { n: 8, value: 8 } });
    expect(cropOf(told).judged).toHaveLength(25);
  });

  test('a crop with fewer than three rows asks for as many as it has', () => {
    const dry = [
      ...times(7, { state: 'prime', look: 'tendril: dry', set: '2025-07-08' }),
      ...times(7, { state: 'prime', look: 'tendril: dry', set: '2025-07-20' }),
      ...times(3, { state: 'unripe', look: 'tendril: dry', set: '2025-07-08' }),
      ...times(3, { state: 'unripe', look: 'tendril: green', set: '2025-07-20' }),
    ];
    expect(ticksOf(dry, `${DAYS}signs:\n${TENDRIL}`)).toMatchObject({ needed: 2, ripe: { n: 10, value: 7 } });
    expect(ticksOf(dry, `signs:\n${TENDRIL}`)).toMatchObject({ needed: 1, ripe: { n: 17, value: 8 }, is_capped: true });
    const parts = ticksOf(dry, `signs:\n${sign('parts', 'parted: [held]')}`);
    expect(parts).toMatchObject({ needed: 1, ripe: { value: null, n: 0 } });
  });
});

describe('as known on an earlier day', () => {
  const fruits = fruit('F1', `${pick('parted: held, recorded_on: 2025-08-18')}, ${cut('prime')}`);
  const later = fruit('F2', `${pick('', '2025-08-20')}, ${cut('unripe', '', '2025-08-20')}`);
  const visits = visit('V1', '2025-08-11', '{fruit: F1, tendril: dry}', ', recorded_on: 2025-08-16');
  const known = (today: string) =>
    judged({ fruits: fruits + later, visits }, today).map(({ fruit: { id }, signs, parted }) => [
      id,
      signs.tendril,
      parted,
    ]);

  test('cuts, looks and pickings written down later do not count', () => {
    expect(known('2025-08-11')).toEqual([]);
    expect(known('2025-08-12')).toEqual([['F1', null, null]]);
    expect(known('2025-08-16')).toEqual([['F1', 'dry', null]]);
    expect(known('2025-08-18')).toEqual([['F1', 'dry', 'held']]);
    expect(known('2025-08-20').map(([id]) => id)).toEqual(['F1', 'F2']);
  });
});

test('a crop without signs is not judged', () => {
  const fruits = fruit('F1', `${pick()}, ${cut('prime')}`);
  for (const crop of ['', DAYS, 'signs: []\n']) expect(ledgerOf({ fruits, crop }).ripeness).toEqual([]);
  expect(ledgerOf({ fruits }).ripeness).toHaveLength(1);
});
