import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/day.ts';
import { givings } from '../../../src/ledger/water/given.ts';
import { type SpotWater, spotWater } from '../../../src/ledger/water/spot-water.ts';
import type { ThirstRecord } from '../../../src/ledger/water/thirst-record.ts';
import {
  cropText,
  dayRows,
  type Parts,
  planted,
  SOILS,
  seasonOf,
  soilsWith,
  stationOf,
  steadyThirst,
  told,
  wateredGarden,
} from './watered-garden.ts';

interface Asked {
  readonly last?: string;
  readonly thirst?: ThirstRecord;
  readonly soils?: typeof SOILS;
  readonly soaking_mm?: number;
  readonly spot?: string;
}

function waterOf(
  parts: Parts,
  { last = '2025-10-31', thirst = steadyThirst(5), soils = SOILS, soaking_mm = 20, spot = 'S1' }: Asked = {},
): SpotWater | null {
  const garden = wateredGarden({ weather: '2025-05-20,,25,12\n', ...parts });
  const season = seasonOf(garden);
  return spotWater(
    { station: stationOf(garden), thirst, soils, soaking_mm },
    season,
    last as Day,
    season.plantings.filter((planting) => planting.spot.id === spot),
    givings(garden, season).filter((giving) => giving.spot === spot),
  );
}

/** Rain by day of May and June, a row a day from the day of planting. */
const rainFrom = (rain: readonly number[]): string =>
  dayRows('2025-05-20', rain.length, (index) => `${rain[index]},25,12`);

/**
 * Six days worked out with the equations of FAO-56: a bare spot of 10 m² whose bowl is 5 m², 5 mm a day, Kcb 0.15, so no
 * cover (Eq. 76) and Kcmax 1.2 (Eq. 72). The top holds 20 mm, 8 of them freely (Kr 1); the roots hold 100. Leaves take
 * 0.15 × 5 = 0.75 mm a day.
 *
 * 1  Ke 1.2 − 0.15 = 1.05 (Eq. 71), E 5.25; top 5.25, roots 6.00 down
 * 2  Kr (20 − 5.25) / 12 is above 1: the same; top 10.50, roots 12.00
 * 3  100 litres are 10 mm, 20 on the bowl: top full; bare and wet is half, Ke is held to 0.5 × 1.2 = 0.6 (Eq. 75), E 3;
 *    top 3 / 0.5 = 6; roots 12 − 10 + 3.75 = 5.75
 * 4  Kr 1, E 3; top 6 + 6 = 12; roots 9.50
 * 5  4 mm of rain wet all again (3 mm and more): top 8, Kr 1, E 5.25, 13.25; roots 9.5 − 4 + 6 = 11.50
 * 6  20 mm: 8.5 run through the roots (Eq. 88), E 5.25; top 5.25, roots 6.00
 */
const BY_HAND = [
  { root: 6, top: 5.25, evaporated: 5.25, through: 0 },
  { root: 12, top: 10.5, evaporated: 5.25, through: 0 },
  { root: 5.75, top: 6, evaporated: 3, through: 0 },
  { root: 9.5, top: 12, evaporated: 3, through: 0 },
  { root: 11.5, top: 13.25, evaporated: 5.25, through: 0 },
  { root: 6, top: 5.25, evaporated: 5.25, through: 8.5 },
];
const BOWL = '  - {id: S1, kind: mound, area_m2: 10, soil: loam, canopy_m2: 10, bowl_m2: 5}\n';
const WATERINGS = { waterings: '- {watered_on: 2025-05-22, spots: [S1], volume_l: 100}\n' };

describe('six days by hand', () => {
  const found = told(
    waterOf({ spots: BOWL, weather: rainFrom([0, 0, 0, 0, 4, 20]), season: WATERINGS }, { last: '2025-05-25' }),
  );
  test.each(BY_HAND.map((day, index) => ({ index, ...day })))('day $index of FAO’s equations', (by) => {
    const step = told(found.days[by.index]?.step);
    expect(step.end.root_mm).toBeCloseTo(by.root, 10);
    expect(step.end.top?.depletion_mm).toBeCloseTo(by.top, 10);
    expect(step.evaporation_mm).toBeCloseTo(by.evaporated, 10);
    expect(step.transpiration_mm).toBeCloseTo(0.75, 10);
    expect(step.percolation_mm).toBeCloseTo(by.through, 10);
    expect(found.days[by.index]?.wanted_l).toBeCloseTo(10 * (by.evaporated + 0.75), 9);
  });
  test('its days, stages, rain and cans stand beside them', () => {
    expect(found.days.map(({ day }) => day.slice(5))).toEqual(['05-20', '05-21', '05-22', '05-23', '05-24', '05-25']);
    expect(found.days.map(({ given_l }) => given_l)).toEqual([0, 0, 100, 0, 0, 0]);
    expect(found.days.map(({ rain }) => rain.rain_mm)).toEqual([0, 0, 0, 0, 4, 20]);
    expect(new Set(found.days.map(({ stage }) => stage))).toEqual(new Set(['initial']));
  });
});

