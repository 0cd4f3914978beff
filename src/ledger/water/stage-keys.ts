import type { Planting, Season } from '../../garden/garden.ts';

/** Keys of what tells the stages of some plantings of a season: themselves, what came off them, and first female flowers. */
export const stageKeys = ({ events }: Season, plantings: readonly Planting[]): string[] => [
  ...plantings.flatMap(({ key, fruits, pickings }) => [key, ...[...fruits, ...pickings].map((one) => one.key)]),
  ...events.flowering.filter(({ what }) => what === 'first-female').map(({ key }) => key),
];

/** The same of every planting of a crop, with what was laid over its ground: what a week ahead is reckoned from. */
export const pastKeys = (seasons: readonly Season[], crop: string): string[] =>
  seasons.flatMap((season) => [
    ...stageKeys(
      season,
      season.plantings.filter(({ variety }) => variety?.crop.id === crop),
    ),
    ...season.events.mulching.map(({ key }) => key),
  ]);
