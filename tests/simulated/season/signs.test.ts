import { describe, expect, test } from 'vitest';
import { byHand } from './by-hand.ts';
import { departure, squareDeparture } from './departure.ts';
import type { SeasonGarden } from './garden.ts';
import { gardensOf, watched } from './gardens.ts';
import type { SeasonSetting } from './setting.ts';
import { settingNamed } from './settings.ts';
import { shareBelow } from './share-below.ts';
import { writtenVisits } from './written.ts';

const BLOCKED = settingNamed('3 seasons in blocks');
/** All fruits looked over to the end, so that a look does not depend on what earlier looks showed. */
const WATCHED: SeasonSetting = { ...watched(BLOCKED), seasons: BLOCKED.seasons.slice(0, 1) };

const { lag_sd: LAG, stress_sd: STRESS, own_sd: OWN, look_sd: LOOK } = BLOCKED.signs;
const { noise: NOISE, bias_sd: BIAS, ripe_from: RIPE_FROM, unsure_from: UNSURE_FROM } = BLOCKED.keeping.calling;

/** Words that stand for ripe; the ripeness at which a sign turns to them; how much of the mound's stress it shows. */
const SIGNS = [
  { name: 'tendril', words: ['half-brown', 'dry'], turn: -0.05, stress: 1.6 },
  { name: 'tendril', words: ['dry'], turn: 0.1, stress: 1.6 },
  { name: 'ground_spot', words: ['butter', 'deep'], turn: -0.05, stress: 0.3 },
  { name: 'ground_spot', words: ['cream', 'butter', 'deep'], turn: -0.3, stress: 0.3 },
  { name: 'sound', words: ['hollow', 'dull'], turn: 0, stress: 0.5 },
  { name: 'rind', words: ['matte'], turn: 0.02, stress: 1 },
  { name: 'nail', words: ['resists'], turn: -0.1, stress: 0.5 },
] as const;
/** Of the five signs. */
const MEAN_STRESS = (1.6 + 0.3 + 0.5 + 1 + 0.5) / 5;

interface Seen {
  readonly ripeness: number;
  readonly lag: number;
  readonly stress: number;
  readonly bias: number;
  readonly row: Readonly<Record<string, string | undefined>>;
}

/** Every look written in a garden, beside what it cannot know. */
function seenIn({ texts, truth }: SeasonGarden): Seen[] {
  const { heat } = byHand(truth);
  const biases = new Map(truth.observers.map(({ code, bias }) => [code, bias]));
  return truth.seasons.flatMap(({ slug, fruits, mounds }) => {
    const known = new Map(fruits.map((fruit) => [fruit.id, fruit]));
    const stresses = new Map(mounds.map(({ planting, stress }) => [planting, stress]));
    return writtenVisits(texts, slug).flatMap(({ visited_on, by, fruits: rows }) =>
      rows.flatMap((row) => {
        const fruit = known.get(row.fruit ?? '');
        if (!fruit) return [];
        const ripeness = Math.log(heat(fruit.set_on, visited_on) / fruit.heats.just_ripe);
        const stress = stresses.get(fruit.planting) ?? Number.NaN;
        return [{ ripeness, lag: fruit.latents.lag, stress, bias: biases.get(by) ?? Number.NaN, row }];
      }),
    );
  });
}

const average = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;
const shows = ({ row }: Seen, { name, words }: (typeof SIGNS)[number]): number =>
  Number((words as readonly (string | undefined)[]).includes(row[name]));

const GARDENS = gardensOf(WATCHED, 30);
const LOOKS = GARDENS.map(seenIn);

/** One value a garden: a garden's looks share fruits and mounds. */
const byGarden = (of: (seen: Seen) => number, among = LOOKS): number[] => among.map((looks) => average(looks.map(of)));

/** What a look shows less the chance of it, for one who knows ripeness alone. */
function unforeseen(seen: Seen, sign: (typeof SIGNS)[number], lag = LAG, stress = STRESS): number {
  const sd = Math.hypot(lag, sign.stress * stress, OWN, LOOK);
  return shows(seen, sign) - shareBelow((seen.ripeness - sign.turn) / sd);
}

/** The same for one who knows the fruit's lag and its mound's stress too. */
function unexplained(seen: Seen, sign: (typeof SIGNS)[number]): number {
  const known = seen.ripeness + seen.lag + sign.stress * STRESS * seen.stress;
  return shows(seen, sign) - shareBelow((known - sign.turn) / Math.hypot(OWN, LOOK));
}

