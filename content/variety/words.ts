import type { Fruit } from '../../src/garden/garden.ts';
import type { VarietySeason } from '../../src/ledger/variety-season.ts';

/** How many fruits of a season were given a word, word by word, the fullest word first. */
export interface WordCounts {
  readonly label: string;
  readonly sweet: readonly WordCount[];
  readonly liked: readonly WordCount[];
  readonly size: readonly WordCount[];
}

interface WordCount {
  readonly word: string;
  readonly count: number;
}

const LADDERS = {
  sweet: ['very-sweet', 'sweet', 'faint', 'flat'],
  liked: ['very', 'yes', 'so-so', 'no'],
  size: ['big', 'middling', 'small'],
} as const;

/** Seasons in which a fruit was tasted or sized in words, in the order given. Unripe cuts say nothing of a variety's taste. */
export function wordsOf(seasons: readonly VarietySeason[]): WordCounts[] {
  return seasons
    .map(({ label, plantings }) => {
      const fruits = plantings.flatMap((planting) => planting.fruits);
      const tasted = fruits.filter(({ cut }) => cut !== null && cut.state !== 'unripe');
      return {
        label,
        sweet: countsOf(tasted, LADDERS.sweet, ({ cut }) => cut?.sweet ?? null),
        liked: countsOf(tasted, LADDERS.liked, ({ cut }) => cut?.liked ?? null),
        size: countsOf(fruits, LADDERS.size, ({ pick }) => pick?.size ?? null),
      };
    })
    .filter(({ sweet, liked, size }) => sweet.length + liked.length + size.length > 0);
}

const countsOf = (
  fruits: readonly Fruit[],
  ladder: readonly string[],
  word: (fruit: Fruit) => string | null,
): WordCount[] =>
  ladder
    .map((one) => ({ word: one, count: fruits.filter((fruit) => word(fruit) === one).length }))
    .filter(({ count }) => count > 0);
