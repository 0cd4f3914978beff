import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';

/** What the grade is reckoned from. */
export interface Counts {
  readonly sentence: number;
  readonly word: number;
  readonly syllable: number;
}

/** Sentences, words and syllables of running text; figures are no words, and a text without a full stop at its end is a sentence all the same. */
export function countsOf(texts: readonly string[]): Counts {
  const sentences = texts.flatMap((text) => text.split(/(?<=[.!?])\s+/)).filter((part) => /\p{L}/u.test(part));
  const words = sentences.flatMap((sentence) => sentence.match(/[\p{L}][\p{L}’'-]*/gu) ?? []);
  return {
    sentence: sentences.length,
    word: words.length,
    syllable: words.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0),
  };
}

/**
 * The school grade of the United States that a text asks for:
 * 0.39 words/sentences + 11.8 syllables/words − 15.59 (Kincaid, Fishburne, Rogers and Chissom 1975, from memory).
 * Null without any word.
 */
export const gradeOf = (counts: Counts): number | null => (counts.word === 0 ? null : fleschKincaid({ ...counts }));
