import { describe, expect, test } from 'vitest';
import { byHand, later } from './by-hand.ts';
import { departure, squareDeparture } from './departure.ts';
import { gardensOf } from './gardens.ts';
import { PLAIN } from './plain-setting.ts';
import type { SeasonSetting } from './setting.ts';
import { settingNamed } from './settings.ts';
import type { TrueFruit } from './truth.ts';
import { writtenFruits } from './written.ts';

const STAGES = ['just_ripe', 'prime', 'over'] as const;
const LAST_DAY = '11-30';
/** Sums of some hundred numbers taken in another order. */
const ROUNDING = 1e-8;
const { rise_brix, green_brix, fall_brix } = PLAIN.sugar;

const handState = (heat: number, { heats }: TrueFruit): string =>
  ['unripe', 'just-ripe', 'prime', 'over'][STAGES.filter((stage) => heat >= heats[stage]).length] ?? '';

describe.each(['3 seasons in blocks', 'picked early before rain'])('%s', (name) => {
  const gardens = gardensOf(settingNamed(name), 10);

  test('a fruit turns on the first morning by which the heat of the days since its set is enough', () => {
    let turns = 0;
    for (const { truth } of gardens) {
      const { heat } = byHand(truth);
      for (const { slug, fruits } of truth.seasons)
        for (const { set_on, heats, turned_on } of fruits) {
          expect(heats.just_ripe).toBeLessThan(heats.prime);
          expect(heats.prime).toBeLessThan(heats.over);
          for (const stage of STAGES) {
            const on = turned_on[stage];
            if (!on) {
              expect(heat(set_on, `${slug}-${LAST_DAY}`)).toBeLessThan(heats[stage] + ROUNDING);
              continue;
            }
            turns++;
            expect(heat(set_on, on)).toBeGreaterThan(heats[stage] - ROUNDING);
            expect(heat(set_on, later(on, -1))).toBeLessThan(heats[stage] + ROUNDING);
          }
        }
    }
    expect(turns).toBeGreaterThan(3500);
  });

  test('heat, state, mass and sugar at picking follow from weather and the fruit, and the register says them', () => {
    const states = new Set<string>();
    for (const { texts, truth } of gardens) {
      const { heat } = byHand(truth);
      for (const { slug, fruits } of truth.seasons) {
        const known = new Map(fruits.map((fruit) => [fruit.id, fruit]));
        for (const { id, set, pick, cut } of writtenFruits(texts, slug)) {
          const fruit = known.get(id);
          if (!fruit?.pick || !pick) continue;
          const hand = heat(set.set_on ?? '', pick.picked_on ?? '');
          expect(fruit.pick.heat).toBeCloseTo(hand, 6);
          expect(fruit.pick.state).toBe(handState(hand, fruit));
          states.add(fruit.pick.state);
          const { just_ripe, prime, over } = fruit.heats;
          const grown = Math.min(1, hand / (0.85 * just_ripe)) ** 2.5;
          expect(Math.abs(Number(pick.mass_kg) - Math.exp(fruit.traits.log_mass) * grown)).toBeLessThan(0.0051);
          const rise = Math.min(green_brix, rise_brix * Math.max(0, 1 - hand / prime));
          const wanting = rise + fall_brix * Math.max(0, hand / over - 1);
          expect(fruit.pick.ripeness_brix).toBeCloseTo(-wanting, 6);
          const { ripeness_brix, day_effect_brix, dilution_brix, brix } = fruit.pick;
          expect(brix).toBeCloseTo(Math.max(1, fruit.traits.brix + ripeness_brix + day_effect_brix + dilution_brix), 9);
          if (cut) expect(cut.state).toBe(fruit.pick.state);
        }
      }
    }
    expect([...states].sort()).toEqual(['just-ripe', 'over', 'prime', 'unripe']);
  });

  test("the meter strays by 0.15 °Brix about a fruit's sugar, not the tasters' words", () => {
    const strays = gardens.flatMap(({ texts, truth }) =>
      truth.seasons.flatMap(({ slug, fruits }) => {
        const known = new Map(fruits.map((fruit) => [fruit.id, fruit]));
        return writtenFruits(texts, slug).flatMap(({ id, cut }) => {
          const pick = known.get(id)?.pick;
          return pick && cut?.brix_centre ? [Number(cut.brix_centre) - pick.brix] : [];
        });
      }),
    );
    expect(Math.abs(departure(strays, 0))).toBeLessThan(4);
    // Written to a tenth: rounding adds a variance of 0.1²/12.
    expect(Math.abs(squareDeparture(strays, Math.sqrt(0.15 ** 2 + 0.1 ** 2 / 12)))).toBeLessThan(4);
  });
});

describe('earliness', () => {
  const gardens = gardensOf(settingNamed('3 seasons in blocks'), 25);
  const fruits = gardens.flatMap(({ truth }) =>
    truth.seasons.flatMap(({ fruits, mounds }) =>
      fruits.map((fruit) => ({
        fruit,
        mound: mounds.find(({ planting }) => planting === fruit.planting)?.traits.log_heat ?? Number.NaN,
        ratios: truth.varieties.find(({ id }) => id === fruit.variety)?.ratios ?? {
          prime: Number.NaN,
          over: Number.NaN,
        },
      })),
    ),
  );

  test('fruits of a mound are just ripe at heats that stray by 0.06 in the logarithm', () => {
    const strays = fruits.map(({ fruit, mound }) => Math.log(fruit.heats.just_ripe) - mound);
    expect(Math.abs(departure(strays, 0))).toBeLessThan(4);
    expect(Math.abs(squareDeparture(strays, 0.06))).toBeLessThan(4);
    for (const { fruit } of fruits) expect(fruit.heats.just_ripe).toBeCloseTo(Math.exp(fruit.traits.log_heat), 9);
  });

  test("steps to prime and to over stray by 0.15 in the logarithm about the variety's", () => {
    const toPrime = fruits.map(({ fruit: { heats }, ratios }) =>
      Math.log((heats.prime / heats.just_ripe - 1) / (ratios.prime - 1)),
    );
    const toOver = fruits.map(({ fruit: { heats }, ratios }) =>
      Math.log((heats.over - heats.prime) / heats.just_ripe / (ratios.over - ratios.prime)),
    );
    for (const strays of [toPrime, toOver]) {
      expect(Math.abs(departure(strays, 0))).toBeLessThan(4);
      expect(Math.abs(squareDeparture(strays, 0.15))).toBeLessThan(4);
    }
  });

  test("varieties' ratios stray as the setting says", () => {
    const small: SeasonSetting = {
      ...PLAIN,
      name: 'many varieties',
      model: 'right',
      seasons: [{ year: 2025, design: { unblocked: 'ABCDEFGH' } }],
    };
    const ratios = gardensOf(small, 80).flatMap(({ truth }) => truth.varieties.map((one) => one.ratios));
    const prime = ratios.map((one) => one.prime - 1.1);
    const over = ratios.map((one) => one.over - 1.3);
    expect(Math.abs(departure(prime, 0))).toBeLessThan(4);
    expect(Math.abs(squareDeparture(prime, 0.01))).toBeLessThan(4);
    expect(Math.abs(departure(over, 0))).toBeLessThan(4);
    expect(Math.abs(squareDeparture(over, 0.03))).toBeLessThan(4);
  });
});
