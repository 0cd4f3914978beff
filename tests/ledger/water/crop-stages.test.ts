import { describe, expect, test } from 'vitest';
import { type CropStages, cropStages, nearestRow } from '../../../src/ledger/water/crop-stages.ts';
import { STAGES } from '../../published/crop-water/fao-56-tables.ts';
import { cropText, planted, plantingOf, ROWS, seasonOf, told, wateredGarden } from './watered-garden.ts';

interface Told {
  readonly flowering?: string;
  readonly fruits?: string;
  readonly pickings?: string;
  readonly plantings?: string;
  readonly crop?: string;
  readonly of?: readonly string[];
}

function stagesOf({
  flowering = '',
  fruits = '',
  pickings = '',
  plantings,
  crop,
  of = ['P1'],
}: Told): CropStages | null {
  const garden = wateredGarden({
    ...(plantings && { plantings }),
    ...(crop && { crop }),
    season: { flowering, fruits, pickings },
  });
  const own = of.map((id) => plantingOf(garden, id));
  return cropStages(told(own[0]?.variety).crop, seasonOf(garden), own);
}
const lengthsOf = (stages: CropStages | null): number[] => Object.values(told(stages).lengths);
const female = (on: string, of = 'P1', what = 'first-female'): string =>
  `- {seen_on: ${on}, planting: ${of}, what: ${what}}\n`;
const picked = (on: string, id = 'F1', of = 'P1'): string =>
  `- {id: ${id}, planting: ${of}, fate: picked, pick: {picked_on: ${on}}}\n`;

// Planted on 20 May. Rows of 110 and 80 days: the second is nearer up to 94 days, the first from 96 on.
describe('the row whose length is nearest', () => {
  test('to the last picking, or the season’s end where nothing was picked', () => {
    expect(lengthsOf(stagesOf({}))).toEqual([20, 30, 30, 30]);
    expect(stagesOf({})).toMatchObject({ days: 110, last_pick: null, full_from: 'sources', late_from: 'sources' });
    // 21 August is day 94: 14 days over the one, 16 under the other.
    expect(lengthsOf(stagesOf({ fruits: picked('2025-08-21') }))).toEqual([10, 20, 93 - 30, 30]);
    // 23 August is day 96.
    expect(lengthsOf(stagesOf({ fruits: picked('2025-08-23') }))).toEqual([20, 30, 95 - 50, 30]);
  });
  // FAO-56, table 11: water melons, 110 and 80 days in all.
  test('as the table prints them: 110 and 80 days', () => {
    const garden = wateredGarden({ crop: cropText() });
    const { crop } = told(plantingOf(garden, 'P1').variety);
    expect(ROWS.map(({ initial, development, middle, late }) => [initial, development, middle, late])).toEqual(
      STAGES['water melons']?.map((row) => row.slice(0, 4)),
    );
    expect(Object.values(told(nearestRow(crop, 94))).slice(0, 4)).toEqual([10, 20, 20, 30]);
    expect(Object.values(told(nearestRow(crop, 96))).slice(0, 4)).toEqual([20, 30, 30, 30]);
    expect(nearestRow(crop, 95)?.initial_days).toBe(20);
    expect(nearestRow(crop, 1000)?.initial_days).toBe(20);
  });
  test('a crop without rows, and a planting of no one day, have no stages', () => {
    const bare = 'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n';
    expect(stagesOf({ crop: bare })).toBeNull();
    expect(stagesOf({ crop: cropText({}, { rows: [] }).replace('  stages:\n', '  stages: []\n') })).toBeNull();
    expect(stagesOf({ plantings: planted('P1', 'S1', 'unknown') })).toBeNull();
    expect(stagesOf({ plantings: planted('P1', 'S1', '2025-05') })).toBeNull();
  });
});

