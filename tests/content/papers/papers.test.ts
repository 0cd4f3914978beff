import { describe, expect, test } from 'vitest';
import { girthStripModel } from '../../../content/papers/girth-strip.ts';
import { readPage } from '../../books/reading.ts';
import { bookOfFolder, siteOfFolder } from '../../site/built.ts';

const stripOf = (folder: string) => girthStripModel(bookOfFolder(folder).facts);

/** 1 in = 25.4 mm (the agreement of 1959). */
describe('the girth strip is true to size', () => {
  test.each([
    ['data/garden', 'cm', 10, 16],
    ['tests/books/gardens/us-letter', 'in', 25.4, 6],
  ] as const)('%s in %s', (folder, unit, unit_mm, per_piece) => {
    const { pieces, piece_mm, unit: printed } = stripOf(folder);
    expect(printed).toBe(unit);
    expect(piece_mm).toBeCloseTo(unit_mm * per_piece, 9);
    // A piece and the 12 mm it is glued to fit the narrowest column a paper may have here, A4 between 17 mm margins.
    expect(piece_mm + 12).toBeLessThanOrEqual(210 - 34);
    const whole = pieces.flatMap(({ ticks }, piece) =>
      ticks.flatMap(({ at_mm, label }) => (label === null ? [] : [[Number(label), piece * piece_mm + at_mm]])),
    );
    expect(whole).toHaveLength(6 * per_piece);
    for (const [number = 0, mm = 0] of whole) expect(mm).toBeCloseTo(number * unit_mm, 9);
  });
});

describe('the papers of a garden', () => {
  const textOf = async (folder: string, paper: string): Promise<string> => {
    const html = (await siteOfFolder(folder)).get(`sheets/${paper}/index.html`);
    return readPage(String(html)).all;
  };

  test('the neighbour’s sheet names every planted spot and what grows there, and the can that was measured', async () => {
    const text = await textOf('tests/books/gardens/day-zero', 'away');
    for (const spot of ['M1 Osier Lamp', 'M2 Osier Lamp', 'M3 Quillon', 'T1 Hob Kettle', 'T2 Hob Kettle'])
      expect(text).toContain(spot);
    expect(text).not.toContain('One can holds');
    expect(text).toMatch(/please leave/);
    expect(text).toMatch(/Ask: /);
  });

  test('a label says how long the fruit keeps, in the garden’s degrees, and what to do with a bitter one', async () => {
    const us = await textOf('tests/books/gardens/us-letter', 'share-label');
    expect(us).toMatch(/keeps whole \d+ to \d+ days at \d+ to \d+ °F/);
    expect(us).toContain('Very bitter? Spit it out');
  });

  test('the page of sheets names all four', async () => {
    const html = (await siteOfFolder('tests/books/gardens/day-zero')).get('sheets/index.html');
    for (const paper of ['away', 'share-label', 'leave-tag', 'girth-strip'])
      expect(String(html)).toContain(`sheets/${paper}/index.html`);
  });
});
