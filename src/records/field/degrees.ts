import { amount } from './amount.ts';

/** Degrees of latitude or longitude, south and west negative. */
export const degrees = (title: string, most: number) =>
  amount({ min: -most, max: most, about: false }).meta({
    title,
    description: 'Decimal degrees, published to a tenth; south and west are negative.',
  });
