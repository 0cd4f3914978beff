import type { Day } from '../../day.ts';
import type { Garden, Station } from '../../garden/garden.ts';
import { type SignTest, signTest } from '../../statistics/sign-test.ts';
import { eveWindowsOf, type Window } from '../weather/window.ts';
import { WET_WINDOW_MM } from './evidence.ts';

/** Fruits held on the tongue against the last of their kind, where rain fell before one of the two and not the other. */
export interface RainPairs {
  /** Pairs of picking days in which the fruit after rain was the less sweet, the sweeter, or the same. */
  readonly less: number;
  readonly sweeter: number;
  readonly same: number;
  readonly fruits: number;
  /** Null when no pair differs. */
  readonly test: SignTest | null;
}

interface Tasted {
  readonly variety: string;
  readonly day: Day;
  readonly than_last: 'sweeter' | 'same' | 'less' | null;
}

/** Day pairs of one crop: several fruits of the same two days are one pair, by their balance. */
export function rainPairs(garden: Garden, station: Station, crop: string, rainDays: number): RainPairs {
  const before = eveWindowsOf(station);
  const signs = new Map<string, number>();
  let fruits = 0;
  for (const season of garden.seasons) {
    const tasted = season.plantings
      .filter(({ variety }) => variety?.crop.id === crop)
      .flatMap(({ variety, fruits: register }) =>
        register.flatMap(({ pick, cut }): Tasted[] =>
          pick?.picked_on.kind === 'day' && cut && cut.state !== 'unripe'
            ? [{ variety: variety?.id ?? '', day: pick.picked_on.first, than_last: cut.than_last }]
            : [],
        ),
      );
    for (const one of tasted) {
      const last = lastBefore(tasted, one);
      if (one.than_last === null || last === null) continue;
      const [now, then] = [wetBefore(before(one.day, rainDays)), wetBefore(before(last, rainDays))];
      if (now === null || then === null || now === then) continue;
      fruits += 1;
      const sweeter = one.than_last === 'same' ? 0 : (one.than_last === 'sweeter') === now ? 1 : -1;
      const pair = `${last} ${one.day}`;
      signs.set(pair, (signs.get(pair) ?? 0) + sweeter);
    }
  }
  const balance = [...signs.values()];
  const count = (is: (sign: number) => boolean): number => balance.filter(is).length;
  const told = {
    less: count((sign) => sign < 0),
    sweeter: count((sign) => sign > 0),
    same: count((sign) => sign === 0),
  };
  const test = signTest({ above: told.less, below: told.sweeter, tied: told.same });
  return { ...told, fruits, test: 'cannot' in test ? null : test };
}

/** The last earlier day a fruit of the same variety was tasted. */
const lastBefore = (tasted: readonly Tasted[], { variety, day }: Tasted): Day | null =>
  tasted
    .filter((one) => one.variety === variety && one.day < day)
    .reduce<Day | null>((last, one) => (last === null || one.day > last ? one.day : last), null);

/** By the gauge, else by the words; null when a day of the window was not looked at. */
function wetBefore({ days }: Window): boolean | null {
  if (days.every((one) => one !== null && one.rain_mm !== null))
    return days.reduce((sum, one) => sum + (one?.rain_mm ?? 0), 0) >= WET_WINDOW_MM;
  if (days.some((one) => one === null || (one.rain_mm === null && one.rain === null))) return null;
  return days.some((one) => one !== null && (one.rain === 'soaking' || (one.rain_mm ?? 0) >= WET_WINDOW_MM));
}
