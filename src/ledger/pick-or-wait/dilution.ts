import { tTwoSidedP } from '../../statistics/distributions.ts';
import type { UncertainChance } from '../../statistics/pick-or-wait/chance-draws.ts';
import type { CropRain } from '../rain-sugar/crop-rain.ts';

/** A judgement of the makers: published trials mostly found little or nothing. */
export const USUAL_DILUTION = { mean: 0.2, counted: 5 } as const;

export interface Dilution {
  /** Chance that a soaking day takes from a fruit what a tongue can tell. */
  readonly chance: UncertainChance;
  /** `usual`: too few rains here to tell. */
  readonly from: 'slope' | 'usual';
  readonly picking_days: number;
}

/** From the slope of sugar on rain, by its t distribution, at the rain of a soaking day; as if counted on its picking days. */
export function dilutionOf(rain: CropRain | null, soaking_mm: number): Dilution {
  const picking_days = rain?.evidence.picking_days ?? 0;
  if (!rain?.fit || rain.slope.value === null) return { chance: USUAL_DILUTION, from: 'usual', picking_days };
  const { estimate, se, df } = rain.fit;
  const t = (rain.settings.tongue_brix + estimate * soaking_mm) / (se * soaking_mm);
  const tail = tTwoSidedP(t, df) / 2;
  return { chance: { mean: t > 0 ? tail : 1 - tail, counted: picking_days }, from: 'slope', picking_days };
}
