import { isMap, isScalar, isSeq } from 'yaml';

/** A key that stands twice in its map, in the form of the parser's own faults. */
interface Repeat {
  readonly code: 'DUPLICATE_KEY' | 'FIRST_KEY_TWICE';
  readonly message: string;
  readonly pos: readonly [number, number];
}

/** Every key that stands twice in one map. The parser's own search compares each key with all others. */
export function repeatedKeys(node: unknown): Repeat[] {
  if (isSeq(node)) return node.items.flatMap(repeatedKeys);
  if (!isMap(node)) return [];
  const seen = new Set<string>();
  return node.items.flatMap(({ key, value }, index) => {
    if (!isScalar(key)) return repeatedKeys(value);
    const name = String(key.value);
    const isTwice = seen.has(name);
    seen.add(name);
    if (!isTwice) return repeatedKeys(value);
    const [from = 0, to = from] = key.range ?? [];
    const [first] = seen;
    const code = name === first && index > 0 ? 'FIRST_KEY_TWICE' : 'DUPLICATE_KEY';
    return [{ code, message: 'a key stands twice', pos: [from, to] } as const, ...repeatedKeys(value)];
  });
}