describe.each(SIGNS)('$name: $words', (sign) => {
  test('more often the riper a fruit is', () => {
    const shares = [-0.2, -0.1, 0, 0.1, 0.2].map((from) => {
      const near = LOOKS.flat().filter(({ ripeness }) => Math.abs(ripeness - sign.turn - from) < 0.05);
      expect(near.length).toBeGreaterThan(100);
      return average(near.map((seen) => shows(seen, sign)));
    });
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares[0]).toBeLessThan(0.1);
    expect(shares.at(-1)).toBeGreaterThan(0.9);
  });

  test('as often as its spread about ripeness says, and as its fruit and mound say', () => {
    expect(
      Math.abs(
        departure(
          byGarden((seen) => unforeseen(seen, sign)),
          0,
        ),
      ),
    ).toBeLessThan(4);
    expect(
      Math.abs(
        departure(
          byGarden((seen) => unexplained(seen, sign)),
          0,
        ),
      ),
    ).toBeLessThan(4);
    const withLag = byGarden((seen) => unexplained(seen, sign) * seen.lag);
    const withStress = byGarden((seen) => unexplained(seen, sign) * seen.stress);
    expect(Math.abs(departure(withLag, 0))).toBeLessThan(4);
    expect(Math.abs(departure(withStress, 0))).toBeLessThan(4);
  });
});

describe('signs of one fruit', () => {
  const [tendril, , spot, , sound, rind, nail] = SIGNS;
  const pairs = [
    [tendril, rind],
    [spot, sound],
    [spot, nail],
  ] as const;

  test('go together at the same ripeness, and no longer once the lag and stress they share are known', () => {
    for (const [a, b] of pairs) {
      expect(
        departure(
          byGarden((seen) => unforeseen(seen, a) * unforeseen(seen, b)),
          0,
        ),
      ).toBeGreaterThan(4);
      const left = byGarden((seen) => unexplained(seen, a) * unexplained(seen, b));
      expect(Math.abs(departure(left, 0))).toBeLessThan(4);
    }
  });

  test('do not go together where they share no lag and no stress', () => {
    const apart = { ...WATCHED, signs: { ...WATCHED.signs, lag_sd: 0, stress_sd: 0 } };
    const looks = gardensOf(apart, 20).map(seenIn);
    for (const [a, b] of pairs) {
      const own = byGarden((seen) => unforeseen(seen, a, 0, 0) * unforeseen(seen, b, 0, 0), looks);
      expect(Math.abs(departure(own, 0))).toBeLessThan(4);
    }
  });

  test('share a lag of mean 0 and the spread the setting says', () => {
    const lags = GARDENS.flatMap(({ truth }) =>
      truth.seasons.flatMap(({ fruits }) => fruits.map(({ latents }) => latents.lag)),
    );
    expect(Math.abs(departure(lags, 0))).toBeLessThan(4);
    expect(Math.abs(squareDeparture(lags, LAG))).toBeLessThan(4);
  });
});

describe('calls', () => {
  /** What is called less the chance of it, for one who knows fruit, mound and observer. */
  function surprise({ ripeness, lag, stress, bias, row }: Seen, from: number, calls: readonly string[]): number {
    const mean = ripeness + lag + MEAN_STRESS * STRESS * stress + bias;
    const sd = Math.hypot(OWN / Math.sqrt(5), LOOK / Math.sqrt(5), NOISE);
    return Number(calls.includes(row.call ?? '')) - shareBelow((mean - from) / sd);
  }

  test.each([
    [RIPE_FROM, ['ripe']],
    [UNSURE_FROM, ['ripe', 'unsure']],
  ])('from %d felt ripeness on: %s, each observer by their own bias', (from, calls) => {
    expect(
      Math.abs(
        departure(
          byGarden((seen) => surprise(seen, from, calls)),
          0,
        ),
      ),
    ).toBeLessThan(4);
    const withBias = byGarden((seen) => surprise(seen, from, calls) * seen.bias);
    expect(Math.abs(departure(withBias, 0))).toBeLessThan(4);
    // One who forgets the bias is surprised, and the more the further it reaches.
    const forgetting = byGarden((seen) => surprise({ ...seen, bias: 0 }, from, calls) * seen.bias);
    expect(departure(forgetting, 0)).toBeGreaterThan(4);
  });

  test('two observers, K1 and K2, share the walks evenly; biases have the spread the setting says', () => {
    const small: SeasonSetting = { ...WATCHED, seasons: [{ year: 2025, design: { unblocked: 'A' } }] };
    const gardens = gardensOf(small, 200);
    const biases = gardens.flatMap(({ truth }) => truth.observers.map(({ bias }) => bias));
    expect(biases.length).toBe(400);
    expect(Math.abs(departure(biases, 0))).toBeLessThan(4);
    expect(Math.abs(squareDeparture(biases, BIAS))).toBeLessThan(4);
    const by = gardens.flatMap(({ texts }) => writtenVisits(texts, '2025').map((visit) => visit.by));
    expect([...new Set(by)].sort()).toEqual(['K1', 'K2']);
    expect(
      Math.abs(
        departure(
          by.map((code) => Number(code === 'K1')),
          0.5,
        ),
      ),
    ).toBeLessThan(4);
  });
});
