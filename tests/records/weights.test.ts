import { expect, test } from 'vitest';
import { shapeAt, titleOf } from '../../src/reading/schema-keys.ts';
import { WEIGHT_KEYS, weightsSchema } from '../../src/records/weights.ts';

const problemsOf = (weights: object): unknown[] =>
  (weightsSchema.safeParse(weights).error?.issues ?? []).map((issue) =>
    issue.code === 'custom' ? issue.params?.code : issue.code,
  );

test('the keys are those of the schema, in its order, each with a heading', () => {
  const shape = shapeAt(weightsSchema, []);
  expect(Object.keys(shape)).toEqual([...WEIGHT_KEYS]);
  expect(WEIGHT_KEYS.map((key) => titleOf(shape[key])).filter((title) => title === null)).toEqual([]);
});

test('a weight is 0, 1, 2 or 3; one left out is blank, not 0', () => {
  expect(weightsSchema.parse({ sweet: '3', plenty: '2', early: '1', big: '0' })).toMatchObject({
    sweet: 3,
    plenty: 2,
    early: 1,
    big: 0,
    crisp: null,
    liked: null,
  });
});

test.each([
  ['4', 'out-of-range'],
  ['-1', 'out-of-range'],
  ['1.5', 'not-whole'],
  ['about 2', 'about-not-allowed'],
  ['much', 'not-a-number'],
])('%s is refused', (weight, code) => expect(problemsOf({ sweet: weight })).toEqual([code]));

test('a thing nobody can weigh is refused', () => expect(problemsOf({ price: '2' })).toEqual(['unrecognized_keys']));
