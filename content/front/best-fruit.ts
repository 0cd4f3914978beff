import type { Fruit, Planting } from '../../src/garden/garden.ts';

/** The fruit its growers would name, and what it was named for. */
export interface BestFruit {
  readonly planting: Planting;
  readonly fruit: Fruit;
  /** liked: the best liked of those tasted, the sweeter first; sugar: no liking written down; mass: nothing tasted. */
  readonly named_for: 'liked' | 'sugar' | 'mass';
}

const LIKING = ['no', 'so-so', 'yes', 'very'];
const SWEETNESS = ['flat', 'faint', 'sweet', 'very-sweet'];

/**
 * The best picked, whole fruit of some plantings: best liked, then sweetest by the meter, then by the word, then
 * heaviest, then by id. Without any liking the sweetest, without any tasting the heaviest. Null when none of that is known.
 */
export function bestFruitOf(plantings: readonly Planting[]): BestFruit | null {
  const whole = plantings.flatMap((planting) =>
    planting.fruits
      .filter(({ fate, pick }) => fate === 'picked' && (pick?.condition ?? 'whole') === 'whole')
      .map((fruit) => ({ planting, fruit })),
  );
  const named = (named_for: BestFruit['named_for'], first: (fruit: Fruit) => number | null): BestFruit | null => {
    const known = whole.filter(({ fruit }) => first(fruit) !== null);
    const [best] = known.sort((a, b) => inOrder([first, sugarOf, sweetOf, massOf], a.fruit, b.fruit));
    return best ? { ...best, named_for } : null;
  };
  return named('liked', likingOf) ?? named('sugar', sugarOf) ?? named('mass', massOf);
}

const rankIn = (words: readonly string[], word: string | null | undefined): number | null =>
  word === null || word === undefined ? null : words.indexOf(word);

const likingOf = ({ cut }: Fruit): number | null => rankIn(LIKING, cut?.liked);
const sugarOf = ({ cut }: Fruit): number | null => cut?.brix_centre ?? null;
const sweetOf = ({ cut }: Fruit): number | null => rankIn(SWEETNESS, cut?.sweet);
const massOf = ({ pick }: Fruit): number | null => pick?.mass_kg ?? null;

/** The larger first by each measure in turn; what is not known comes after what is. */
function inOrder(measures: readonly ((fruit: Fruit) => number | null)[], a: Fruit, b: Fruit): number {
  for (const measure of measures) {
    const difference = (measure(b) ?? Number.NEGATIVE_INFINITY) - (measure(a) ?? Number.NEGATIVE_INFINITY);
    if (difference !== 0 && !Number.isNaN(difference)) return difference;
  }
  return a.key < b.key ? -1 : 1;
}
