/** All the orders, or a fair draw of one, in which things could have come. */

/** How many orders n things have: n!, Infinity from 171 on. */
export function ordersOf(n: number): number {
  let orders = 1;
  for (let k = 2; k <= n; k++) orders *= k;
  return orders;
}

/** Every order of the items, the given one first, equal items told apart. Heap 1963, Computer Journal 6:293-298. */
export function* everyOrder<T>(items: readonly T[]): Generator<readonly T[]> {
  const order = [...items];
  const turns = items.map(() => 0);
  yield [...order];
  for (let at = 1; at < order.length; ) {
    const turn = turns[at] ?? 0;
    if (turn < at) {
      swap(order, at % 2 === 0 ? 0 : turn, at);
      yield [...order];
      turns[at] = turn + 1;
      at = 1;
    } else {
      turns[at] = 0;
      at += 1;
    }
  }
}

/** One order, each equally likely. `random` gives numbers from 0 to below 1. Fisher & Yates 1938, as Durstenfeld 1964. */
export function drawOrder<T>(items: readonly T[], random: () => number): T[] {
  const order = [...items];
  for (let at = order.length - 1; at > 0; at--) swap(order, Math.floor(random() * (at + 1)), at);
  return order;
}

/** Every choice of `size` of the numbers 0 to n - 1, each in rising order, the choices in order of their numbers. */
export function* everyChoice(n: number, size: number): Generator<readonly number[]> {
  const chosen = Array.from({ length: size }, (_, index) => index);
  while (size <= n) {
    yield [...chosen];
    const at = chosen.findLastIndex((one, index) => one < n - size + index);
    if (at < 0) return;
    const next = (chosen[at] ?? 0) + 1;
    for (let index = at; index < size; index++) chosen[index] = next + index - at;
  }
}

function swap<T>(items: T[], one: number, other: number): void {
  const [a, b] = [items[one], items[other]];
  if (a === undefined || b === undefined) return;
  items[one] = b;
  items[other] = a;
}
