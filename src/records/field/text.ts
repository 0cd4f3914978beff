import { z } from 'zod';
import { refuse } from './refuse.ts';

/** A line of words; blank lines and control characters are not words. */
export const text = (title: string, longest = 200) =>
  z
    .string()
    .transform((value, context): string => {
      const trimmed = value.trim();
      if (trimmed.length > longest) {
        return refuse(
          context,
          'text-too-long',
          `${trimmed.length} letters are more than the ${longest} allowed here`,
          'shorten it',
        );
      }
      return trimmed;
    })
    .meta({ title });

export const note = text('Note', 2000).optional();
