import type { Facts } from '../../src/book/chapter.ts';
import { type Figure, type FigureUnit, happened } from '../../src/figure.ts';
import type { SeasonWater } from '../../src/ledger/water/season-water.ts';
import type { WaterLedger } from '../../src/ledger/water/water-ledger.ts';
import { tankWaterings } from './tank-waterings.ts';
import { weatherKey } from './weather-key.ts';

/** The stick against the reckoning, over one season. */
export interface DipsModel {
  readonly season: string;
  readonly pairs: number;
  /** Dips over what was reckoned: below zero where less was found. */
  readonly bias: Figure;
  /** The farthest apart, whichever way. */
  readonly widest: Figure;
}

/** Of the latest season with two dips between which every day's rain was told. */
export function dipsModel(facts: Facts, { seasons }: WaterLedger): DipsModel | null {
  const latest = seasons.findLast(({ dips }) => dips !== null && dips.bias_l_week !== null);
  return latest?.dips ? dipsOf(facts, latest, latest.dips) : null;
}

function dipsOf(facts: Facts, { season }: SeasonWater, dips: NonNullable<SeasonWater['dips']>): DipsModel {
  const { pairs, bias_l_week } = dips;
  const keys = pairs.flatMap(({ from, to }) => [from.key, to.key]);
  const basis = facts.ledger.bases.of([...keys, ...tankWaterings(facts.garden, season), ...weatherKey(facts)]);
  const figure = (name: string, value: number | null, unit: FigureUnit): Figure =>
    happened({
      id: `water.${season.slug}.tank.${name}`,
      value,
      unit,
      n: pairs.length,
      replicate: { kind: 'pair', count: pairs.length },
      method: 'tank-replay',
      basis,
      reason: null,
    });
  return {
    season: season.label,
    pairs: pairs.length,
    bias: figure('bias_l_per_week', bias_l_week, 'l_per_week'),
    widest: figure(
      'widest_miss_l',
      Math.max(...pairs.map(({ to, reckoned_l }) => Math.abs(to.litres - reckoned_l))),
      'l',
    ),
  };
}
