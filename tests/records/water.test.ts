import { describe, expect, test } from 'vitest';
import type { z } from 'zod';
import { dipSchema } from '../../src/records/event/dip.ts';
import { soilFeelSchema } from '../../src/records/event/soil-feel.ts';
import { wateringSchema } from '../../src/records/event/watering.ts';
import { tankSchema } from '../../src/records/tank.ts';

type Typed = Readonly<Record<string, unknown>>;
type Schema = z.ZodType;

/** The code and field of every refusal; none for a record that is taken. */
function refusals(schema: Schema, typed: Typed): string[] {
  const result = schema.safeParse(typed);
  if (result.success) return [];
  return result.error.issues.map((issue) => {
    const params = issue.code === 'custom' ? (issue.params as { code: string }) : issue;
    return `${params.code} ${issue.path.join('.')}`.trim();
  });
}

// 1 gal = 3.785411784 l and 1 in = 2.54 cm, exactly (NIST SP 811, from memory).

describe('water given', () => {
  const day = { watered_on: '2025-07-02' };

  test('needs its day and nothing else; what is not told is null', () => {
    expect(wateringSchema.parse(day)).toMatchObject({
      spots: null,
      cans_each: null,
      cans: null,
      volume_l: null,
      minutes: null,
      flow_l_min: null,
      roughly: null,
      how: null,
      from: null,
      entered: {},
    });
    expect(refusals(wateringSchema, { cans: '4' })).toEqual(['invalid_type watered_on']);
  });

  test('is taken in halves of a can, reckoned, over a month, in gallons, and by a flow in gallons', () => {
    expect(wateringSchema.parse({ ...day, cans_each: '.5' })).toMatchObject({ cans_each: 0.5, entered: {} });
    expect(wateringSchema.parse({ watered_on: '2025-07', cans: 'about 30' })).toMatchObject({
      watered_on: { kind: 'month', first: '2025-07-01', last: '2025-07-31' },
      cans: 30,
      entered: { cans: 'about' },
    });
    expect(wateringSchema.parse({ ...day, volume_gal: 'about 10' })).toMatchObject({
      volume_gal: 10,
      volume_l: expect.closeTo(37.85411784, 10),
      entered: { volume_l: 'about' },
    });
    expect(wateringSchema.parse({ ...day, minutes: '30', flow_gal_min: '2' })).toMatchObject({
      minutes: 30,
      flow_l_min: expect.closeTo(7.570823568, 10),
    });
  });

  test('may be none: somebody came and gave nothing', () =>
    expect(wateringSchema.parse({ ...day, cans: '0' })).toMatchObject({ cans: 0 }));

  test.each<[Typed, string[]]>([
    [{ cans: '-1' }, ['out-of-range cans']],
    [{ cans_each: '101' }, ['out-of-range cans_each']],
    [{ minutes: '1441' }, ['out-of-range minutes']],
    [{ minutes: '20', flow_l_min: '0' }, ['out-of-range flow_l_min']],
    [{ volume_l: '20001' }, ['out-of-range volume_l']],
    [{ volume_l: '10', volume_gal: '3' }, ['two-units volume_gal']],
    [{ flow_l_min: '10', flow_gal_min: '3' }, ['two-units flow_gal_min']],
    [{ from: 'rain' }, ['unknown-word from']],
    [{ how: 'bucket' }, ['unknown-word how']],
    [{ litres: '10' }, ['unrecognized_keys']],
  ])('%j is refused', (rest, expected) => expect(refusals(wateringSchema, { ...day, ...rest })).toEqual(expected));
});

describe('a dip', () => {
  test('is a depth or litres, and says whether the tank ran over; nobody looked is neither', () => {
    expect(dipSchema.parse({ dipped_on: '2025-07-06', depth_in: '12.5', overflowed: 'no' })).toMatchObject({
      depth_in: 12.5,
      depth_cm: expect.closeTo(31.75, 10),
      volume_l: null,
      overflowed: false,
    });
    expect(dipSchema.parse({ dipped_on: '2025-07-06', depth_cm: '0' })).toMatchObject({
      depth_cm: 0,
      overflowed: null,
    });
  });

  test('has bounds, alike in both units', () => {
    expect(refusals(dipSchema, { dipped_on: '2025-07-06', depth_cm: '500.5' })).toEqual(['out-of-range depth_cm']);
    // 500 cm are 196.85 in.
    expect(refusals(dipSchema, { dipped_on: '2025-07-06', depth_in: '196.9' })).toEqual(['out-of-range depth_in']);
    expect(refusals(dipSchema, { dipped_on: '2025-07-06', depth_in: '196.8' })).toEqual([]);
  });
});

describe('a finger in the soil', () => {
  test('feels the top or below or both, each one of three words', () => {
    expect(soilFeelSchema.parse({ felt_on: '2025-07-06', top: 'Dry' })).toMatchObject({ top: 'dry', below: null });
    expect(refusals(soilFeelSchema, { felt_on: '2025-07-06', top: 'dusty', below: 'moist' })).toEqual([
      'unknown-word top',
      'unknown-word below',
    ]);
  });
});

describe('a tank', () => {
  test('may be known by as little as what it holds', () => {
    const whole = tankSchema.parse({ holds_gal: '55' });
    expect(whole).toMatchObject({ holds_l: expect.closeTo(208.19764812, 8), shape: null, tap_cm: null, count: null });
  });

  test('is measured exactly; a roof and what is thrown away may be reckoned', () => {
    for (const key of ['diameter_cm', 'length_in', 'width_cm', 'height_in', 'tap_cm'])
      expect(refusals(tankSchema, { [key]: 'about 60' }), key).toEqual([`about-not-allowed ${key}`]);
    expect(refusals(tankSchema, { count: 'about 2' })).toEqual(['about-not-allowed count']);
    for (const key of ['roof_m2', 'roof_ft2', 'first_flush_l', 'holds_l', 'flow_l_min'])
      expect(refusals(tankSchema, { [key]: 'about 60' }), key).toEqual([]);
  });

  test('has bounds and words of its own', () => {
    expect(
      refusals(tankSchema, { diameter_cm: '4', roof_m2: '0', count: '21', shape: 'cone', roof_of: 'thatch' }),
    ).toEqual([
      'unknown-word shape',
      'out-of-range diameter_cm',
      'out-of-range count',
      'out-of-range roof_m2',
      'unknown-word roof_of',
    ]);
  });
});
