import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DipChartModel, dipChartPage } from '../../../content/water/dip-chart.ts';
import type { Facts } from '../../../src/book/chapter.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { buildSite } from '../../../src/site/build-site.ts';
import { createDraw } from '../../../src/site/draw.ts';
import { readPage } from '../../books/reading.ts';
import { CIRCLE_BELOW } from '../../published/water/tanks.ts';
import { linkTexts } from '../../reading/garden-texts.ts';
import { expectPrinted } from '../../statistics/agreement.ts';

const reference = loadReference('data/reference');

type Units = 'metric' | 'us';

function factsOf(tank: string | null, units: Units = 'metric'): Facts {
  const { garden, problems } = linkTexts({
    'garden.yaml': `name: T\nedition: home\nunits: ${units}\npaper: A4\nlocale: en-GB\nmeasures: {can_l: 10}\n${tank === null ? '' : `tank: {${tank}}\n`}spots: [{id: S1, kind: mound, area_m2: 4}]\n`,
    'varieties.yaml': '- {id: amber, name: Amber, crop: watermelon, seed: unknown}\n',
  });
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid garden: ${JSON.stringify(errors)}`);
  return bookOf({ reference }, garden, null).facts;
}

function modelOf(tank: string, units: Units = 'metric'): DipChartModel {
  const page = dipChartPage(factsOf(tank, units));
  if (!page) throw new Error('there is no chart');
  return page.model as DipChartModel;
}

type Row = NonNullable<DipChartModel['known']>['rows'][number];
function rowsOf(tank: string, units: Units = 'metric'): readonly Row[] {
  const { known } = modelOf(tank, units);
  if (!known) throw new Error('the shape is not known');
  return known.rows;
}
const at = (rows: readonly Row[], depth_cm: number): Row | undefined =>
  rows.find((row) => Math.abs(row.depth_cm - depth_cm) < 1e-9);

/** 120 by 100 by 100 cm: twelve litres each centimetre. */
const BOX = 'shape: box, length_cm: 120, width_cm: 100, height_cm: 100';

describe('depth into litres', () => {
  // A drum 100 cm across and 100 long: a litre is a thousandth of the square of its width (Chow 1959, as printed).
  test.each(CIRCLE_BELOW)('a lying drum at %f of its width, as a table of hydraulics prints it', (depth, area) => {
    const row = at(rowsOf('shape: lying, diameter_cm: 100, length_cm: 100'), 100 * depth);
    expectPrinted((row?.litres ?? Number.NaN) / 1000, area);
  });
  test('a box by hand, from the brim down', () => {
    const rows = rowsOf(BOX);
    expect(rows).toHaveLength(20);
    for (const { depth_cm, litres } of rows) expect(litres).toBeCloseTo(12 * depth_cm, 9);
    expect(rows[0]).toMatchObject({ depth_cm: 100, at: 'full' });
    expect(modelOf(BOX).known?.one_more_l).toBeCloseTo(12, 9);
  });
  // The usual steel drum is 22.5 inches across and 33.5 high inside; 57 US gallons to the brim, sold as 55. From memory.
  test('in inches: a drum of the usual size, in whole ones', () => {
    const rows = rowsOf('shape: upright, diameter_in: 22.5, height_in: 33.5', 'us');
    expect((rows[0]?.litres ?? 0) / 3.785411784).toBeCloseTo(57.7, 1);
    expect(rows.slice(1).map(({ depth_cm }) => Math.round((depth_cm / 2.54) * 1e6) / 1e6)).toEqual(
      Array.from({ length: 16 }, (_, index) => 32 - 2 * index),
    );
  });
  test('tanks that are joined count together', () =>
    expect(at(rowsOf(`${BOX}, count: 3`), 50)?.litres).toBeCloseTo(3 * 600, 9));
});

describe('cans and the tap', () => {
  const rows = rowsOf(`${BOX}, tap_cm: 12`);

  // 144 litres stay below 12 cm; 25 cm are 300 litres, so 156 can be drawn: fifteen whole cans of ten.
  test('are whole, and only those above it', () => {
    expect([at(rows, 25)?.cans, at(rows, 15)?.cans, at(rows, 12)?.cans, at(rows, 5)?.cans]).toEqual([15, 3, 0, 0]);
  });
  test('it has a line of its own between the others, and what lies under it is told', () => {
    expect(rows.map(({ depth_cm }) => depth_cm).slice(-4)).toEqual([15, 12, 10, 5]);
    expect(rows.filter((row) => row.at === 'tap')).toEqual([at(rows, 12)]);
    expect(rows.filter(({ under_tap }) => under_tap).map(({ depth_cm }) => depth_cm)).toEqual([10, 5]);
  });
  test('in the drawing it lies as high as in the tank: 12 of 100 up from the floor at 100, the brim at 10', () =>
    expect(modelOf(`${BOX}, tap_cm: 12`).known?.drawing.tap_y).toBeCloseTo(100 - 90 * 0.12, 9));
  test('a tap on a whole line is one line, and without one nothing is left in the tank', () => {
    expect(rowsOf(`${BOX}, tap_cm: 10`)).toHaveLength(20);
    expect(at(rowsOf(BOX), 5)?.cans).toBe(6);
    expect(modelOf(BOX).known?.drawing.tap_y).toBeNull();
  });
});

test('whatever the tank, a side holds it: thirty lines at most, each lower than the one before', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 6, max: 1000 }),
      fc.integer({ min: 0, max: 99 }),
      fc.constantFrom<Units>('metric', 'us'),
      (height_cm, tap_in_100, units) => {
        const tap_cm = Math.floor((height_cm * tap_in_100) / 100 / 2);
        const rows = rowsOf(
          `shape: box, length_cm: 100, width_cm: 80, height_cm: ${height_cm}, tap_cm: ${tap_cm}`,
          units,
        );
        expect(rows.length).toBeLessThanOrEqual(30);
        expect(rows.length).toBeGreaterThan(0);
        for (const [index, row] of rows.slice(1).entries()) {
          expect(row.depth_cm).toBeLessThan(rows[index]?.depth_cm ?? 0);
          expect(row.litres).toBeLessThan(rows[index]?.litres ?? 0);
          expect(row.cans).toBeLessThanOrEqual(rows[index]?.cans ?? 0);
        }
      },
    ),
    { seed: 20250812, numRuns: 30 },
  );
}, 60_000);

describe('a tank nobody measured', () => {
  // 210 litres are 21 cans of ten, in fifteen lines at most: every second can.
  test('has a blank chart, in cans that fill a side', () => {
    const { known, blank } = modelOf('holds_l: 210');
    expect(known).toBeNull();
    expect(blank?.rows.map(({ cans }) => cans)).toEqual([2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22]);
    expect(blank?.rows[0]?.litres).toBe(20);
  });
  test('also where half of its measures or its size is missing', () => {
    expect(modelOf('shape: upright, diameter_cm: 60, holds_l: 210').known).toBeNull();
    expect(
      modelOf('roof_m2: 10')
        .blank?.rows.map(({ cans }) => cans)
        .at(-1),
    ).toBe(75);
  });
  test('and no tank has none', () => expect(dipChartPage(factsOf(null))).toBeNull());
});

describe('on paper', () => {
  async function textOf(tank: string): Promise<string> {
    const facts = factsOf(tank);
    const page = dipChartPage(facts);
    if (!page) throw new Error('there is no chart');
    const site = await buildSite(
      { facts, pages: [page], figures: [], tables: page.tables },
      { layouts: 'layouts', content: 'content', version: '0', draw: createDraw() },
    );
    return readPage(String(site.get('sheets/dip-chart/index.html'))).all;
  }

  test('a line says depth, litres and cans, and where nothing comes out', async () => {
    const text = await textOf(`${BOX}, tap_cm: 12, count: 2`);
    expect(text).toMatch(/\b25 600 31\b/);
    expect(text).toMatch(/12 288 none nothing comes out below here/);
    expect(text.match(/nothing comes out/g)).toHaveLength(1);
    expect(text).toContain('Dip any one of the 2');
    expect(text).toMatch(/centimetre more is 24.litres/);
  });
  test('the blank one says how to fill it', async () => {
    const text = await textOf('holds_l: 210');
    expect(text).toContain('Pour in cans up to the next line');
    expect(text).toContain('Nothing comes out below');
  });
  // A litre of water weighs a kilogram; lids, screens and tanks nobody climbs into by the sources each caution cites.
  test.each([
    ['tank-inside', /Never climb into a tank/],
    ['tank-inside', /\{200 l\} weigh \{200 kg\}/],
    ['tank-shut', /screen in every opening/],
    ['tank-shut', /look at it once more/],
  ])('on its back stands the caution %s with its point: %s', (id, point) => {
    expect(dipChartPage(factsOf(BOX))?.cautions).toContain(id);
    expect(reference.cautions.find((caution) => caution.id === id)?.says).toMatch(point);
  });
});
