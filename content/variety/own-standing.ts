import type { Facts } from '../../src/book/chapter.ts';
import type { Figure } from '../../src/figure.ts';
import type { Variety } from '../../src/garden/garden.ts';
import type { Standing } from '../../src/ledger/trial/shortlist.ts';
import { type Bet, betsOf } from './bet.ts';
import { mainTraits } from './main-traits.ts';
import { trialPath } from './paths.ts';

/** What is to be expected of one variety, and how it stands to the others. */
export interface OwnStanding {
  /** Null where no wish can be told of any. */
  readonly standing: Standing | null;
  readonly yardstick: string;
  readonly is_yardstick: boolean;
  /** Of the main traits those with an estimate of it. */
  readonly traits: readonly {
    readonly trait: string;
    readonly level: Figure;
    readonly difference: Figure;
    readonly better: Figure;
  }[];
  /** Its own boldest bet, either way round; null when none is bold. */
  readonly bet: Bet | null;
  readonly seasons: number;
  /** The report of all; null in a home book. */
  readonly path: string | null;
}

/** Null where nothing is estimated of it. */
export function ownStanding({ garden, ledger }: Facts, variety: Variety): OwnStanding | null {
  const trial = ledger.trials.find(({ crop }) => crop.id === variety.crop.id);
  if (!trial?.yardstick) return null;
  const traits = mainTraits(trial).flatMap(({ trait, rows }) => {
    const row = rows.find((one) => one.variety.id === variety.id);
    return row && row.level.value !== null
      ? [{ trait: trait.id, level: row.level, difference: row.difference, better: row.better }]
      : [];
  });
  if (traits.length === 0) return null;
  const [bet] = trial.traits
    .flatMap((one) => betsOf(trial, { ...one, rows: one.rows.filter((row) => row.variety.id === variety.id) }))
    .sort((a, b) => b.of_twenty - a.of_twenty);
  return {
    standing: trial.list.find((row) => row.variety.id === variety.id)?.entry.standing ?? null,
    yardstick: trial.yardstick.variety.name,
    is_yardstick: trial.yardstick.variety.id === variety.id,
    traits,
    bet: bet ?? null,
    seasons: trial.seasons.length,
    path: garden.about.edition === 'community' ? trialPath(trial.crop) : null,
  };
}
