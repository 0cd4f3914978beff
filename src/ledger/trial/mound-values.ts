import { isOneDay } from '../../dated.ts';
import type { Planting } from '../../garden/garden.ts';
import { firstPickOf } from '../first-pick.ts';
import type { Harvest } from '../harvest.ts';
import { ripenessOf } from '../maturity/ripening.ts';
import { moundsOf } from '../mounds.ts';
import type { SeasonAccount } from '../season-account.ts';
import { isComplete } from '../tally.ts';
import type { HeatBetween } from '../weather/heat-record.ts';
import type { TraitId } from './trait.ts';
import type { TraitValue } from './trait-value.ts';

/**
 * What mounds tell of their variety: plantings of it alone in their spot. A mound with fruit still growing has not told
 * yet what it gave. One that never gave a ripe fruit has no day of its first.
 */
export function moundValues(account: SeasonAccount, crop: string, heat: HeatBetween | null): TraitValue[] {
  const { slug } = account.season;
  return moundsOf(account, crop, 'fruits').mounds.flatMap(({ planting, variety, spot, block }) => {
    const harvest = account.harvestOf(planting);
    if (!harvest) return [];
    const told = [...(harvest.growing === 0 ? given(planting, harvest) : []), ...firstRipe(planting, heat)];
    return told.map(({ trait, value }) => ({
      trait,
      value,
      variety,
      season: slug,
      block,
      spot,
      day: null,
      key: planting.key,
    }));
  });
}

interface Told {
  readonly trait: TraitId;
  readonly value: number;
}

function given(planting: Planting, harvest: Harvest): Told[] {
  const { sound_mass_kg } = harvest;
  const ripe =
    harvest.from === 'register'
      ? planting.fruits.filter((fruit) => fruit.fate === 'picked' && ripenessOf(fruit) !== 'not-yet').length
      : harvest.fruits;
  return [
    ...(isComplete(sound_mass_kg)
      ? [{ trait: 'sound_kg_per_plant' as const, value: sound_mass_kg.sum / planting.plants_set }]
      : []),
    { trait: 'ripe_fruits_per_plant', value: ripe / planting.plants_set },
  ];
}

function firstRipe(planting: Planting, heat: HeatBetween | null): Told[] {
  const first = firstPickOf([planting]);
  const { planted_on } = planting;
  if (!first || first.days_from_planting === null || !isOneDay(planted_on)) return [];
  const warmth = heat?.(planted_on.first, first.picked_on.first) ?? null;
  return [
    { trait: 'first_ripe_days', value: first.days_from_planting },
    ...(warmth === null ? [] : [{ trait: 'first_ripe_c_days' as const, value: warmth }]),
  ];
}
