/** Parts of a score made by hand, so that chances are counts. */
import type { ScorePart } from '../../../src/ledger/trial/score.ts';
import type { LevelDraws } from '../../../src/statistics/posterior/level-draws.ts';

/** As many draws as twentieths. */
export const DRAWS = 20;

export const drawn = (level: string, at: (draw: number) => number): LevelDraws => ({
  level,
  draws: Float64Array.from({ length: DRAWS }, (_, draw) => at(draw)),
});

/** Above 0 in so many of the 20 draws, below in the others. */
export const aboveIn = (level: string, count: number, by = 1): LevelDraws =>
  drawn(level, (draw) => (draw < count ? by : -by));

/** A part that tells of all its levels, each grown in the seasons given. */
export function partOf(
  key: ScorePart['key'],
  worth: readonly LevelDraws[],
  {
    seasons = ['2023', '2024', '2025'],
    ...more
  }: { seasons?: readonly string[] } & Partial<Omit<ScorePart, 'seasons'>> = {},
): ScorePart {
  return {
    key,
    trait: 'brix',
    worth,
    told: worth.map(({ level }) => level),
    seasons: new Map(worth.map(({ level }) => [level, seasons])),
    ...more,
  };
}
