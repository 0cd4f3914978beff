import { z } from 'zod';
import { refuse } from './refuse.ts';

/** Control characters but tab and line breaks, signs that turn the reading direction, and halves of letters. */
const ODD =
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/;

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
      if (trimmed === '') return refuse(context, 'blank-text', 'the text is blank', 'write it, or delete its key');
      const odd = ODD.exec(trimmed);
      if (odd) {
        const sign = `U+${odd[0].charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`;
        const message = `letter ${odd.index + 1} of the text is ${sign}, which cannot be printed`;
        return refuse(context, 'odd-letter', message, 'type the text again, without it');
      }
      return trimmed;
    })
    .meta({ title });

export const note = text('Note', 2000).optional();