describe('what changes the day', () => {
  const endOf = (parts: Parts, asked?: Asked): number => {
    const found = told(waterOf({ spots: BOWL, ...parts }, { last: '2025-05-22', ...asked }));
    return told(found.days.at(-1)?.step).end.root_mm;
  };
  // Half the evaporation of bare soil: FAO-56, chapter 10, ten parts covered at 5 in 100 for every 10. 3 × (0.75 + 2.625).
  test('straw over all of it halves what the soil loses', () =>
    expect(endOf({ season: { mulching: '- {laid_on: 2025-05-01, material: straw, cover_of_ten: 10}\n' } })).toBeCloseTo(
      10.125,
      10,
    ));
  test('straw laid on the third day counts from then on', () =>
    expect(endOf({ season: { mulching: '- {laid_on: 2025-05-22, material: straw, cover_of_ten: 10}\n' } })).toBeCloseTo(
      12 + 0.75 + 0.5 * 5 * 1.05 * Math.min(1, (20 - 10.5) / 12),
      10,
    ));
  // Drip wets chiefly under leaves; without cover the share stays as it is, so a bowl and drip are the same here.
  test('a bowl nobody measured is 0.35 of the ground, and one larger than the spot is all of it', () => {
    const dry = BOWL.replace(', bowl_m2: 5', '');
    // Day 3: Ke is held to 0.35 × 1.2 = 0.42, E 2.1: 12 − 10 + 2.85.
    expect(endOf({ spots: dry, season: WATERINGS })).toBeCloseTo(4.85, 10);
    // Ke 1.05, E 5.25: 12 − 10 + 6.
    expect(endOf({ spots: BOWL.replace('bowl_m2: 5', 'bowl_m2: 50'), season: WATERINGS })).toBeCloseTo(8, 10);
  });
  // Cover 0.4353 of the ground of its leaves, which are over twice the ground of its roots: 0.8706 of that is shaded, 0.1294
  // is bare, and Ke held to 0.1294 × 1.2 = 0.1553. Roots give 2 × 3.375 and 0.7767.
  test('leaves that reach beyond the ground of the roots shade more of it', () => {
    const spots = BOWL.replace('canopy_m2: 10', 'canopy_m2: 20');
    const found = endOf({ spots, crop: cropText({ kcb_initial: 0.675 }) }, { last: '2025-05-20' });
    expect(found).toBeCloseTo(6.75 + 0.7767, 4);
  });
  test('rain in words counts as its millimetres', () => {
    const words = { heading: 'date,rain,tmax_c,tmin_c', weather: dayRows('2025-05-20', 3, 'soaking,25,12') };
    expect(endOf(words, { soaking_mm: 30 })).toBeCloseTo(6, 10);
    expect(told(waterOf(words, { last: '2025-05-20', soaking_mm: 33 })).days[0]?.rain).toEqual({
      rain_mm: 33,
      told: 'words',
    });
  });
  test('two waterings on one day add up', () => {
    const waterings =
      '- {watered_on: 2025-05-22, spots: [S1], volume_l: 60}\n- {watered_on: 2025-05-22, spots: [S1, S2], volume_l: 80}\n';
    const spots = `${BOWL}  - {id: S2, kind: mound}\n`;
    expect(endOf({ spots, season: { waterings } })).toBeCloseTo(5.75, 10);
  });
  // Kcb 0.675 is half way from 0.15 to 1.2: cover 0.5 to the power 1 + 0.5 × 0.4 (Eq. 76) is 0.4353. Two days without
  // water: top 2 × 2.625 = 5.25, roots 12. By can Ke is 1.2 − 0.675 = 0.525, E 2.625. By drip the half counts
  // 1 − 2/3 × 0.4353 of itself, 0.3549, and Ke is held to 0.3549 × 1.2 = 0.4259, E 2.1295 (page 147).
  test('drip wets chiefly under the leaves', () => {
    const crop = cropText({ kcb_initial: 0.675 });
    const dripped = { waterings: WATERINGS.waterings.replace('volume_l', 'how: drip, volume_l') };
    expect(endOf({ crop, season: WATERINGS })).toBeCloseTo(12 - 10 + 3.375 + 2.625, 10);
    expect(endOf({ crop, season: dripped })).toBeCloseTo(12 - 10 + 3.375 + 2.12945, 4);
    const mixed = { waterings: `${dripped.waterings}- {watered_on: 2025-05-22, spots: [S1], volume_l: 0}\n` };
    expect(endOf({ crop, season: mixed })).toBeCloseTo(12 - 10 + 3.375 + 2.12945, 4);
  });
});

