import { expect, test } from 'vitest';
import { countsOf, gradeOf } from './reading-age.ts';

// The formula: Kincaid, Fishburne, Rogers and Chissom (1975), Navy Research Branch Report 8-75:
// 0.39 words/sentences + 11.8 syllables/words − 15.59. From memory, as is the worked example of encyclopaedias:
// "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.", 13 words and 24 syllables, 11.3.
const PLATYPUS = 'The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.';

test('the formula gives a worked example its grade', () => {
  expect(Math.abs((gradeOf({ sentence: 1, word: 13, syllable: 24 }) ?? 0) - 11.3)).toBeLessThanOrEqual(0.05);
  // By hand: 0.39 × 6 + 11.8 × 6 / 6 − 15.59 = −1.45.
  expect(gradeOf(countsOf(['The cat sat on the mat.']))).toBeCloseTo(-1.45, 10);
});

test('sentences, words and syllables are counted as by hand', () => {
  // 26 where -ian is said in two, as here; the worked example says it in one, twice.
  expect(countsOf([PLATYPUS])).toEqual({ sentence: 1, word: 13, syllable: 26 });
  expect(countsOf(['In 2025, 3 mounds gave 12 fruits. Nothing was lost', 'Yes.'])).toEqual({
    sentence: 3,
    word: 8,
    syllable: 9,
  });
  expect(gradeOf(countsOf(['12, 14.']))).toBeNull();
});
