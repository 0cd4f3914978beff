import { describe, expect, test } from 'vitest';
import { departure } from './departure.ts';
import type { SeasonGarden } from './garden.ts';
import { gardensOf, unharmed, watched } from './gardens.ts';
import type { SeasonSetting } from './setting.ts';
import { settingNamed } from './settings.ts';
import { writtenFruits, writtenVisits } from './written.ts';

const BLOCKED = settingNamed('3 seasons in blocks');
const DAY_MS = 86_400_000;
const days = (from: string, until: string): number => (Date.parse(until) - Date.parse(from)) / DAY_MS;

/** Every call written, beside the fruit it was made of. */
const callsOf = ({ texts, truth }: SeasonGarden) =>
  truth.seasons.flatMap(({ slug, fruits }) => {
    const known = new Map(fruits.map((fruit) => [fruit.id, fruit]));
    return writtenVisits(texts, slug).flatMap(({ visited_on, fruits: rows }) =>
      rows.flatMap(({ fruit: id, call }) => {
        const fruit = known.get(id ?? '');
        return fruit ? [{ fruit, visited_on, call }] : [];
      }),
    );
  });

describe('picking by what was called', () => {
  const gardens = gardensOf(BLOCKED, 12);
  const calls = gardens.flatMap(callsOf);

  test('whatever is picked as ripe was called ripe that day', () => {
    const ripe = new Map(
      calls.filter(({ call }) => call === 'ripe').map(({ fruit, visited_on }) => [fruit, visited_on]),
    );
    const picks = gardens.flatMap(({ truth }) =>
      truth.seasons.flatMap(({ fruits }) => fruits.filter(({ pick }) => pick?.reason === 'ripe')),
    );
    expect(picks.length).toBeGreaterThan(300);
    for (const fruit of picks) expect(ripe.get(fruit)).toBe(fruit.pick?.picked_on);
  });

  test('nine of ten fruits called ripe are picked at once as such, unless they wait for a day drawn by lot', () => {
    const nobodyByLot: SeasonSetting = { ...BLOCKED, keeping: { ...BLOCKED.keeping, by_lot: 0 } };
    const asked = gardensOf(nobodyByLot, 15)
      .flatMap(callsOf)
      .filter(({ call }) => call === 'ripe');
    const { picked_when_ripe } = BLOCKED.keeping;
    const at_once = asked.map(({ fruit: { pick }, visited_on }) =>
      Number(pick?.picked_on === visited_on && pick.reason === 'ripe'),
    );
    expect(Math.abs(departure(at_once, picked_when_ripe))).toBeLessThan(4);
    expect(calls.some(({ fruit: { pick }, call }) => call === 'ripe' && pick?.by_lot)).toBe(true);
  });

  test('what is called ripe is riper', () => {
    const ripeness = (which: string): number => {
      const own = calls.filter(({ call }) => call === which).slice(0, 2000);
      const values = own.map(({ fruit, visited_on }) =>
        Math.log(days(fruit.set_on, visited_on) / days(fruit.set_on, fruit.turned_on.just_ripe ?? '2026-01-01')),
      );
      return values.reduce((a, b) => a + b, 0) / values.length;
    };
    expect(ripeness('ripe')).toBeGreaterThan(ripeness('unsure'));
    expect(ripeness('unsure')).toBeGreaterThan(ripeness('not-yet'));
  });
});

describe('picking by lot', () => {
  const { by_lot } = BLOCKED.keeping;
  const { from, to } = BLOCKED.keeping.lot_days;
  const gardens = gardensOf(unharmed(BLOCKED), 25);
  const fruits = gardens.flatMap(({ truth }) =>
    truth.seasons.flatMap(({ fruits, closes_on }) => fruits.map((fruit) => ({ ...fruit, closes_on }))),
  );
  // Those whose latest day, and the four days until the next walk, still fall in the season.
  const early = fruits.filter(({ set_on, closes_on }) => days(set_on, closes_on) > to + 4);

  test('cuts the share of fruits the setting says, whatever was called', () => {
    expect(early.length).toBeGreaterThan(1500);
    expect(
      Math.abs(
        departure(
          early.map(({ pick }) => Number(pick?.by_lot === true)),
          by_lot,
        ),
      ),
    ).toBeLessThan(4);
  });

  test('and at ages spread evenly, each on the first walk from then on', () => {
    const ages = early.flatMap(({ set_on, pick }) => (pick?.by_lot ? [days(set_on, pick.picked_on)] : []));
    expect(Math.min(...ages)).toBeGreaterThanOrEqual(from);
    expect(Math.max(...ages)).toBeLessThanOrEqual(to + 4);
    // Walks are at most four days apart, so a fruit waits no longer for one; the mean wait is under two days and a half.
    const mean = ages.reduce((a, b) => a + b, 0) / ages.length;
    const error = (to - from) / Math.sqrt(12 * ages.length);
    expect(mean).toBeGreaterThan((from + to) / 2 - 4 * error);
    expect(mean).toBeLessThan((from + to) / 2 + 2.5 + 4 * error);
  });

  test('says so in the register', () => {
    for (const { texts, truth } of gardens.slice(0, 10))
      for (const { slug, fruits } of truth.seasons) {
        const rows = writtenFruits(texts, slug);
        const lots = fruits.filter(({ pick }) => pick?.by_lot).map(({ id }) => id);
        expect(rows.filter(({ cut }) => cut?.why === 'lot').map(({ id }) => id)).toEqual(lots);
        expect(rows.filter(({ pick }) => pick?.reason === 'other').map(({ id }) => id)).toEqual(lots);
      }
  });
});