/**
 * Plastic that stops all evaporation and leaves the plants alone, Kcb 1 all through: leaves take 5 mm a day. Roots of
 * 0.4 m hold 40 mm, of which 20 go without harm at 5 mm a day (p 0.5). Eq. 84: 25 down Ks is (40 − 25) / 20 = 0.75.
 */
const TIGHT: Parts = {
  spots: '  - {id: S1, kind: mound, area_m2: 10, soil: loam, soil_depth_cm: 40, canopy_m2: 10}\n',
  crop: cropText(
    { kcb_initial: 1, kcb_middle: 1, kcb_end: 1 },
    {
      plastic:
        '  plastic: {evaporation_cut_low: 1, evaporation_cut_high: 1, transpiration_cut_low: 0, transpiration_cut_high: 0}\n',
    },
  ),
  season: { mulching: '- {laid_on: 2025-05-01, material: plastic, cover_of_ten: 10}\n' },
};

describe('drought by hand', () => {
  test('roots go down 5 mm a day, and by less once more than half is gone', () => {
    const found = told(waterOf(TIGHT, { last: '2025-05-27' }));
    const ends = [5, 10, 15, 20, 25, 28.75, 31.5625, 33.671875];
    expect(found.days.map(({ step }) => step?.end.root_mm)).toEqual(ends.map((mm) => expect.closeTo(mm, 10)));
    expect(found.days.map(({ step }) => step?.ks)).toEqual(
      [1, 1, 1, 1, 1, 0.75, 0.5625, 0.421875].map((ks) => expect.closeTo(ks, 10)),
    );
    // What was wanted is what it would have drunk with enough.
    expect(found.days.map(({ wanted_l }) => wanted_l)).toEqual(Array.from({ length: 8 }, () => expect.closeTo(50, 9)));
  });
  test('leaves over twice the ground drink twice as much from it', () => {
    const found = told(
      waterOf({ ...TIGHT, spots: told(TIGHT.spots).replace('canopy_m2: 10', 'canopy_m2: 20') }, { last: '2025-05-21' }),
    );
    expect(found.days.map(({ step }) => step?.end.root_mm)).toEqual([expect.closeTo(10, 10), expect.closeTo(20, 10)]);
  });
  // Eq. 66: from 0.2 to 1 in four days after three of the first stage, the first of them one step on.
  test('leaves grow day by day as their stage has it', () => {
    const crop = told(TIGHT.crop)
      .replace('kcb_initial: 1\n', 'kcb_initial: 0.2\n')
      .replace('initial_days: 20, development_days: 30', 'initial_days: 3, development_days: 4')
      .replace('initial_days: 10, development_days: 20', 'initial_days: 3, development_days: 4');
    const found = told(waterOf({ ...TIGHT, crop }, { last: '2025-05-27' }));
    expect(found.days.map(({ wanted_l }) => wanted_l)).toEqual(
      [10, 10, 10, 20, 30, 40, 50, 50].map((litres) => expect.closeTo(litres, 9)),
    );
    expect(found.days.map(({ stage }) => stage).slice(2, 8)).toEqual([
      'initial',
      'development',
      'development',
      'development',
      'development',
      'middle',
    ]);
  });
  // Page 162 of FAO-56: p is 0.5 + 0.04 (5 - 2.5) at 2.5 mm a day, so 24 mm of 40 go without harm, and not 20.
  test('on days that ask for less, more may go without harm', () => {
    const found = told(waterOf(TIGHT, { last: '2025-05-31', thirst: steadyThirst(2.5) }));
    expect(found.days.slice(8, 11).map(({ step }) => step?.ks)).toEqual([
      1,
      1,
      // 25 mm are gone: (40 - 25) / 16.
      expect.closeTo(15 / 16, 10),
    ]);
    expect(found.days[8]?.step?.end.root_mm).toBeCloseTo(22.5, 10);
  });
  test('the deep roots are taken, of a crop left to itself', () => {
    const deep = told(waterOf({ ...TIGHT, spots: told(TIGHT.spots).replace(', soil_depth_cm: 40', '') }));
    expect(deep.water.ground).toMatchObject({ root_depth_m: 1, available_mm: { middle: 100 } });
  });
});

