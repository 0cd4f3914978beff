/**
 * How the posterior differs from the normal curve at its peak: it falls off less steeply on the side of the variety that
 * won. With T and F the third and fourth derivatives of the log density and Σ the inverse of its curvature, to the next
 * order beyond Laplace's (Tierney & Kadane 1986, Journal of the American Statistical Association 81:82-86; Shun &
 * McCullagh 1995, Journal of the Royal Statistical Society B 57:749-760; both from memory), for c = Σ cᵢuᵢ and d = Σc:
 *   mean beyond the peak   ½ Tᵢⱼₖ dᵢ Σⱼₖ
 *   variance beyond cᵗΣc   ½ Fᵢⱼₖₗ dᵢdⱼ Σₖₗ + ½ Tᵢⱼₖ dᵢdⱼ Σₖₗ Tₗₘₙ Σₘₙ + ½ Tᵢⱼₖ Tₗₘₙ dᵢ dₗ Σⱼₘ Σₖₙ
 *   third cumulant         Tᵢⱼₖ dᵢdⱼdₖ
 *   log of the evidence    ⅛ Fᵢⱼₖₗ ΣᵢⱼΣₖₗ + ⅛ Tᵢⱼₖ Σⱼₖ Σᵢₗ Tₗₘₙ Σₘₙ + 1/12 Tᵢⱼₖ Tₗₘₙ ΣᵢₗΣⱼₘΣₖₙ
 * A ballot's T and F are the third and fourth cumulants of what it could have said, turned negative.
 */
import type { Vector } from '../linear/cholesky.ts';
import type { Ballots } from './ballot.ts';

/** One of the things that could have been said: its chance, and what its log odds are made of. */
interface Alternative {
  readonly chance: number;
  /** Places of fruits, and last that of the ties. */
  readonly made_of: readonly { readonly place: number; readonly per: number }[];
}

/** All that could have been said of the same few fruits, and how often it was asked. */
export interface Choice {
  readonly asked: number;
  readonly alternatives: readonly Alternative[];
}

/** An order is a choice for each place but the last. What was chosen is of no matter here. */
export function choicesOf({ fruits, pairs, orders }: Ballots, worths: Vector, logTies: number): Choice[] {
  const ties = fruits.length;
  const worthOf = (place: number): number => (place === ties ? logTies : (worths[place] as number));
  const one = (place: number) => [{ place, per: 1 }];
  const same = (first: number, second: number) => [
    { place: first, per: 0.5 },
    { place: second, per: 0.5 },
    { place: ties, per: 1 },
  ];
  const among = new Map<string, { asked: number; alternatives: Alternative['made_of'][] }>();
  const ask = (key: string, alternatives: Alternative['made_of'][]): void => {
    const before = among.get(key);
    if (before) before.asked += 1;
    else among.set(key, { asked: 1, alternatives });
  };
  for (const { first, second } of pairs) {
    const either = [one(first), one(second)];
    const all = logTies === Number.NEGATIVE_INFINITY ? either : [...either, same(first, second)];
    ask(`pair ${first} ${second}`, all);
  }
  for (const order of orders) {
    for (let stage = 0; stage + 1 < order.length; stage++) {
      const left = order.slice(stage).sort((a, b) => a - b);
      ask(`order ${left.join(' ')}`, left.map(one));
    }
  }
  return [...among.values()].map(({ asked, alternatives }) => {
    const logs = alternatives.map((parts) => parts.reduce((sum, { place, per }) => sum + per * worthOf(place), 0));
    const largest = Math.max(...logs);
    const odds = logs.map((log) => Math.exp(log - largest));
    const whole = odds.reduce((sum, each) => sum + each, 0);
    return { asked, alternatives: alternatives.map((made_of, k) => ({ chance: (odds[k] ?? 0) / whole, made_of })) };
  });
}

export interface Lean {
  /** ½ T:Σ by place. */
  readonly pull: Vector;
  /** What the log of the evidence is more than Laplace's. */
  readonly log_evidence: number;
  /** For d = Σc by place: what the variance of c is more than cᵗΣc, and the third cumulant. */
  readonly along: (direction: Vector) => { readonly variance: number; readonly third_cumulant: number };
}

/** An alternative less the average of its choice. */
interface Centred {
  readonly choice: number;
  readonly chance: number;
  /** Chance times how often it was asked. */
  readonly weight: number;
  readonly places: readonly number[];
  readonly per: readonly number[];
}

