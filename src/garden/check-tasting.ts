import type { RecordOf } from '../reading/garden-records.ts';
import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';

type Tasting = Entry<RecordOf<'tastings'>>;

const PAIR_KEYS = ['fruit', 'against', 'sweeter', 'better'] as const;
const ORDER_KEYS = ['best_first', 'sweetest_first'] as const;

/** More than six, and a tongue has forgotten the first. */
const MOST_IN_ORDER = 6;

/** A tasting is a whole pair of two fruits or an order of two to six, and not both. */
export function checkTasting(entry: Tasting): Problem[] {
  const [pairKey] = PAIR_KEYS.filter((key) => entry.record[key] !== null);
  const [orderKey] = ORDER_KEYS.filter((key) => entry.record[key] !== null);
  if (pairKey && orderKey) {
    const complaint = {
      code: 'pair-and-order',
      message: `a pair (${pairKey}) and an order (${orderKey}) stand in one entry`,
      hint: 'give the order an entry of its own, with its own "- "',
      part: 'key' as const,
    };
    return [problemIn(entry, [orderKey], complaint)];
  }
  return orderKey ? ORDER_KEYS.flatMap((key) => orderProblems(entry, key)) : pairProblems(entry);
}

function pairProblems(entry: Tasting): Problem[] {
  const { fruit, against } = entry.record;
  if (fruit === null && against === null) {
    const complaint = {
      code: 'nothing-tasted',
      message: 'no fruit is named',
      hint: 'write fruit and against for a pair, or best_first: [F1, F2, F3] for a few put in order',
    };
    return [problemIn(entry, ['tasted_on'], complaint)];
  }
  if (fruit === null || against === null) {
    const [there, missing] = fruit === null ? ['against', 'fruit'] : ['fruit', 'against'];
    const complaint = {
      code: 'half-a-pair',
      message: `one fruit alone cannot be compared: "${missing}" is missing`,
      hint: `add ${missing}: and the other fruit; how one fruit tasted by itself belongs to its cut in fruits.yaml`,
    };
    return [problemIn(entry, [there], complaint)];
  }
  if (fruit !== against) return [];
  const complaint = {
    code: 'same-fruit',
    message: `fruit ${fruit} is tasted against itself`,
    hint: 'name the other fruit of the pair',
  };
  return [problemIn(entry, ['against'], complaint)];
}

function orderProblems(entry: Tasting, key: (typeof ORDER_KEYS)[number]): Problem[] {
  const order = entry.record[key];
  if (order === null) return [];
  if (order.length < 2) {
    const complaint = {
      code: 'order-too-short',
      message: order.length === 0 ? 'the order is empty' : 'one fruit is no order',
      hint: 'name two to six fruits, the first one first: [F1, F2, F3]',
    };
    return [problemIn(entry, [key], complaint)];
  }
  const tooMany = {
    code: 'order-too-long',
    message: `${order.length} fruits are more than one person can put in order`,
    hint: `at most ${MOST_IN_ORDER} in one order; split them into two tastings`,
  };
  return [
    ...(order.length > MOST_IN_ORDER ? [problemIn(entry, [key, MOST_IN_ORDER], tooMany)] : []),
    ...order.flatMap((fruit, place) => {
      const first = order.indexOf(fruit);
      if (first === place) return [];
      const complaint = {
        code: 'fruit-twice',
        message: `fruit ${fruit} stands at place ${first + 1} and at place ${place + 1}`,
        hint: 'each fruit has one place; leave out the wrong one, and tell alike fruits apart by a pair with "same"',
      };
      return [problemIn(entry, [key, place], complaint)];
    }),
  ];
}
