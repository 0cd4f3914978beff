import { expect, test } from 'vitest';
import { tastingSchema } from '../../src/records/event/tasting.ts';

test('an order keeps its places, and what a pair would say is blank beside it', () => {
  expect(tastingSchema.parse({ tasted_on: '2025-08-20', best_first: ['F3', 'F1', 'F2'] })).toMatchObject({
    best_first: ['F3', 'F1', 'F2'],
    sweetest_first: null,
    fruit: null,
    against: null,
    sweeter: null,
    better: null,
  });
});

test('a pair takes the words of the sheet or their codes, and has no order', () => {
  expect(tastingSchema.parse({ tasted_on: '2025-08-20', fruit: 'F1', against: 'F2', sweeter: '3' })).toMatchObject({
    fruit: 'F1',
    against: 'F2',
    sweeter: 'sweeter',
    best_first: null,
  });
});

test.each([['best_first'], ['sweetest_first']])('%s holds ids and nothing else', (key) => {
  const codeOf = (value: unknown): unknown => {
    const { error } = tastingSchema.safeParse({ tasted_on: '2025-08-20', [key]: value });
    const [issue] = error?.issues ?? [];
    return issue?.code === 'custom' ? issue.params?.code : issue?.code;
  };
  expect(codeOf(['F1', 'F 2'])).toBe('id-form');
  expect(codeOf(['F1', 'unknown'])).toBe('reserved-id');
  expect(codeOf('F1')).toBe('invalid_type');
});