/** `covariance` is that of the fruits' log-worths and last log ν. */
export function leanOf(choices: readonly Choice[], covariance: readonly Vector[]): Lean {
  const all = choices.flatMap(centred);
  const size = all.length;
  const products = productsOf(all, covariance);
  const own = new Float64Array(size);
  for (let k = 0; k < size; k++) own[k] = at(products[k] as Vector, k);
  const average = new Float64Array(choices.length);
  for (const [k, { choice, chance }] of all.entries()) average[choice] = at(average, choice) + chance * at(own, k);

  const pull = new Float64Array(covariance.length);
  for (const [k, { weight, places, per }] of all.entries())
    for (const [index, place] of places.entries())
      pull[place] = at(pull, place) - (weight * (per[index] ?? 0) * at(own, k)) / 2;
  const shift = covariance.map((row) => row.reduce((sum, value, place) => sum + value * at(pull, place), 0));

  let fourth = 0;
  let ladder = 0;
  for (let k = 0; k < size; k++) {
    const { choice, weight } = all[k] as Centred;
    fourth += weight * at(own, k) * (at(own, k) - at(average, choice));
    for (let l = 0; l < size; l++) {
      const other = all[l] as Centred;
      const product = at(products[k] as Vector, l);
      ladder += weight * other.weight * product ** 3;
      if (other.choice === choice) fourth -= 2 * weight * other.chance * product ** 2;
    }
  }
  const twice = pull.reduce((sum, value, place) => sum + value * (shift[place] ?? 0), 0);
  return {
    pull,
    log_evidence: -fourth / 8 + twice / 2 + ladder / 12,
    along: (direction) => {
      const values = valuesAlong(all, direction);
      let variance = 0;
      let third = 0;
      for (let k = 0; k < size; k++) {
        const one = all[k] as Centred;
        const value = at(values, k);
        third -= one.weight * value ** 3;
        variance -= one.weight * value ** 2 * ((at(own, k) - at(average, one.choice)) / 2 + valueAlong(one, shift));
        for (let l = 0; l < size; l++) {
          const other = all[l] as Centred;
          const product = at(products[k] as Vector, l);
          const both = one.weight * value * at(values, l) * product;
          variance += (both * other.weight * product) / 2;
          if (other.choice === one.choice) variance += both * other.chance;
        }
      }
      return { variance, third_cumulant: third };
    },
  };
}

function centred({ asked, alternatives }: Choice, choice: number): Centred[] {
  const places = [...new Set(alternatives.flatMap(({ made_of }) => made_of.map(({ place }) => place)))];
  const perOf = ({ made_of }: Alternative) =>
    places.map((place) => made_of.find((one) => one.place === place)?.per ?? 0);
  const mean = places.map((_, index) =>
    alternatives.reduce((sum, one) => sum + one.chance * (perOf(one)[index] ?? 0), 0),
  );
  return alternatives.map((one) => ({
    choice,
    chance: one.chance,
    weight: asked * one.chance,
    places,
    per: perOf(one).map((per, index) => per - (mean[index] ?? 0)),
  }));
}

/** The covariances of all alternatives' log odds, each less the average of its choice. Loops: most of the time goes here. */
function productsOf(all: readonly Centred[], covariance: readonly Vector[]): Vector[] {
  const spread = all.map((one) => {
    const row = new Float64Array(covariance.length);
    for (const [index, place] of one.places.entries()) {
      const per = one.per[index] as number;
      const from = covariance[place] as Vector;
      for (let other = 0; other < row.length; other++) row[other] = at(row, other) + per * at(from, other);
    }
    return row;
  });
  return spread.map((row) => valuesAlong(all, row));
}

function valuesAlong(all: readonly Centred[], vector: Vector): Vector {
  const values = new Float64Array(all.length);
  for (let k = 0; k < values.length; k++) values[k] = valueAlong(all[k] as Centred, vector);
  return values;
}

function valueAlong({ places, per }: Centred, vector: Vector | readonly number[]): number {
  let sum = 0;
  for (let index = 0; index < places.length; index++)
    sum += (per[index] as number) * (vector[places[index] as number] as number);
  return sum;
}

const at = (vector: Vector, place: number): number => vector[place] as number;
