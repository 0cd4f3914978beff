import { describe, expect, it } from 'vitest';
import { hoursToEmpty, measuredFlow, minutesFor } from '../../src/agronomy/tap.ts';
import { TORRICELLI } from '../published/water/tanks.ts';
import { expectPrinted } from '../statistics/agreement.ts';

describe('by hand', () => {
  it('a can of 10 litres in 40 seconds is 15 litres a minute', () => {
    expect(measuredFlow({ volume_l: 10, seconds: 40 })).toBe(15);
  });
  it('1000 litres, 100 of them below the tap, at 15 litres a minute: an hour', () => {
    expect(hoursToEmpty({ level_l: 1000, dead_l: 100, flow_l_min: 15 })).toBe(1);
  });
  it('a tank that stands below its tap is empty already', () => {
    expect(hoursToEmpty({ level_l: 80, dead_l: 100, flow_l_min: 15 })).toBe(0);
  });
  it('60 litres at 15 litres a minute are four minutes', () => {
    expect(minutesFor({ amount_l: 60, flow_l_min: 15 })).toBe(4);
    expect(minutesFor({ amount_l: 0, flow_l_min: 15 })).toBe(0);
  });
});

describe('a falling level slows the tap', () => {
  /** Litres a minute goes with the root of the water above the tap; solved in short steps, as far as nothing worth a name is left. */
  function hoursByTorricelli(level_l: number, first_l_min: number): number {
    let [left_l, minutes] = [level_l, 0];
    for (; left_l > level_l * 1e-8; minutes += 0.001) left_l -= 0.001 * first_l_min * Math.sqrt(left_l / level_l);
    return minutes / 60;
  }

  it('an upright tank takes twice the time, as a worked example prints it', () => {
    const { volume_l, first_l_s, printed_s } = TORRICELLI;
    const soonest = hoursToEmpty({ level_l: volume_l, dead_l: 0, flow_l_min: 60 * first_l_s });
    expectPrinted(2 * soonest * 3600, printed_s);
  });
  it('so the time given is the soonest', () => {
    const soonest = hoursToEmpty({ level_l: 900, dead_l: 0, flow_l_min: 15 });
    expect(hoursByTorricelli(900, 15) / soonest).toBeCloseTo(2, 2);
  });
});

describe('mistakes of the caller throw', () => {
  it.each([
    ['volume_l', () => measuredFlow({ volume_l: 0, seconds: 40 })],
    ['seconds', () => measuredFlow({ volume_l: 10, seconds: 0 })],
    ['level_l', () => hoursToEmpty({ level_l: -1, dead_l: 0, flow_l_min: 1 })],
    ['dead_l', () => hoursToEmpty({ level_l: 1, dead_l: Number.NaN, flow_l_min: 1 })],
    ['flow_l_min', () => hoursToEmpty({ level_l: 1, dead_l: 0, flow_l_min: 0 })],
    ['flow_l_min', () => minutesFor({ amount_l: 1, flow_l_min: Number.POSITIVE_INFINITY })],
    ['amount_l', () => minutesFor({ amount_l: -1, flow_l_min: 1 })],
  ])('%s', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});
