import type { Chance } from '../chance.ts';
import { normal } from '../normal.ts';
import type { State } from './ripening.ts';

/** What a taster finds in a fruit of a sweetness (°Brix) and a state. Words with null were not to be had. */
export interface Tasted {
  readonly sweet: string;
  readonly crisp: string;
  readonly juicy: string;
  readonly liked: string;
  readonly than_last: string | null;
}

/** A taster's error on the scale of sugar, °Brix, and on that of texture and liking. */
const TONGUE_SD_BRIX = 0.5;
const MOUTH_SD = 0.5;
/** A difference in sugar this large is told. */
const TOLD_BRIX = 0.6;

const SWEET = { words: ['flat', 'faint', 'sweet', 'very-sweet'], turns: [7.5, 9, 11] };
const CRISP = { words: ['mushy', 'soft', 'firm', 'crisp'], turns: [0, 1, 2] };
const JUICY = { words: ['dry', 'moist', 'juicy', 'running'], turns: [0, 1, 2] };
const LIKED = { words: ['no', 'so-so', 'yes', 'very'], turns: [-1, 0, 1] };

const CRISPNESS: Readonly<Record<State, number>> = { unripe: 2.3, 'just-ripe': 2, prime: 1.5, over: 0.2 };
const JUICINESS: Readonly<Record<State, number>> = { unripe: 0.3, 'just-ripe': 1, prime: 1.8, over: 1 };
const LIKING: Readonly<Record<State, number>> = { unripe: -1.5, 'just-ripe': 0, prime: 0.3, over: -1 };
/** A liking of 0 for a fruit at prime wants about this much sugar, and another step of it for each °Brix and a half. */
const LIKED_BRIX = 10;
const STEP_BRIX = 1.5;

/** `last` is the sweetness of the last fruit of the kind as tasted; null for the first. */
export function tasted(
  brix: number,
  state: State,
  last: number | null,
  chance: Chance,
): Tasted & { on_tongue: number } {
  const on_tongue = brix + TONGUE_SD_BRIX * normal(chance);
  const mouth = () => MOUTH_SD * normal(chance);
  return {
    on_tongue,
    sweet: word(SWEET, on_tongue),
    crisp: word(CRISP, CRISPNESS[state] + mouth()),
    juicy: word(JUICY, JUICINESS[state] + mouth()),
    liked: word(LIKED, (on_tongue - LIKED_BRIX) / STEP_BRIX + LIKING[state] + mouth()),
    than_last: last === null ? null : compared(on_tongue - last),
  };
}

function compared(difference: number): string {
  if (difference > TOLD_BRIX) return 'sweeter';
  return difference < -TOLD_BRIX ? 'less' : 'same';
}

const word = ({ words, turns }: { words: readonly string[]; turns: readonly number[] }, value: number): string =>
  words[turns.filter((turn) => value >= turn).length] ?? '';
