import { expect, test } from 'vitest';
import { fruitSchema } from '../../src/records/fruit.ts';

const looksOf = (looks: string): unknown =>
  fruitSchema.safeParse({
    id: 'F1',
    planting: 'P1',
    fate: 'picked',
    pick: { picked_on: '2025-08-12', looks },
  }).data?.pick?.looks;

test('how a picked fruit looks is a word of four or its code', () => {
  expect(['poor', 'plain', 'good', 'handsome'].map(looksOf)).toEqual(['poor', 'plain', 'good', 'handsome']);
  expect(['1', '2', '3', '4'].map(looksOf)).toEqual(['poor', 'plain', 'good', 'handsome']);
  expect(['0', '5', 'ugly'].map(looksOf)).toEqual([undefined, undefined, undefined]);
});
