import { amount } from './amount.ts';

interface Heading {
  readonly title: string;
  readonly description?: string;
  readonly max?: number;
  readonly about?: boolean;
}

/** A whole number of things, zero allowed; "about 12" keeps its about. */
export const count = ({ max = 100_000, about = true, ...heading }: Heading) =>
  amount({ min: 0, max, whole: true, about }).meta(heading);
