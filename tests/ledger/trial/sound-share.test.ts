import { expect, test } from 'vitest';
import { createBases } from '../../../src/ledger/bases.ts';
import { openAccount } from '../../../src/ledger/season-account.ts';
import { soundMounds, soundShares } from '../../../src/ledger/trial/sound-share.ts';
import { groupedShare } from '../../../src/statistics/beta-binomial.ts';
import { fruit, onlyTrial, planted, trialGarden } from './trial-garden.ts';

const pick = (condition: string | null): string =>
  `pick: {picked_on: 2025-08-12${condition ? `, condition: ${condition}` : ''}}`;

/** Amber in S1 to S3 with 2 of 3, 1 of 1 and 0 of 2 fruits whole; birch in S4 with 1 of 1; S5 and S6 do not count. */
const ROWS = {
  plantings:
    planted(2025, 'P1', 'S1', 'amber') +
    planted(2025, 'P2', 'S2', 'amber') +
    planted(2025, 'P3', 'S3', 'amber') +
    planted(2025, 'P4', 'S4', 'birch') +
    planted(2025, 'P5', 'S5', 'amber') +
    planted(2025, 'P6', 'S6', 'amber') +
    planted(2025, 'P7', 'S6', 'amber'),
  fruits: [
    ['P1', 'whole'],
    ['P1', 'whole'],
    ['P1', 'split'],
    ['P1', null],
    ['P2', 'whole'],
    ['P3', 'gnawed'],
    ['P3', 'rotten'],
    ['P4', 'whole'],
    ['P5', null],
    ['P6', 'whole'],
  ]
    .map(([of, condition], at) => fruit(`F${at}`, of ?? '', pick(condition ?? null)))
    .join(''),
};

test('fruits of known condition, by mound; without one, and replanted spots, say nothing', () => {
  const garden = trialGarden({ 2025: ROWS });
  const [season] = garden.seasons;
  if (!season) throw new Error('no season');
  const mounds = soundMounds(openAccount(season, createBases()), 'globe');
  expect(mounds.map(({ key, hits, units }) => `${key.split('/').at(-1)} ${hits} of ${units}`)).toEqual([
    'P1 2 of 3',
    'P2 1 of 1',
    'P3 0 of 2',
    'P4 1 of 1',
  ]);
  const [amber, birch] = soundShares(mounds, ['amber', 'birch', 'copper']);
  const own = mounds.filter(({ variety }) => variety === 'amber');
  const shared = groupedShare(own, 0.9);
  expect(amber).toEqual({
    variety: 'amber',
    mounds: 3,
    fruits: 6,
    share: { value: shared?.share, interval: shared?.interval },
  });
  // Fewer than three mounds: counted and not told.
  expect(birch).toEqual({ variety: 'birch', mounds: 1, fruits: 1, share: null });
});

test('told of ten fruits, with the mounds behind it and why there is none', () => {
  const { sound } = onlyTrial(trialGarden({ 2025: ROWS }));
  expect(sound.map(({ variety }) => variety.id)).toEqual(['amber', 'birch']);
  const [amber, birch] = sound.map(({ of_ten }) => of_ten);
  // 3 of 6 fruits: 5 of 10, whatever the mounds weigh is between theirs.
  expect(amber).toMatchObject({
    id: 'variety.globe.sound.amber.sound_of_ten',
    unit: 'of_ten',
    n: 6,
    replicate: { kind: 'mound', count: 3 },
    source: 'skellam-1948',
    reason: null,
  });
  expect(amber?.value).toBeGreaterThan(3);
  expect(amber?.value).toBeLessThan(7);
  expect(amber?.interval?.high).toBeLessThanOrEqual(10);
  expect(birch).toMatchObject({ value: null, reason: { code: 'few-mounds', values: { count: 1, wanted: 3 } } });
});
