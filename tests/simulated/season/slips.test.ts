import { describe, expect, test } from 'vitest';
import { departure } from './departure.ts';
import type { SeasonGarden } from './garden.ts';
import { gardensOf, watched } from './gardens.ts';
import type { SeasonSetting } from './setting.ts';
import { settingNamed } from './settings.ts';
import type { TrueFruit } from './truth.ts';
import { type WrittenFruit, writtenFruits, writtenVisits } from './written.ts';

const SLIPPING = settingNamed('2 seasons of few mounds, much left unwritten');
const { slips } = SLIPPING;
const PLAIN_GARDENS = gardensOf(settingNamed('3 seasons in blocks'), 10);
const GARDENS = gardensOf(SLIPPING, 120);
const SIGN_COUNT = 5;
const WORDS = ['sweet', 'crisp', 'juicy', 'liked'];
const DAY_MS = 86_400_000;
const STATES = ['unripe', 'just-ripe', 'prime', 'over'];

const rowsOf = (gardens: readonly SeasonGarden[]): { row: WrittenFruit; fruit: TrueFruit }[] =>
  gardens.flatMap(({ texts, truth }) =>
    truth.seasons.flatMap(({ slug, fruits }) => {
      const known = new Map(fruits.map((fruit) => [fruit.id, fruit]));
      return writtenFruits(texts, slug).flatMap((row) => {
        const fruit = known.get(row.id);
        return fruit ? [{ row, fruit }] : [];
      });
    }),
  );

/** Standard errors between how often something is so and how often it is claimed. */
const off = <T>(all: readonly T[], is: (one: T) => boolean, claimed: number): number =>
  Math.abs(
    departure(
      all.map((one) => Number(is(one))),
      claimed,
    ),
  );