describe('from the first planting to the last day', () => {
  const endOf = (parts: Parts, last?: string): string =>
    told(told(waterOf(parts, last === undefined ? {} : { last })).days.at(-1)).day;
  const picked = (on: string): Parts => ({
    season: { fruits: `- {id: F1, planting: P1, fate: picked, pick: {picked_on: ${on}}}\n` },
  });
  test('as long as its stages last, or to the last picking where that is later', () => {
    expect(endOf({})).toBe('2025-09-06');
    // 110 days from 20 May, but first picked on day 137: 20, 30, 86 and 30 days are 166, past the season’s end.
    expect(endOf(picked('2025-10-03'))).toBe('2025-10-31');
    const early = {
      season: {
        fruits: `- {id: F1, planting: P1, fate: picked, pick: {picked_on: 2025-06-01}}\n- {id: F2, planting: P1, fate: picked, pick: {picked_on: 2025-10-03}}\n`,
      },
    };
    expect(endOf(early)).toBe('2025-10-03');
  });
  test('cut by an earlier day of the book, and not begun before it', () => {
    expect(endOf({}, '2025-06-30')).toBe('2025-06-30');
    expect(endOf({}, '2025-05-20')).toBe('2025-05-20');
    expect(waterOf({}, { last: '2025-05-19' })).toBeNull();
  });
  test('a cut season is the beginning of the whole one', () => {
    const parts = { spots: BOWL, weather: rainFrom([0, 0, 0, 0, 4, 20]), season: WATERINGS };
    const [cut, whole] = [told(waterOf(parts, { last: '2025-06-30' })), told(waterOf(parts))];
    expect(cut.days).toHaveLength(42);
    expect(whole.days.slice(0, 42)).toEqual(cut.days);
  });
  test('a spot planted twice starts with what was planted first', () => {
    const twice = `${planted('P1', 'S1', '2025-06-20')}${planted('P2', 'S1', '2025-05-25')}`;
    const found = told(waterOf({ plantings: twice }));
    expect(found.days[0]?.day).toBe('2025-05-25');
    expect(found.plantings).toHaveLength(2);
  });
  test('and with what was planted on a day somebody knows', () => {
    const twice = `${planted('P1', 'S1', '2025-05-20')}${planted('P2', 'S1', '2025-05')}`;
    expect(told(waterOf({ plantings: twice })).days[0]?.day).toBe('2025-05-20');
  });
});

describe('nothing to reckon with', () => {
  test('ground, crop figures or stages unknown', () => {
    expect(waterOf({ spots: '  - {id: S1, kind: mound}\n' })).toBeNull();
    expect(waterOf({ plantings: planted('P1', 'S1').replace('amber', 'unknown') })).toBeNull();
    expect(waterOf({ plantings: planted('P1', 'S1', 'unknown') })).toBeNull();
    expect(waterOf({ plantings: planted('P1', 'S1', '2025-05') })).toBeNull();
  });
  test('the thirst of one day unknown', () => {
    const thirst = { ...steadyThirst(5), on: (day: Day) => (day === '2025-06-10' ? null : steadyThirst(5).on(day)) };
    expect(waterOf({}, { thirst })).toBeNull();
    expect(waterOf({}, { thirst, last: '2025-06-09' })).not.toBeNull();
  });
  test('a soil without figures leaves what the leaves drink, and no balance', () => {
    const found = told(waterOf(TIGHT, { soils: [], last: '2025-05-21' }));
    expect(found.days.map(({ step }) => step)).toEqual([null, null]);
    expect(found.days.map(({ wanted_l }) => wanted_l)).toEqual([expect.closeTo(50, 9), expect.closeTo(50, 9)]);
  });
  test('a soil that nobody told has wide figures, and a balance', () => {
    const found = told(
      waterOf({ spots: '  - {id: S1, kind: mound, area_m2: 10}\n' }, { soils: soilsWith('loam', {}) }),
    );
    expect(found.water.ground.soil?.id).toBe('unknown');
    expect(found.days.every(({ step }) => step !== null)).toBe(true);
  });
});
