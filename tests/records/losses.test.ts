import { expect, test } from 'vitest';
import { shapeAt, titleOf } from '../../src/reading/schema-keys.ts';
import { LOSS_KEYS, lossesSchema } from '../../src/records/losses.ts';
import { LOSS, USUAL_LOSSES } from '../../src/statistics/pick-or-wait/loss.ts';

const problemsOf = (losses: object): unknown[] =>
  (lossesSchema.safeParse(losses).error?.issues ?? []).map((issue) =>
    issue.code === 'custom' ? issue.params?.code : issue.code,
  );

test('the keys are those of the schema and of the reckoning, each with a heading', () => {
  const shape = shapeAt(lossesSchema, []);
  expect(Object.keys(shape)).toEqual([...LOSS_KEYS]);
  expect(Object.keys(USUAL_LOSSES)).toEqual([...LOSS_KEYS]);
  expect(LOSS_KEYS.map((key) => titleOf(shape[key])).filter((title) => title === null)).toEqual([]);
});

test('a loss is little, some or much; one left out is blank', () => {
  expect(lossesSchema.parse({ unripe: 'much', split: 'Some', lost: 'little' })).toMatchObject({
    unripe: 'much',
    split: 'some',
    dilution: null,
    lost: 'little',
  });
  for (const word of Object.keys(LOSS)) expect(problemsOf({ unripe: word })).toEqual([]);
});

test('any other word, a number and a loss nobody asked for are refused', () => {
  expect(problemsOf({ unripe: 'a lot' })).toEqual(['unknown-word']);
  expect(problemsOf({ split: '3' })).toEqual(['unknown-word']);
  expect(problemsOf({ theft: 'much' })).toEqual(['unrecognized_keys']);
});
