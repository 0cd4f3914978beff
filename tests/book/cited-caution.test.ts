import { expect, test } from 'vitest';
import { citedCaution } from '../../src/book/cited-caution.ts';
import { loadReference } from '../../src/cli/load-reference.ts';
import { createFormat } from '../../src/format.ts';

const reference = loadReference('data/reference');
const cutFruit = reference.cautions.find(({ id }) => id === 'cut-fruit');

/** The United States Food Code keeps cold food at 41 °F, that is 5 °C; extension sheets give 90 °F for one hour (uga-melons). */
test.each([
  ['metric', ['5\u00a0°C', '32\u00a0°C']],
  ['us', ['41\u00a0°F', '90\u00a0°F']],
] as const)('degrees of a caution are printed in the units of the garden: %s', (units, degrees) => {
  if (!cutFruit) throw new Error('there is no caution about cut fruit');
  const { says } = citedCaution(cutFruit, reference, createFormat({ units, locale: 'en-US' }));
  for (const one of degrees) expect(says).toContain(one);
  expect(says).not.toContain('{');
});

/** A litre of water weighs about a kilogram; 1 US gallon is 3.785 l, 1 lb 0.4536 kg. */
test.each([
  ['metric', '200\u00a0litres weigh 200\u00a0kg'],
  ['us', '53\u00a0gallons weigh 441\u00a0lb'],
] as const)('litres and kilograms of a caution likewise: %s', (units, words) => {
  const tank = reference.cautions.find(({ id }) => id === 'tank-inside');
  if (!tank) throw new Error('there is no caution about the inside of a tank');
  expect(citedCaution(tank, reference, createFormat({ units, locale: 'en-US' })).says).toContain(words);
});

test('every source of every caution is told in words', () => {
  const format = createFormat({ units: 'metric', locale: 'en-GB' });
  for (const caution of reference.cautions) {
    const { cites } = citedCaution(caution, reference, format);
    expect(cites.length, caution.id).toBeGreaterThan(0);
    expect(
      cites.filter((cite) => caution.sources.includes(cite)),
      caution.id,
    ).toEqual([]);
  }
});
