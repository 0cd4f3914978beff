import type { Fruit, Season } from '../../garden/garden.ts';

/** Parts of the records that tell of fruits and looks, and how many of them say when they were written down. */
export interface Dating {
  readonly parts: number;
  readonly recorded: number;
}

export function datingOf(seasons: readonly Season[]): Dating {
  const parts = [
    ...seasons.flatMap(({ visits }) => visits),
    ...fruitsOf(seasons).flatMap(({ set, pick, end, cut }) => [set, pick, end, cut].filter((part) => part !== null)),
  ];
  return { parts: parts.length, recorded: parts.filter(({ recorded_on }) => recorded_on !== null).length };
}

const fruitsOf = (seasons: readonly Season[]): Fruit[] =>
  seasons.flatMap(({ plantings }) => plantings.flatMap(({ fruits }) => fruits));
