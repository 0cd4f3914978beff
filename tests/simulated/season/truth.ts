import type { Condition, Reason } from './ending.ts';
import type { SeasonEffects, TrueMound } from './ground.ts';
import type { Observer } from './observer.ts';
import type { Stages, State } from './ripening.ts';
import type { Latents } from './signs.ts';
import type { Traits } from './traits.ts';
import type { TrueVariety } from './true-variety.ts';

/** All that nobody in the garden can know. Days are written as records write them. */
export interface SeasonTruth {
  readonly dilution_brix_per_mm: number;
  readonly day_sd_brix: number;
  /** In the initials' order. */
  readonly varieties: readonly TrueVariety[];
  /** By block, the same in all seasons. */
  readonly blocks: Readonly<Record<string, Traits>>;
  readonly observers: readonly Observer[];
  readonly seasons: readonly TrueSeason[];
  /** Of all years, the earlier ones too, in order; rain and temperatures before anybody read or rounded them. */
  readonly weather: readonly TrueDay[];
}

export interface TrueDay {
  readonly date: string;
  readonly rain_mm: number;
  readonly tmax_c: number;
  readonly tmin_c: number;
  /** °C days above the setting's base. */
  readonly heat: number;
}

export interface TrueSeason extends SeasonEffects {
  readonly slug: string;
  readonly closes_on: string;
  readonly closed_by: 'frost' | 'season-end';
  /** By variety id: variety, season and the two together, in an average block and mound. */
  readonly varieties: Readonly<Record<string, Traits>>;
  readonly mounds: readonly TrueMound[];
  /** Days on which anything was picked, in order. */
  readonly picking_days: readonly TruePickingDay[];
  readonly storms: readonly TrueStorm[];
  /** Every fruit set, mound by mound. */
  readonly fruits: readonly TrueFruit[];
}

export interface TruePickingDay {
  readonly date: string;
  /** Added to the sugar of every fruit picked on it. */
  readonly effect_brix: number;
  /** Rain of the three days that end on its eve. */
  readonly rain_window_mm: number;
}

export interface TrueStorm {
  readonly first_on: string;
  readonly last_on: string;
  readonly rain_mm: number;
  /** In logits, on all fruits near ripe. */
  readonly effect: number;
  /** Fruits on the vine and near ripe when it came, and those of them it split. */
  readonly at_risk: readonly string[];
  readonly split: readonly string[];
}

export interface TrueFruit {
  readonly id: string;
  readonly planting: string;
  readonly variety: string;
  readonly plant: number;
  readonly set_on: string;
  /** Sugar it would have at prime on an average day without rain; full mass; heat to just ripe: its levels all added. */
  readonly traits: Traits;
  readonly heats: Stages<number>;
  /** First day in each state; null where the year ended before. A fruit gone by then would have turned then. */
  readonly turned_on: Stages<string | null>;
  /** How far its signs run ahead of its ripeness. */
  readonly latents: Latents;
  readonly fate: 'picked' | 'thinned' | 'aborted' | 'lost' | 'left';
  readonly lost_to: 'animal' | 'theft' | 'rot' | 'split' | 'frost' | null;
  /** What befell it before anybody came, and when. */
  readonly befell: { readonly what: string; readonly on: string } | null;
  /** The day the keeper picked it, or met that it was gone or let it be. */
  readonly ended_on: string;
  /** Null for a fruit not picked. */
  readonly pick: TruePick | null;
}

export interface TruePick {
  readonly picked_on: string;
  readonly reason: Reason;
  readonly by_lot: boolean;
  readonly condition: Condition;
  readonly heat: number;
  readonly state: State;
  readonly kg: number;
  /** Without the meter's error: ripeness, day and dilution below added to the sugar at prime, but at least 1. */
  readonly brix: number;
  readonly ripeness_brix: number;
  readonly day_effect_brix: number;
  readonly rain_window_mm: number;
  readonly dilution_brix: number;
}
