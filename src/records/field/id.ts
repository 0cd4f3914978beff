import { z } from 'zod';
import { refuse } from './refuse.ts';

const ID = /^[A-Za-z0-9]+(-[A-Za-z0-9]+)*$/;
const LONGEST = 40;
const RESERVED = ['total', 'unknown', 'all'];

const idText = (allowed: readonly string[]) =>
  z.string().transform((text, context): string => {
    if (allowed.includes(text)) return text;
    if (RESERVED.includes(text.toLowerCase())) {
      return refuse(
        context,
        'reserved-id',
        `"${text}" has a meaning of its own and cannot be an id`,
        'choose another id',
      );
    }
    if (text.length > LONGEST) {
      return refuse(context, 'id-form', `an id has at most ${LONGEST} letters`, 'shorten it');
    }
    if (!ID.test(text)) {
      const better = text.replace(/[^A-Za-z0-9]+/g, '-').replace(/^-|-$/g, '');
      const hint = better ? `write ${better}` : 'use letters and digits, parts joined by single hyphens';
      return refuse(
        context,
        'id-form',
        `"${text}" is not an id: letters and digits, parts joined by single hyphens`,
        hint,
      );
    }
    return text;
  });

/** The id of the record itself. */
export const id = (title: string, description?: string) =>
  idText([]).meta({ title, ...(description && { description }) });

/** The id of another record; words like `unknown` may be allowed in its place. */
export const reference = (title: string, words: readonly string[] = []) => idText(words).meta({ title });
