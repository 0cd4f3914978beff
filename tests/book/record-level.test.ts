import { expect, test } from 'vitest';
import { recordLevel } from '../../src/book/record-level.ts';

test('a level is kept only with all below it, and the next is the first that is missing', () => {
  const all = { little: true, some: true, full: true };
  expect(recordLevel('little', all)).toEqual({ needs: 'little', kept: 'full', next: null });
  expect(recordLevel('some', { ...all, full: false })).toEqual({ needs: 'some', kept: 'some', next: 'full' });
  expect(recordLevel('little', { ...all, some: false })).toEqual({ needs: 'little', kept: 'little', next: 'some' });
  expect(recordLevel('little', { ...all, little: false })).toEqual({ needs: 'little', kept: null, next: 'little' });
});
