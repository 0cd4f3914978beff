import type { Facts } from '../../src/book/chapter.ts';
import { type SeedRow, seedRow } from '../../src/book/seed-row.ts';
import type { Figure } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { thresholdsOf } from '../../src/garden/weather-settings.ts';
import type { CropPickOrWait } from '../../src/ledger/pick-or-wait/crop-pick-or-wait.ts';
import { FEWEST_LOOKS, LOOK_DAYS } from '../../src/ledger/pick-or-wait/lost-share.ts';
import { SPLITS_WITHIN_DAYS } from '../../src/ledger/storm/hanging.ts';
import { LOSS_KEYS, type LossKey } from '../../src/records/losses.ts';
import { RAIN_WORDS, type RainWord } from '../../src/statistics/pick-or-wait/card.ts';
import type { Answer, PickOrWait } from '../../src/statistics/pick-or-wait/decision.ts';
import type { LossWord } from '../../src/statistics/pick-or-wait/loss.ts';
import { FEWEST_STORMS, type SplitDirection } from '../../src/statistics/storms.ts';

export interface CardCell {
  readonly rain: RainWord;
  readonly answer: Answer;
}

export interface PickOrWaitModel {
  readonly names: { readonly one: string; readonly many: string };
  /** Folder of the card's page below the site. */
  readonly card_path: string;
  readonly rows: readonly { readonly of_ten: number; readonly seeds: SeedRow; readonly cells: readonly CardCell[] }[];
  readonly rains: readonly RainWord[];
  /** What the card says of fruit before heavy rain: the row from which it says pick; null where no row does. */
  readonly pick_from: number | null;
  /** The row from which either will do; null where none. */
  readonly either_from: number | null;
  readonly ticked: CropPickOrWait['ticked'];
  readonly losses: readonly { readonly key: LossKey; readonly word: LossWord; readonly own: boolean }[];
  /** Whose losses: all named, some, or none. */
  readonly whose: 'ours' | 'partly' | 'usual';
  /** Losses that one word more or less would turn an answer by. */
  readonly hinges_on: readonly LossKey[];
  readonly storms: number;
  readonly hanging: number;
  readonly split: number;
  readonly split_of_ten: Figure;
  readonly from_storms: boolean;
  readonly fewest_storms: number;
  readonly direction: SplitDirection;
  readonly dryness: 'roots' | 'days';
  readonly thinned_of_ten: Figure;
  readonly from_slope: boolean;
  readonly lost_of_ten: Figure;
  /** Fruits gone or over, of those left past ripe. */
  readonly lost: number;
  readonly from_looks: boolean;
  readonly fewest_looks: typeof FEWEST_LOOKS;
  readonly look_days: number;
  readonly splits_within_days: number;
  readonly soaking_mm: number;
}

const RAINS = Object.keys(RAIN_WORDS) as RainWord[];

export function pickOrWaitModel({ garden: { about } }: Facts, found: CropPickOrWait): PickOrWaitModel {
  const { crop, rows, storms, own_losses } = found;
  const cells = rows.flatMap((row) => Object.values(row.cells));
  const fromRow = (answer: Answer): number | null =>
    rows.find((row) => row.cells.likely.answer === answer)?.ripe_of_ten ?? null;
  return {
    names: cropNames(crop, about.locale),
    card_path: `ripe/card-rain/${crop.id.toLowerCase()}/`,
    rows: rows.map((row) => ({
      of_ten: row.ripe_of_ten,
      seeds: seedRow(row.ripe_of_ten),
      cells: RAINS.map((rain) => ({ rain, answer: row.cells[rain].answer })),
    })),
    rains: RAINS,
    pick_from: fromRow('pick'),
    either_from: fromRow('either'),
    ticked: found.ticked,
    losses: LOSS_KEYS.map((key) => ({ key, word: found.losses[key], own: own_losses.includes(key) })),
    whose: own_losses.length === LOSS_KEYS.length ? 'ours' : own_losses.length > 0 ? 'partly' : 'usual',
    hinges_on: LOSS_KEYS.filter((key) => cells.some((cell: PickOrWait) => cell.hinges_on.includes(key))),
    storms: storms.storms.length,
    hanging: storms.chance.exposed,
    split: storms.storms.reduce((sum, { split }) => sum + split, 0),
    split_of_ten: storms.split,
    from_storms: storms.chance.from === 'storms',
    fewest_storms: FEWEST_STORMS,
    direction: storms.direction,
    dryness: storms.dryness,
    thinned_of_ten: found.dilution_of_ten,
    from_slope: found.dilution.from === 'slope',
    lost_of_ten: found.lost_of_ten,
    lost: found.lost.lost,
    from_looks: found.lost.from === 'looks',
    fewest_looks: FEWEST_LOOKS,
    look_days: LOOK_DAYS,
    splits_within_days: SPLITS_WITHIN_DAYS,
    soaking_mm: thresholdsOf(about).soaking_day_mm,
  };
}

/** Told from the garden's own storms first, then by name. */
export const saysMoreOfRain = (a: PickOrWaitModel, b: PickOrWaitModel): number => b.hanging - a.hanging;
