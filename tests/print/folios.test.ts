import { expect, test } from 'vitest';
import { type Folios, withFolios } from '../../src/print/contents-folios.ts';
import { foliosFrom, isSettled } from '../../src/print/folios.ts';
import type { Places } from '../../src/print/pdf-places.ts';

const OPENINGS = ['front', 'one', 'two', 'three'].map((name) => ({ name, title: name.toUpperCase() }));
const NONE: ReadonlySet<string> = new Set();

/** A printing whose openings stand on these pages; "inner" is the page after that of "one". */
const printing = (...pages: number[]): Places => ({
  pages: 20,
  outline: OPENINGS.map(({ title }, index) => ({ title, page: pages[index] ?? 0, below: [] })),
  goals: new Map([
    ...OPENINGS.map(({ name }, index) => [name, pages[index] ?? 0] as const),
    ['inner', (pages[1] ?? 0) + 1] as const,
  ]),
});

test('with chapters that open on the right, empty pages shift all that follows', () => {
  // Front 1, one 2–4, two 5–6, three 7. One moves to 3, two from 6 to 7, three then stands on 9 by itself.
  const { numbers, blankBefore } = foliosFrom(printing(1, 2, 5, 7), OPENINGS, NONE, true);
  expect([...blankBefore]).toEqual(['one', 'two']);
  expect(Object.fromEntries(numbers)).toEqual({ front: 1, one: 3, inner: 4, two: 7, three: 9 });
});

test('the next printing with those empty pages is settled', () => {
  const told = foliosFrom(printing(1, 2, 5, 7), OPENINGS, NONE, true);
  const next = foliosFrom(printing(1, 3, 7, 9), OPENINGS, told.blankBefore, true);
  expect(isSettled(told, next, ['one', 'inner', 'three'])).toBe(true);
});

test('an empty page that is no longer needed goes, and the printing is not settled', () => {
  const told: Folios = { numbers: new Map([['two', 7]]), blankBefore: new Set(['one', 'two']) };
  // Without the empty pages 1, 2, 6, 9: with one before "one" they are 1, 3, 7, 10, so that "three" now wants one.
  const next = foliosFrom(printing(1, 3, 8, 11), OPENINGS, told.blankBefore, true);
  expect([...next.blankBefore]).toEqual(['one', 'three']);
  expect(next.numbers.get('two')).toBe(7);
  expect(next.numbers.get('three')).toBe(11);
  expect(isSettled(told, next, ['two'])).toBe(false);
});

test('chapters that follow on keep their pages', () => {
  const { numbers, blankBefore } = foliosFrom(printing(1, 2, 5, 7), OPENINGS, NONE, false);
  expect(blankBefore.size).toBe(0);
  expect(numbers.get('three')).toBe(7);
});

test('a number that is not known is never settled, and an outline without a chapter is refused', () => {
  const nothing: Folios = { numbers: new Map(), blankBefore: NONE };
  expect(isSettled(nothing, nothing, ['one'])).toBe(false);
  expect(isSettled(nothing, nothing, [])).toBe(true);
  expect(() => foliosFrom({ ...printing(1, 2, 5, 7), outline: [] }, OPENINGS, NONE, false)).toThrow('invalid outline');
});

test('numbers and empty pages are written where they belong', () => {
  const before =
    '<!DOCTYPE html><html><head></head><body><main><section class="leaf" id="front"><ol class="contents"><li>' +
    '<a href="#one">One</a><span class="folio" data-of="one"></span></li></ol></section>' +
    '<section class="leaf" id="one"><p>1</p></section></main></body></html>';
  const after = withFolios(before, { numbers: new Map([['one', 3]]), blankBefore: new Set(['one']) });
  expect(after).toContain('<span class="folio" data-of="one">3</span>');
  expect(after).toContain('</ol><div class="blank" aria-hidden="true"></div></section><section class="leaf" id="one">');
  expect(withFolios(before, { numbers: new Map(), blankBefore: NONE })).toBe(before);
});
