import { describe, expect, test } from 'vitest';
import { openLedger } from '../../../src/ledger/ledger.ts';
import { type KeeperCalls, keeperCalls } from '../../../src/ledger/ripeness/keeper-calls.ts';
import { type Alike, lookedGarden } from './looked-garden.ts';

const PEOPLE =
  '- {id: AA, code: K1, name: Anna Arbour, agreed_on: 2024-01-01}\n- {id: BB, code: K2, name: Bob Bower, agreed_on: 2024-01-01}\n- {id: CC, code: K3, name: Cass Crook}\n- {id: DD, code: K4, name: Dan Dell, agreed_on: 2024-01-01, withdrawn_on: 2025-01-01}\n';

const call = (count: number, state: string, said: string, by: string): Alike => ({
  count,
  state,
  look: `call: ${said}`,
  by,
});

function callsOf(alike: readonly Alike[], people = PEOPLE): KeeperCalls[] {
  const garden = lookedGarden({ 2025: alike }, people);
  return keeperCalls(
    garden.people,
    openLedger(garden, null).ripeness.flatMap(({ judged }) => judged),
  );
}

const FULL = [
  call(6, 'prime', 'ripe', 'AA'),
  call(2, 'unripe', 'ripe', 'AA'),
  call(3, 'just-ripe', 'not-yet', 'AA'),
  call(1, 'prime', 'unsure', 'AA'),
  call(3, 'unripe', 'not-yet', 'AA'),
  call(3, 'prime', 'ripe', 'BB'),
  call(4, 'unripe', 'ripe', 'BB'),
  call(9, 'unripe', 'ripe', 'CC'),
  call(9, 'unripe', 'ripe', 'DD'),
];

describe('calls held against the knife', () => {
  const [anna, bob, ...more] = callsOf(FULL);

  test('are counted as by hand', () => {
    // 8 called ripe, 6 of them so; 10 ripe (6 + 3 + 1), 6 of them called.
    expect(anna).toMatchObject({
      code: 'K1',
      calls: 15,
      unsure: 1,
      called_ripe: { hits: 6, units: 8 },
      ripe: { hits: 6, units: 10 },
    });
    expect(bob).toMatchObject({
      code: 'K2',
      calls: 7,
      called_ripe: { hits: 3, units: 7 },
      ripe: { hits: 3, units: 3 },
    });
  });
  test('nobody whose agreement does not stand is counted, not even by code', () => {
    expect(more).toEqual([]);
    // Nor in what the others are drawn to: theirs were all wrong.
    const without = callsOf(FULL.slice(0, 7));
    expect(without).toEqual([anna, bob]);
    expect(JSON.stringify([anna, bob])).not.toMatch(/Anna|Arbour|Bob|Bower|AA|BB/);
  });
  test('a number stands from eight calls on', () => {
    expect(anna?.called_ripe.told).not.toBeNull();
    expect([bob?.called_ripe.told, bob?.ripe.told]).toEqual([null, null]);
  });
  test('a keeper is drawn towards the others', () => {
    // 6 of 8 alone; the other had 3 of 7, who is too new to be told a number.
    const [alone] = callsOf(FULL.slice(0, 5));
    expect(anna?.called_ripe.told?.share).toBeLessThan(alone?.called_ripe.told?.share ?? 0);
    expect(anna?.called_ripe.told?.share).toBeGreaterThan(3 / 7);
  });
});

test('only the last call within the days a look holds counts, one a fruit', () => {
  const garden = lookedGarden({ 2025: [{ count: 1, state: 'prime' }] }, PEOPLE);
  const [season] = garden.seasons;
  const [found] = openLedger(garden, null).ripeness;
  const [judged] = found?.judged ?? [];
  if (!season || !judged) throw new Error('invalid test');
  const visit = (id: string, on: string, said: string | null) =>
    ({
      id,
      visited_on: on,
      by: 'AA',
      fruits: [{ fruit: 'F1', call: said }],
    }) as unknown as (typeof season.visits)[number];
  const callsWith = (visits: (typeof season.visits)[number][]) =>
    keeperCalls(garden.people, [{ ...judged, season: { ...season, visits } }]).map(({ calls, ripe }) => [
      calls,
      ripe.hits,
    ]);
  // Picked on 12 August.
  expect(callsWith([visit('V1', '2025-08-08', 'ripe')])).toEqual([]);
  expect(callsWith([visit('V1', '2025-08-13', 'ripe')])).toEqual([]);
  expect(callsWith([visit('V1', '2025-08-09', 'not-yet'), visit('V2', '2025-08-12', 'ripe')])).toEqual([[1, 1]]);
  expect(callsWith([visit('V1', '2025-08-09', 'ripe'), visit('V2', '2025-08-12', 'not-yet')])).toEqual([[1, 0]]);
  // A look without a call takes none back.
  expect(callsWith([visit('V1', '2025-08-09', 'ripe'), visit('V2', '2025-08-12', null)])).toEqual([[1, 1]]);
});

test('a garden that lists nobody has no keeper', () => {
  expect(callsOf(FULL, '')).toEqual([]);
});
