import type { Weights } from '../../src/ledger/trial/weight.ts';
import type { JudgedSetting } from './coverage-table.ts';
import type { VarietyPlan } from './simulated-variety-values.ts';

export interface ListSetting extends JudgedSetting, VarietyPlan {
  /** Each 1: what the traits are wished for. */
  readonly weights: Weights;
}

const PLENTY = { traits: ['sound_kg_per_plant'], weights: { plenty: 1 } } as const;
const SWEET = { traits: ['brix'], weights: { sweet: 1 } } as const;
const BOTH = { traits: ['brix', 'sound_kg_per_plant'], weights: { sweet: 1, plenty: 1 } } as const;
const PRIORS = { model: 'right', varieties: 8, stands: 0.6, sd: null } as const;
const FICKLE = {
  model: 'broken',
  varieties: 8,
  stands: 0.6,
  sd: { variety: 0.6, variety_season: 0.9, mound: 0.3, day: 0.3 },
} as const;

/** Right: truths come from the priors. Broken: a summer’s favourites are 1.5 times as far apart as what lasts. */
export const LIST_SETTINGS: readonly ListSetting[] = [
  { ...PRIORS, ...PLENTY, name: 'priors, plenty, 1 season', seasons: 1 },
  { ...PRIORS, ...SWEET, name: 'priors, sweet, 2 seasons', seasons: 2 },
  { ...PRIORS, ...PLENTY, name: 'priors, plenty, 4 seasons', seasons: 4 },
  { ...PRIORS, ...BOTH, name: 'priors, sweet and plenty, 3 seasons', seasons: 3 },
  { ...FICKLE, ...SWEET, name: 'fickle, sweet, 1 season', seasons: 1 },
  { ...FICKLE, ...PLENTY, name: 'fickle, plenty, 2 seasons', seasons: 2 },
  { ...FICKLE, ...SWEET, name: 'fickle, sweet, 4 seasons', seasons: 4 },
  { ...FICKLE, ...PLENTY, name: 'fickle, plenty, 3 varieties, 4 seasons', varieties: 3, stands: 0.8, seasons: 4 },
];
