/** What tasters said of a few fruits, laid out by place so that sums run in one order. */

/** Two fruits side by side, and which of them was better liked. */
export interface Pair {
  /** Ids of fruits. */
  readonly first: string;
  readonly second: string;
  readonly said: 'first' | 'same' | 'second';
}

/** The few fruits that one taster put in order. */
export interface Order {
  /** Ids of fruits, at least two, each once. */
  readonly best_first: readonly string[];
}

export interface Tastings {
  /** The variety of each fruit, by the fruit's id. Fruits that no ballot names are left out. */
  readonly fruits: ReadonlyMap<string, string>;
  readonly pairs: readonly Pair[];
  readonly orders: readonly Order[];
}

export interface PlacedPair {
  /** Places of fruits, the lower first. */
  readonly first: number;
  readonly second: number;
  readonly said: Pair['said'];
}

export interface Ballots {
  /** Of the fruits below; sorted by code unit, as they are. */
  readonly varieties: readonly string[];
  /** Named by a ballot. */
  readonly fruits: readonly string[];
  /** Place of each fruit's variety. */
  readonly variety_of: readonly number[];
  readonly pairs: readonly PlacedPair[];
  /** Places of fruits, best first. */
  readonly orders: readonly (readonly number[])[];
}

/**
 * The same in any order of the ballots and for a pair named either way round. Throws RangeError for a fruit without a
 * variety, a fruit beside itself, or an order of fewer than two.
 */
export function placed({ fruits: varietyById, pairs, orders }: Tastings): Ballots {
  for (const named of [...pairs.map(({ first, second }) => [first, second]), ...orders.map((one) => one.best_first)]) {
    if (named.length < 2) throw new RangeError(`invalid order: ${named.length} fruits`);
    if (new Set(named).size < named.length) throw new RangeError(`invalid ballot: a fruit twice in ${named.join(' ')}`);
  }
  const fruits = sorted([
    ...pairs.flatMap(({ first, second }) => [first, second]),
    ...orders.flatMap((one) => one.best_first),
  ]);
  const varietyNames = fruits.map((fruit) => {
    const variety = varietyById.get(fruit);
    if (variety === undefined) throw new RangeError(`invalid fruit: ${fruit} has no variety`);
    return variety;
  });
  const varieties = sorted(varietyNames);
  const fruitPlace = places(fruits);
  const varietyPlace = places(varieties);
  const at = (fruit: string): number => fruitPlace.get(fruit) ?? 0;
  return {
    varieties,
    fruits,
    variety_of: varietyNames.map((variety) => varietyPlace.get(variety) ?? 0),
    pairs: pairs
      .map(({ first, second, said }) => lowerFirst({ first: at(first), second: at(second), said }))
      .sort((a, b) => a.first - b.first || a.second - b.second || SAID.indexOf(a.said) - SAID.indexOf(b.said)),
    orders: orders.map((one) => one.best_first.map(at)).sort(compare),
  };
}

const SAID = ['first', 'same', 'second'] as const;
const TURNED = { first: 'second', same: 'same', second: 'first' } as const;

const lowerFirst = (pair: PlacedPair): PlacedPair =>
  pair.first < pair.second ? pair : { first: pair.second, second: pair.first, said: TURNED[pair.said] };

function compare(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((one, index) => one !== b[index]);
  return at < 0 ? a.length - b.length : (a[at] ?? 0) - (b[at] ?? -1);
}

const sorted = (names: readonly string[]): string[] => [...new Set(names)].sort();

const places = (names: readonly string[]): Map<string, number> => new Map(names.map((name, place) => [name, place]));
