import { addDays } from '../../day.ts';
import type { Crop, Season } from '../../garden/garden.ts';
import { LOOK_HOLDS_DAYS } from '../ripeness/judged-fruit.ts';

/** Before any cut: as if five calls had been cut open, one of them wrong. A judgement of the makers, no source. */
const BEFORE = { calls: 5, wrong: 1 };
/** A call that is wrong as often as not tells nothing. */
const MOST_WRONG = 0.45;

export interface WrongCalls {
  /** Calls of ripe or not yet in the days a look holds before the fruit was cut, and how many the knife belied. */
  readonly calls: number;
  readonly wrong: number;
  /** Chance of 1 that a call is wrong. */
  readonly chance: number;
}

/** How often the last call of a fruit was wrong, ripe and not yet alike, over all seasons. */
export function wrongCalls(seasons: readonly Season[], crop: Crop): WrongCalls {
  const told = seasons.flatMap(({ plantings, visits }) =>
    plantings
      .filter(({ variety }) => variety?.crop.id === crop.id)
      .flatMap(({ fruits }) =>
        fruits.flatMap(({ id, cut, pick, fate }) => {
          const off = pick?.picked_on ?? cut?.cut_on ?? null;
          if (!cut?.state || !off?.first || fate === 'thinned') return [];
          const [first, from] = [off.first, addDays(off.first, -LOOK_HOLDS_DAYS)];
          const call = visits
            .filter(({ visited_on }) => visited_on <= first && visited_on >= from)
            .flatMap(({ fruits: looks }) => looks.filter((look) => look.fruit === id && look.call !== null))
            .at(-1)?.call;
          if (call !== 'ripe' && call !== 'not-yet') return [];
          return [(call === 'ripe') !== (cut.state !== 'unripe')];
        }),
      ),
  );
  const wrong = told.filter(Boolean).length;
  const chance = (BEFORE.wrong + wrong) / (BEFORE.calls + told.length);
  return { calls: told.length, wrong, chance: Math.min(MOST_WRONG, chance) };
}
