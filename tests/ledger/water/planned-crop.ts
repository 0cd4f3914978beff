import type { Mulch } from '../../../src/agronomy/mulched-coefficient.ts';
import type { PlannedCrop } from '../../../src/ledger/water/plan-wants.ts';
import { SOILS, TRAITS, told } from './watered-garden.ts';

const ALL_COVERED: Mulch = {
  kind: 'plastic',
  cover: 1,
  evaporation_cut: 1,
  transpiration_cut: 0,
  kc_initial: 0,
  kc_cut: 0,
};

/**
 * Leaves take 5 mm a day from 10 m² and a whole cover stops all evaporation. Roots hold 40 mm, and p is 0.5: 20 may go.
 * From a full ground it wants nothing for five days, then 50 litres a day.
 */
export const PLANNED: PlannedCrop = {
  water: {
    traits: {
      ...TRAITS,
      kcb_initial: 1,
      kcb_middle: 1,
      kcb_end: 1,
      stages: [],
      plastic: null,
      sources: [],
      entered: {},
    } as unknown as PlannedCrop['water']['traits'],
    lengths: { initial_days: 10, development_days: 20, middle_days: 20, late_days: 30 },
    climate: { wind_m_s: 2, rh_min_pct: 45 },
    ground: {
      canopy_m2: 10,
      canopy_from: 'told',
      root_m2: 10,
      root_depth_m: 0.4,
      bowl_m2: 2,
      available_mm: { low: 30, middle: 40, high: 50 },
      soil: told(SOILS.find(({ id }) => id === 'loam')),
    },
  },
  mulch: ALL_COVERED,
  spots: 1,
  starts_at: 1,
  used_share: 0,
};
