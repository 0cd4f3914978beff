import type { Design } from '../design.ts';
import type { Bearing } from './bearing.ts';
import type { Climate } from './climate.ts';
import type { Keeping } from './keeper.ts';
import type { Levels } from './levels.ts';
import type { Losses } from './misfortune.ts';
import type { Ripening } from './ripening.ts';
import type { SignRule } from './signs.ts';
import type { Slips } from './slips.ts';
import type { StormRule } from './storm.ts';
import type { Sugar } from './sugar.ts';

/** A kind of garden: everything that is fixed before a seed draws one of it. */
export interface SeasonSetting {
  readonly name: string;
  /** Whether the usual models suppose what is so here: normal effects, even spreads, picking that knows no rain. */
  readonly model: 'right' | 'broken';
  readonly seasons: readonly { readonly year: number; readonly design: Design }[];
  /** Years of weather kept before the first season. */
  readonly earlier_years: number;
  readonly climate: Climate;
  /** When the gauge is read: a row of the morning tells of the day before, but for the lowest temperature. */
  readonly read: 'evening' | 'morning';
  readonly levels: Levels;
  readonly bearing: Bearing;
  readonly ripening: Ripening;
  readonly sugar: Sugar;
  readonly storm: StormRule;
  readonly losses: Losses;
  readonly signs: SignRule;
  readonly keeping: Keeping;
  readonly slips: Slips;
  /** Whether the keeper counts baskets beside the register of fruits. */
  readonly baskets: boolean;
}
