import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { mersenne } from 'pure-rand/generator/mersenne';

/** Numbers from 0 up to, not including, 1; the same seed gives the same stream. */
export function randomStream(seed: number): () => number {
  const generator = mersenne(seed);
  return () => uniformFloat64(generator);
}
