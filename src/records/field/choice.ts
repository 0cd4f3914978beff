import { z } from 'zod';
import { refuse } from './refuse.ts';

interface Heading {
  readonly title: string;
  readonly description?: string;
}

/** One word of a short list, with or without its hyphen. The sheets' small code of a word, where it has one, is taken too. */
export function choice<const Words extends readonly string[]>(
  words: Words,
  heading: Heading,
  codes: Readonly<Record<string, Words[number]>> = {},
) {
  return z
    .string()
    .transform((text, context): Words[number] => {
      const typed = text.trim().toLowerCase();
      const hyphened = typed.replace(/\s+/g, '-');
      const word = words.find((known) => known.toLowerCase() === hyphened) ?? codes[typed.toUpperCase()];
      if (word) return word;
      return refuse(
        context,
        'unknown-word',
        `"${text}" is not one of the words for this`,
        `write one of: ${words.join(', ')}`,
      );
    })
    .meta({ ...heading, words: [...words], codes: { ...codes } });
}

/** One word of a ladder whose every step has a small code for the sheets; steps in order. */
export const coded = <Word extends string>({
  codes,
  ...heading
}: Heading & { readonly codes: Readonly<Record<string, Word>> }) =>
  choice<readonly Word[]>(Object.values(codes), heading, codes);

/** yes or no. */
export const yesNo = (heading: Heading) =>
  z
    .string()
    .transform((text, context): boolean => {
      const word = text.trim().toLowerCase();
      if (word === 'yes' || word === 'true') return true;
      if (word === 'no' || word === 'false') return false;
      return refuse(context, 'unknown-word', `"${text}" is neither yes nor no`, 'write yes or no');
    })
    .meta({ ...heading, words: ['yes', 'no'], format: 'yes-no' });
