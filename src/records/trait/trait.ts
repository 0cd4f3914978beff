import { z } from 'zod';
import { amount } from '../field/amount.ts';
import { reference } from '../field/id.ts';
import { text } from '../field/text.ts';

/** A number of a trait, exact, in the unit its key ends in. */
export const measure = (title: string, max: number, min = 0) => amount({ min, max, about: false }).meta({ title });

/** The least and the most that sources or keepers give. */
export const span = <const Stem extends string, const Unit extends string>(
  stem: Stem,
  unit: Unit,
  title: string,
  max: number,
) =>
  ({
    [`${stem}_low${unit}`]: measure(`${title}, least`, max),
    [`${stem}_high${unit}`]: measure(`${title}, most`, max),
  }) as Record<`${Stem}_${'low' | 'high'}${Unit}`, ReturnType<typeof measure>>;

/** Words by language. */
export const words = (title: string, longest: number) => z.record(z.string(), text(title, longest)).meta({ title });

/** Where a trait comes from: ids of sources.yaml. */
export const sources = z.array(reference('Source')).meta({ title: 'Sources' });