describe('what slips, slips as often as the setting says', () => {
  const rows = rowsOf(GARDENS);
  const picked = rows.flatMap(({ row, fruit }) =>
    row.pick && fruit.pick ? [{ pick: row.pick, cut: row.cut, truth: fruit.pick }] : [],
  );
  const cuts = picked.flatMap(({ cut, truth }) => (cut ? [{ cut, truth }] : []));

  test('sets unseen, or told as about a day within two', () => {
    expect(off(rows, ({ row }) => row.set.first_seen_on !== undefined, slips.set_missing)).toBeLessThan(4);
    const seen = rows.filter(({ row }) => row.set.set_on !== undefined);
    const about = seen.filter(({ row }) => row.set.set_on?.startsWith('about '));
    expect(off(seen, ({ row }) => row.set.set_on?.startsWith('about ') === true, slips.set_about)).toBeLessThan(4);
    const errors = about.map(
      ({ row, fruit }) => (Date.parse(row.set.set_on?.slice(6) ?? '') - Date.parse(fruit.set_on)) / DAY_MS,
    );
    expect([...new Set(errors)].sort((a, b) => a - b)).toEqual([-2, -1, 0, 1, 2]);
    expect(Math.abs(departure(errors, 0))).toBeLessThan(4);
    for (const { row, fruit } of rows) {
      const { set_on, first_seen_on, first_seen_size } = row.set;
      if (set_on && !set_on.startsWith('about ')) expect(set_on).toBe(fruit.set_on);
      if (!first_seen_on) continue;
      expect(first_seen_on > fruit.set_on && first_seen_on <= fruit.ended_on).toBe(true);
      expect(first_seen_size).toMatch(/^(pea|walnut|egg|fist|head)$/);
    }
  });

  test('masses missing, in pounds, and right all the same', () => {
    const weighed = picked.filter(({ pick }) => pick.mass_kg ?? pick.mass_lb);
    expect(off(picked, ({ pick }) => !pick.mass_kg && !pick.mass_lb, slips.mass_missing)).toBeLessThan(4);
    expect(off(weighed, ({ pick }) => pick.mass_lb !== undefined, slips.mass_in_lb)).toBeLessThan(4);
    for (const { pick, truth } of weighed) {
      // The international pound of 1959: 0.45359237 kg exactly.
      if (pick.mass_lb) expect(Math.abs(Number(pick.mass_lb) - truth.kg / 0.45359237)).toBeLessThan(0.051);
      else expect(Math.abs(Number(pick.mass_kg) - truth.kg)).toBeLessThan(0.0051);
    }
  });

  test('conditions and cuts', () => {
    expect(off(picked, ({ pick }) => pick.condition === undefined, slips.condition_missing)).toBeLessThan(4);
    for (const { pick, truth } of picked) expect([undefined, truth.condition]).toContain(pick.condition);
    const sound = picked.filter(({ truth }) => truth.condition !== 'rotten');
    expect(off(sound, ({ cut }) => cut === undefined, slips.uncut)).toBeLessThan(4);
    expect(picked.filter(({ truth }) => truth.condition === 'rotten').every(({ cut }) => cut === undefined)).toBe(true);
  });

  test('states missing, or one step off; sugar and words', () => {
    expect(off(cuts, ({ cut }) => cut.state === undefined, slips.state_missing)).toBeLessThan(4);
    const told = cuts.filter(({ cut }) => cut.state !== undefined);
    const steps = told.map(({ cut, truth }) => Math.abs(STATES.indexOf(cut.state ?? '') - STATES.indexOf(truth.state)));
    expect(off(steps, (step) => step === 1, slips.state_misread)).toBeLessThan(4);
    expect(Math.max(...steps)).toBe(1);
    expect(off(cuts, ({ cut }) => cut.brix_centre === undefined, slips.brix_missing)).toBeLessThan(4);
    for (const word of WORDS)
      expect(off(cuts, ({ cut }) => cut[word] === undefined, slips.word_missing)).toBeLessThan(4);
  });

  test('half of all states misread are half of each, the first and the last too', () => {
    const half: SeasonSetting = { ...SLIPPING, slips: { ...slips, state_misread: 0.5 } };
    const told = rowsOf(gardensOf(half, 60)).flatMap(({ row, fruit: { pick } }) =>
      pick && row.cut?.state ? [{ state: pick.state, misread: row.cut.state !== pick.state }] : [],
    );
    for (const state of STATES) {
      const own = told.filter((one) => one.state === state);
      expect(own.length).toBeGreaterThan(50);
      expect(off(own, ({ misread }) => misread, 0.5)).toBeLessThan(4);
    }
  });

  test('parts written late say so, one to six days on', () => {
    const parts = rows.flatMap(({ row }) => [
      ...(row.pick ? [{ on: row.pick.picked_on, late: row.pick.recorded_on }] : []),
      ...(row.end ? [{ on: row.end.ended_on?.slice(-10), late: row.end.recorded_on }] : []),
      ...(row.set.set_on && !row.set.set_on.startsWith('about')
        ? [{ on: row.set.set_on, late: row.set.recorded_on }]
        : []),
      ...(row.cut && row.fate === 'picked' ? [{ on: row.cut.cut_on, late: row.cut.recorded_on }] : []),
    ]);
    const visits = GARDENS.flatMap(({ texts, truth }) =>
      truth.seasons.flatMap(({ slug }) => writtenVisits(texts, slug)),
    );
    const all = [...parts, ...visits.map(({ visited_on, recorded_on }) => ({ on: visited_on, late: recorded_on }))];
    expect(off(all, ({ late }) => late !== undefined, slips.written_late)).toBeLessThan(4);
    const waits = all.flatMap(({ on, late }) => (on && late ? [(Date.parse(late) - Date.parse(on)) / DAY_MS] : []));
    expect([...new Set(waits)].sort((a, b) => a - b)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(Math.abs(departure(waits, 3.5))).toBeLessThan(4);
  });

  test('signs, each by itself', () => {
    const looks = GARDENS.slice(0, 40).flatMap(({ texts, truth }) =>
      truth.seasons.flatMap(({ slug }) => writtenVisits(texts, slug).flatMap(({ fruits }) => fruits)),
    );
    const missing = looks.map((look) => (SIGN_COUNT + 2 - Object.keys(look).length) / SIGN_COUNT);
    expect(Math.abs(departure(missing, slips.sign_missing))).toBeLessThan(4);
    expect(looks.every(({ call }) => call !== undefined)).toBe(true);
  });

  test('walks, the last of a season excepted', () => {
    // Nobody picks and nothing is lost, so a walk held while fruits are old enough is a visit written.
    const setting: SeasonSetting = { ...watched(SLIPPING), seasons: SLIPPING.seasons };
    const held = gardensOf(setting, 25).flatMap(({ texts, truth }) =>
      truth.seasons.flatMap(({ slug, closes_on, fruits }) => {
        const oldest = fruits.map(({ set_on }) => set_on).sort()[0] ?? '';
        const dates = new Set(writtenVisits(texts, slug).map(({ visited_on }) => visited_on));
        expect(dates.has(closes_on)).toBe(true);
        return truth.weather
          .filter(({ date }) => Date.parse(date) - Date.parse(oldest) >= 24 * DAY_MS && date < closes_on)
          .filter(({ date }) => [3, 6].includes(new Date(date).getUTCDay()))
          .map(({ date }) => dates.has(date));
      }),
    );
    expect(off(held, (one) => !one, slips.walk_skipped)).toBeLessThan(4);
  });
});

test('with no slips nothing is missing, in pounds, about a day, misread or late', () => {
  for (const { row, fruit } of rowsOf(PLAIN_GARDENS)) {
    expect(row.set).toEqual({ set_on: fruit.set_on });
    if (row.end) expect(row.end.recorded_on).toBeUndefined();
    if (!row.pick || !fruit.pick) continue;
    expect(Object.keys(row.pick).sort()).toEqual(['by', 'condition', 'mass_kg', 'picked_on', 'reason']);
    if (fruit.pick.condition === 'rotten') continue;
    const { than_last: _, ...cut } = row.cut ?? {};
    expect(Object.keys(cut).sort()).toEqual([
      'brix_centre',
      'crisp',
      'cut_on',
      'juicy',
      'liked',
      'state',
      'sweet',
      'why',
    ]);
    expect(cut.state).toBe(fruit.pick.state);
  }
  for (const { texts, truth } of PLAIN_GARDENS)
    for (const { slug, closes_on } of truth.seasons) {
      const visits = writtenVisits(texts, slug);
      expect(visits.every(({ recorded_on }) => recorded_on === undefined)).toBe(true);
      expect(visits.every(({ fruits }) => fruits.every((row) => Object.keys(row).length === SIGN_COUNT + 2))).toBe(
        true,
      );
      const dates = new Set(visits.map(({ visited_on }) => visited_on));
      const august = truth.weather.filter(
        ({ date }) => date.startsWith(`${slug}-08`) && date <= closes_on && [3, 6].includes(new Date(date).getUTCDay()),
      );
      expect(august.every(({ date }) => dates.has(date))).toBe(true);
    }
});
