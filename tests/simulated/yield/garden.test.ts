import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { plantingId, SEASON } from '../garden-texts.ts';
import { momentsOf } from '../moments.ts';
import { yieldGarden } from './garden.ts';
import type { YieldSetting } from './setting.ts';
import { YIELD_SETTINGS } from './settings.ts';
import { type TrueMound, trueDifference } from './truth.ts';

const GARDENS = 400;
/** Of the skewed errors: see chance.test.ts. Of Poisson counts with a mean of at least 1.5: 3 + 1/1.5. */
const KURTOSIS = { normal: 3, skewed: 13.3, count: 3.7 };

const gardensOf = (setting: YieldSetting) =>
  Array.from({ length: GARDENS }, (_, index) => yieldGarden(setting, index + 1));

/** What a mound bore per plant, in the measure's unit. */
const perPlant = ({ bore, plants }: TrueMound, { bearing }: YieldSetting): number =>
  bore / (bearing.measure === 'sound_kg' ? 100 : 1) / plants;

/** Sound kg or fruits of a planting, added up by hand from the written records. */
function written(rows: readonly Written[], planting: string, weighed: boolean): number {
  const own = rows.filter((row) => row.planting === planting);
  return own.reduce((sum, { pick, count, sound_count, mass_kg, sound_mass_kg }) => {
    if (count !== undefined)
      return (
        sum + (weighed ? (sound_mass_kg ?? (sound_count === count ? mass_kg : undefined) ?? 0) : (sound_count ?? 0))
      );
    return sum + (pick?.condition === 'whole' ? (pick.mass_kg ?? 0) : 0);
  }, 0);
}

interface Written {
  readonly planting: string;
  readonly pick?: { readonly condition: string; readonly mass_kg?: number };
  readonly count?: number;
  readonly sound_count?: number;
  readonly mass_kg?: number;
  readonly sound_mass_kg?: number;
}

describe.each(YIELD_SETTINGS)('$name', (setting) => {
  const gardens = gardensOf(setting);
  const shape = setting.bearing.measure === 'sound_fruits' ? 'count' : setting.bearing.error;
  const mounds = gardens.flatMap(({ truth }) => truth.mounds);

  test('the records hold what the mounds bore', () => {
    const weighed = setting.bearing.measure === 'sound_kg';
    for (const { texts, truth } of gardens.slice(0, 20)) {
      const rows = parse(texts[`${SEASON}/${setting.written_in}.yaml`] ?? '') as Written[];
      for (const mound of truth.mounds) {
        const bore = weighed ? mound.bore / 100 : mound.bore;
        expect(written(rows, plantingId(mound), weighed)).toBeCloseTo(bore, 9);
      }
    }
  });

  test('mounds stray from what is expected of them by their standard deviation, on average not at all', () => {
    const strays = mounds.map((mound) => (perPlant(mound, setting) - mound.expected) / mound.sd);
    const { mean, sd, skewness } = momentsOf(strays);
    expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(strays.length));
    // The standard error of a standard deviation of 1 is √((kurtosis − 1)/4n).
    expect(Math.abs(sd - 1)).toBeLessThan(4 * Math.sqrt((KURTOSIS[shape] - 1) / 4 / strays.length));
    if (shape === 'normal') expect(Math.abs(skewness)).toBeLessThan(4 * Math.sqrt(6 / strays.length));
    else expect(skewness).toBeGreaterThan(shape === 'skewed' ? 1.5 : 0.2);
  });

  test('each variety strays as far as the setting says', () => {
    const { bearing } = setting;
    if (bearing.measure === 'sound_fruits') {
      // A Poisson count over one or two plants: its variance is its mean.
      for (const { sd, plants, expected } of mounds) expect((sd * plants) ** 2).toBeCloseTo(expected * plants, 9);
      return;
    }
    Object.keys(gardens[0]?.truth.means ?? {}).forEach((variety, index) => {
      const own = mounds.filter((mound) => mound.variety === variety);
      const { sd } = momentsOf(own.map((mound) => perPlant(mound, setting) - mound.expected));
      const wanted = typeof bearing.sd_kg === 'number' ? bearing.sd_kg : (bearing.sd_kg[index] ?? 0);
      expect(Math.abs(sd / wanted - 1)).toBeLessThan(4 * Math.sqrt((KURTOSIS[shape] - 1) / 4 / own.length));
    });
  });

  test("varieties' means fill their range evenly, and one or two plants stand in a mound", () => {
    const means = gardens.map(({ truth, texts }) => {
      const names = parse(texts['varieties.yaml'] ?? '').map(({ id }: { id: string }) => id);
      expect(names).toEqual(Object.keys(truth.means));
      return trueDifference(truth, 'amber', 'birch');
    });
    // The difference of two numbers spread evenly over a range w has mean 0 and standard deviation w/√6.
    const width = setting.means.high - setting.means.low;
    const { mean, sd } = momentsOf(means);
    expect(Math.abs(mean)).toBeLessThan((4 * width) / Math.sqrt(6 * GARDENS));
    expect(Math.abs(sd / (width / Math.sqrt(6)) - 1)).toBeLessThan(4 * Math.sqrt((2.4 - 1) / 4 / GARDENS));
    const two = mounds.filter(({ plants }) => plants === 2).length / mounds.length;
    expect(Math.abs(two - 0.5)).toBeLessThan(2 / Math.sqrt(mounds.length));
    expect(mounds.every(({ plants }) => plants === 1 || plants === 2)).toBe(true);
  });

  test('a true mean is the average over all blocks of the garden, each weighing the same', () => {
    for (const { truth } of gardens.slice(0, 20)) {
      const added = new Map<string, number>();
      for (const { block, variety, expected } of truth.mounds) {
        // What the block adds to the true mean; every variety in the block has to tell the same.
        const adds = expected - (truth.means[variety] ?? Number.NaN);
        expect(adds).toBeCloseTo(added.get(block ?? '') ?? adds, 9);
        added.set(block ?? '', adds);
      }
      expect([...added.values()].reduce((sum, one) => sum + one, 0)).toBeCloseTo(0, 9);
      expect(added.size).toBe('blocks' in setting.design ? setting.design.blocks.length : 1);
    }
  });

  test('one seed, one garden', () => {
    expect(yieldGarden(setting, 3)).toEqual(gardens[2]);
    expect(yieldGarden(setting, 4).texts).not.toEqual(gardens[2]?.texts);
  });
});
