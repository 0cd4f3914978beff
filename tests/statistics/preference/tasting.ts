/** Tastings drawn from known worths, and short ways to write some down. */
import { type Order, type Pair, placed, type Tastings } from '../../../src/statistics/preference/ballot.ts';
import { posteriorMode, type Spreads } from '../../../src/statistics/preference/posterior-mode.ts';
import { type Priors, type Worth, type Worths, worths } from '../../../src/statistics/preference/worths.ts';

export const LEVEL = 0.9;

/** So wide that the peak is that of the likelihood to six digits, the fruit being the variety itself. */
export const NO_PULL: Spreads = { variety: 1000, fruit: 0, ties: null };

/** Log-worths at the posterior's peak above the reference's, and how sure they are. */
export function peakOf(tastings: Tastings, spreads: Spreads) {
  const ballots = placed(tastings);
  const mode = posteriorMode(ballots, spreads);
  const { varieties } = ballots;
  return {
    log_ties: mode.log_ties ?? Number.NaN,
    log_evidence: mode.log_evidence,
    worth: (variety: string): number => mode.worths[varieties.indexOf(variety)] ?? Number.NaN,
    above: (reference: string, variety: string) => {
      const weights: number[] = varieties.map((one) => (one === variety ? 1 : one === reference ? -1 : 0));
      return {
        estimate: weights.reduce((sum, weight, place) => sum + weight * (mode.worths[place] ?? 0), 0),
        se: Math.sqrt(mode.variance(weights)),
      };
    },
  };
}

/** The worths; fails the test when they were refused. */
export function found(tastings: Tastings, priors: Priors): Worths {
  const fit = worths(tastings, priors, LEVEL);
  if ('cannot' in fit) throw new Error(`refused: ${JSON.stringify(fit.cannot)}`);
  return fit;
}

/** The worth of each variety, or NaN where there is none. */
export const estimates = (fit: Worths): Record<string, number> =>
  Object.fromEntries(
    fit.varieties.map(({ variety, worth }) => [variety, 'cannot' in worth ? Number.NaN : worth.estimate]),
  );

/** The worth of a variety; fails the test when there is none. */
export function worthOf(fit: Worths, variety: string): Worth {
  const worth = fit.varieties.find((one) => one.variety === variety)?.worth;
  if (!worth || 'cannot' in worth) throw new Error(`no worth of ${variety}`);
  return worth;
}

/** The difference; fails the test when it was refused. */
export function differenceOf(fit: Worths, a: string, b: string) {
  const difference = fit.difference(a, b);
  if ('cannot' in difference) throw new Error(`refused: ${difference.cannot.code}`);
  return difference;
}

/** Every fruit named by a ballot as the only one of a variety of its own name. */
export function fruitsAlone(pairs: readonly Pair[], orders: readonly Order[]): Tastings {
  const named = [...pairs.flatMap(({ first, second }) => [first, second]), ...orders.flatMap((one) => one.best_first)];
  return { fruits: new Map(named.map((fruit) => [fruit, fruit])), pairs, orders };
}

/** Fruits `a1`, `a2` … of variety `a`. */
export const byLetter = (fruits: readonly string[]): Map<string, string> =>
  new Map(fruits.map((fruit) => [fruit, fruit.slice(0, 1)]));

export const times = <T>(count: number, one: T): T[] => new Array<T>(count).fill(one);

/** "a > b", "a = b". */
export function pair(text: string): Pair {
  const [first = '', sign, second = ''] = text.split(' ');
  return { first, second, said: sign === '=' ? 'same' : 'first' };
}

/** "a b c": a best. */
export const order = (text: string): Order => ({ best_first: text.split(' ') });

/** How a trial of tastings is drawn. Worths are on the scale of log odds. */
export interface TrialPlan {
  readonly varieties: number;
  readonly fruits_each: number;
  readonly pairs: number;
  /** Of three fruits. */
  readonly orders: number;
  readonly tasters: number;
  readonly variety_sd: number;
  readonly fruit_sd: number;
  readonly ties: number;
}

export interface Trial {
  readonly tastings: Tastings;
  readonly worths: Readonly<Record<string, number>>;
}

/**
 * Fruits of known worth, and the ballots on them: each pair or three is drawn at random and put before every taster.
 * `normal` gives standard normal numbers, `random` numbers from 0 to below 1.
 */
export function drawTrial(plan: TrialPlan, normal: () => number, random: () => number): Trial {
  const varieties = [...'abcdefgh'].slice(0, plan.varieties);
  const worths = Object.fromEntries(varieties.map((variety) => [variety, plan.variety_sd * normal()]));
  const fruits = varieties.flatMap((variety) =>
    Array.from({ length: plan.fruits_each }, (_, k) => ({
      id: `${variety}${k + 1}`,
      worth: (worths[variety] ?? 0) + plan.fruit_sd * normal(),
    })),
  );
  type Fruit = (typeof fruits)[number];
  const few = (count: number): Fruit[] => {
    const left = [...fruits];
    return Array.from({ length: count }, () => left.splice(Math.floor(random() * left.length), 1)).flat();
  };
  const choose = <T>(odds: readonly (readonly [T, number])[]): T => {
    let rest = random() * odds.reduce((sum, [, one]) => sum + one, 0);
    const chosen = odds.find(([, one]) => {
      rest -= one;
      return rest < 0;
    });
    return (chosen ?? (odds[0] as readonly [T, number]))[0];
  };
  const repeated = <T>(count: number, size: number, taste: (set: Fruit[]) => T): T[] =>
    Array.from({ length: count }, () => few(size)).flatMap((set) =>
      Array.from({ length: plan.tasters }, () => taste(set)),
    );
  return {
    worths,
    tastings: {
      fruits: byLetter(fruits.map(({ id }) => id)),
      pairs: repeated(plan.pairs, 2, (set) => {
        const [one, other] = set as [Fruit, Fruit];
        const said = choose<Pair['said']>([
          ['first', Math.exp(one.worth)],
          ['second', Math.exp(other.worth)],
          ['same', plan.ties * Math.exp((one.worth + other.worth) / 2)],
        ]);
        return { first: one.id, second: other.id, said };
      }),
      orders: repeated(plan.orders, 3, (set) => {
        const left = [...set];
        const bestFirst = set.map(() => {
          const best = choose(left.map((fruit) => [fruit, Math.exp(fruit.worth)] as const));
          left.splice(left.indexOf(best), 1);
          return best.id;
        });
        return { best_first: bestFirst };
      }),
    },
  };
}
