import type { Day } from '../../src/day.ts';
import type { Figure, Interval } from '../../src/figure.ts';
import { linkGarden } from '../../src/garden/link.ts';
import { createBases } from '../../src/ledger/bases.ts';
import { type SeasonYield, seasonYield } from '../../src/ledger/season-yield.ts';
import { readGardenRecords } from '../../src/reading/garden-records.ts';
import type { Texts } from '../simulated/garden-texts.ts';
import { yieldGarden } from '../simulated/yield/garden.ts';
import type { YieldSetting } from '../simulated/yield/setting.ts';
import { trueDifference } from '../simulated/yield/truth.ts';
import { oracleOf } from './oracle.ts';

/** One range the book would print, held against what is true. */
export interface Judged {
  /** Variety id, or two of them. */
  readonly of: string;
  /** Null where the book prints none. */
  readonly interval: Interval | null;
  readonly truth: number;
  readonly oracle_width: number;
}

export interface JudgedGarden {
  readonly means: readonly Judged[];
  /** Every pair of varieties once, whether or not the book compares it. */
  readonly differences: readonly Judged[];
}

const AFTER_THE_SEASON = '2025-12-01' as Day;

/** A simulated garden through the whole chain, from its texts to the ranges of its comparison. */
export function judgedGarden(setting: YieldSetting, seed: number): JudgedGarden {
  const { texts, truth } = yieldGarden(setting, seed);
  const comparison = seasonOf(texts).crops[0]?.comparisons[setting.bearing.measure];
  const oracle = oracleOf(truth);
  const intervalOf = (figure: Figure | undefined): Interval | null => figure?.interval ?? null;
  const varieties = Object.keys(truth.means);
  const means = varieties.map((id) => ({
    of: id,
    interval: intervalOf(comparison?.means.find(({ variety }) => variety.id === id)?.mean),
    truth: truth.means[id] ?? Number.NaN,
    oracle_width: oracle.mean(id),
  }));
  const pairs = varieties.flatMap((a, index) => varieties.slice(index + 1).map((b) => [a, b] as const));
  const differences = pairs.map(([a, b]) => ({
    of: `${a} ${b}`,
    interval: intervalOf(comparison?.differences.find((one) => one.a.id === a && one.b.id === b)?.difference),
    truth: trueDifference(truth, a, b),
    oracle_width: oracle.difference(a, b),
  }));
  return { means, differences };
}

/** The only season of a garden. Throws when its records have any problem, a warning too. */
export function seasonOf(texts: Texts): SeasonYield {
  const files = Object.entries(texts).map(([path, text]) => ({ path, bytes: new TextEncoder().encode(text) }));
  const { garden, problems } = linkGarden(readGardenRecords(files), []);
  const [season] = garden?.seasons ?? [];
  if (!garden || !season || problems.length > 0) throw new Error(`invalid garden: ${JSON.stringify(problems)}`);
  return seasonYield(garden, season, AFTER_THE_SEASON, createBases());
}