describe('edges the records tell', () => {
  test('leaves are full on the eve of the first female flower, the first two stages in their proportion', () => {
    // 24 June is 35 days after planting, 50 in the row: 20 becomes 14, 30 becomes 21.
    const found = stagesOf({ flowering: female('2025-06-24') + female('2025-06-20', 'P1', 'first-male') });
    expect(lengthsOf(found)).toEqual([14, 21, 30, 30]);
    expect(found).toMatchObject({ full_from: 'records', late_from: 'sources', days: 95 });
  });
  test('the first of several, about or sure; a span tells no day', () => {
    expect(lengthsOf(stagesOf({ flowering: female('2025-06-24') + female('about 2025-06-14') })).slice(0, 2)).toEqual([
      10, 15,
    ]);
    expect(stagesOf({ flowering: female('2025-06-20..2025-06-24') })?.full_from).toBe('sources');
  });
  test('for want of its own, that of another planting of the crop in the season', () => {
    const plantings = planted('P1', 'S1') + planted('P2', 'S2');
    const found = stagesOf({ plantings, flowering: female('2025-06-24', 'P2') });
    expect(found?.full_from).toBe('records');
    expect(lengthsOf(found).slice(0, 2)).toEqual([14, 21]);
    const both = stagesOf({ plantings, flowering: female('2025-06-14', 'P2') + female('2025-06-24', 'P1') });
    expect(lengthsOf(both).slice(0, 2)).toEqual([14, 21]);
  });
  test('leaves age from the first picked fruit', () => {
    // 28 August is 100 days after planting: 100 − 50 of the row.
    const found = stagesOf({ fruits: picked('2025-08-28') + picked('2025-09-10', 'F2') });
    expect(lengthsOf(found)).toEqual([20, 30, 50, 30]);
    expect(found).toMatchObject({ late_from: 'records', last_pick: '2025-09-10', days: 130 });
    const basket = stagesOf({
      pickings:
        '- {planting: P1, picked_on: 2025-08-28, count: 2}\n- {planting: P1, picked_on: 2025-09-10, count: 1}\n',
    });
    expect(basket).toEqual(found);
  });
  test('a picking of no fruit is none', () => {
    const found = stagesOf({ pickings: '- {planting: P1, picked_on: 2025-07-20, count: 0}\n' });
    expect(found).toMatchObject({ last_pick: null, late_from: 'sources', days: 110 });
  });
  test('both edges: from the flower to the fruit', () => {
    const found = stagesOf({ flowering: female('2025-06-24'), fruits: picked('2025-08-28') });
    expect(lengthsOf(found)).toEqual([14, 21, 65, 30]);
  });
  test('a fruit picked before the leaves are full moves nothing', () => {
    const early = stagesOf({ fruits: picked('2025-06-20') + picked('2025-09-10', 'F2') });
    expect(early).toMatchObject({ late_from: 'sources' });
    expect(lengthsOf(early)).toEqual([20, 30, 30, 30]);
    // Exactly on that eve, 50 days after planting, a middle stage of no days would be left.
    const onTheEve = stagesOf({ fruits: picked('2025-07-09') + picked('2025-09-10', 'F2') });
    expect(onTheEve).toMatchObject({ late_from: 'sources', lengths: { middle_days: 30 } });
    expect(stagesOf({ fruits: picked('2025-07-10') + picked('2025-09-10', 'F2') })?.lengths.middle_days).toBe(1);
  });
  test('a flower on the day of planting or the day after tells nothing', () => {
    expect(stagesOf({ flowering: female('2025-05-21') })?.full_from).toBe('sources');
    expect(stagesOf({ flowering: female('2025-05-22') })?.full_from).toBe('records');
  });
  test('of a spot planted twice the first planting counts, and the picks of both', () => {
    const plantings = planted('P1', 'S1', '2025-06-20') + planted('P2', 'S1');
    const found = stagesOf({ plantings, of: ['P1', 'P2'], fruits: picked('2025-08-28', 'F1', 'P1') });
    expect(lengthsOf(found)).toEqual([20, 30, 50, 30]);
  });
});