describe('the end of a season', () => {
  test('comes with the first frost from 15 August on, else on 15 October', () => {
    const seen = new Set<string>();
    for (const { truth } of gardensOf({ ...BLOCKED, climate: { ...BLOCKED.climate, mean_c: 10 } }, 15))
      for (const { slug, closes_on, closed_by } of truth.seasons) {
        const autumn = truth.weather.filter(({ date }) => date >= `${slug}-08-15` && date < `${slug}-10-15`);
        const frost = autumn.find(({ tmin_c }) => tmin_c <= 0)?.date;
        expect([closes_on, closed_by]).toEqual(frost ? [frost, 'frost'] : [`${slug}-10-15`, 'season-end']);
        seen.add(closed_by);
      }
    expect(seen.size).toBe(2);
  });

  test('takes in 35 of 100 fruits at a frost and loses 25, or takes in half', () => {
    const setting: SeasonSetting = watched(BLOCKED);
    const ends = gardensOf(setting, 15).flatMap(({ truth }) =>
      truth.seasons.flatMap(({ fruits, closed_by }) =>
        fruits.map(({ fate, lost_to }) => ({ fate, lost_to, closed_by })),
      ),
    );
    const share = (closed: string, is: (one: (typeof ends)[number]) => boolean): number[] =>
      ends.filter(({ closed_by }) => closed_by === closed).map((one) => Number(is(one)));
    expect(
      Math.abs(
        departure(
          share('frost', ({ fate }) => fate === 'picked'),
          0.35,
        ),
      ),
    ).toBeLessThan(4);
    expect(
      Math.abs(
        departure(
          share('frost', ({ lost_to }) => lost_to === 'frost'),
          0.25,
        ),
      ),
    ).toBeLessThan(4);
    expect(
      Math.abs(
        departure(
          share('season-end', ({ fate }) => fate === 'picked'),
          0.5,
        ),
      ),
    ).toBeLessThan(4);
    expect(ends.filter(({ fate }) => fate === 'left').length).toBeGreaterThan(100);
  });
});

test('baskets hold what the register says was picked, by mound and day', () => {
  const setting = settingNamed('1 season without blocks');
  for (const { texts, truth } of gardensOf(setting, 10))
    for (const { slug, fruits } of truth.seasons) {
      const picks = fruits.flatMap(({ planting, pick }) => (pick ? [{ planting, ...pick }] : []));
      const baskets = [...(texts[`seasons/${slug}/pickings.yaml`] ?? '').matchAll(/^- \{(.*)\}$/gm)].map(
        ([, row = '']) => Object.fromEntries(row.split(', ').map((pair) => pair.split(': '))),
      );
      expect(new Set(baskets.map(({ planting, picked_on }) => `${planting} ${picked_on}`)).size).toBe(baskets.length);
      expect(baskets.reduce((sum, { count }) => sum + Number(count), 0)).toBe(picks.length);
      for (const { planting, picked_on, count, sound_count, mass_kg } of baskets) {
        const own = picks.filter((pick) => pick.planting === planting && pick.picked_on === picked_on);
        expect(Number(count)).toBe(own.length);
        expect(Number(sound_count)).toBe(own.filter(({ condition }) => condition === 'whole').length);
        expect(Math.abs(Number(mass_kg) - own.reduce((sum, { kg }) => sum + kg, 0))).toBeLessThan(0.0051);
      }
    }
});

test('fruits are looked over from 24 days of age, nine of ten on a walk', () => {
  const seen = gardensOf({ ...watched(BLOCKED), keeping: { ...watched(BLOCKED).keeping, looked: 0.9 } }, 8).flatMap(
    ({ texts, truth }) => {
      return truth.seasons.flatMap(({ slug, fruits }) =>
        writtenVisits(texts, slug).flatMap(({ visited_on, fruits: rows }) => {
          const ids = new Set(rows.map(({ fruit }) => fruit));
          return fruits.map(({ id, set_on }) => ({ age: days(set_on, visited_on), looked: ids.has(id) }));
        }),
      );
    },
  );
  expect(seen.some(({ age, looked }) => looked && age < 24)).toBe(false);
  // Walks on which nothing at all was looked over are not written; with so many fruits there are hardly any.
  const due = seen.filter(({ age }) => age >= 24).map(({ looked }) => Number(looked));
  expect(Math.abs(departure(due, 0.9))).toBeLessThan(4);
});
