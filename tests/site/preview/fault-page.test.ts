import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fileProblem, type Problem } from '../../../src/reading/problem.ts';
import { type Fault, faultPage } from '../../../src/site/preview/fault-page.ts';
import { markedLines } from '../../../src/site/preview/marked-lines.ts';
import { previewPage } from '../../../src/site/preview/preview-page.ts';
import { markupFaults, visible } from '../page-faults.ts';

const text = '- id: F1\n  fate: picked\n  pick: {picked_on: 2025-08-12, mass_kg: 3,35}\n';
const problem = (more: Partial<Problem> = {}): Problem => ({
  ...fileProblem('seasons/2025/fruits.yaml', {
    code: 'decimal-comma',
    message: '"3,35" has a decimal comma',
    hint: 'write 3.35',
    line: 3,
    column: 42,
  }),
  ...more,
});
const records = (problems: readonly Problem[]): Fault => ({ kind: 'records', problems, textOf: () => text });
const settings = { layouts: 'layouts', garden: 'Corner by the wall', hasGood: true };

const FAULTS: Readonly<Record<string, Fault>> = {
  'one error': records([problem()]),
  'errors and warnings': records([problem(), problem({ line: 1 }), problem({ severity: 'warning', hint: null })]),
  'a file that cannot be read': { ...records([problem({ line: 1, column: 1 })]), textOf: () => '' } as Fault,
  'a refusal': { kind: 'refused', message: 'there are no records', hint: 'begin one' },
  'a refusal without a hint': { kind: 'refused', message: 'there are no records', hint: null },
  'the program': { kind: 'program', message: '(yield/index.njk) [Line 3]\n  no such thing' },
  'no page': { kind: 'missing' },
};

describe.each(Object.entries(FAULTS))('the page for %s', (_name, fault) => {
  test.each([true, false])('is sound markup, with a handbook before: %s', (hasGood) => {
    const html = faultPage(fault, { ...settings, hasGood });
    expect(markupFaults('fault.html', html)).toEqual([]);
    expect(markupFaults('fault.html', previewPage(html).html)).toEqual([]);
    expect(visible(html)).not.toMatch(/\b(undefined|NaN|null)\b|\[object|\{\{|\{%/);
    expect(html).toContain('<body class="fault">');
  });
});

test('says where, what, and what to type instead, and leads to the last good handbook', () => {
  const html = faultPage(records([problem()]), settings);
  expect(html).toContain('seasons/2025/fruits.yaml:3:42');
  expect(visible(html)).toContain('has a decimal comma');
  expect(html).toContain('mass_kg: <mark>3,35</mark>}');
  expect(html).toContain('write 3.35');
  expect(html).toContain('href="/-/last-good/"');
  expect(faultPage(records([problem()]), { ...settings, hasGood: false })).not.toContain('last-good');
});

test('a record cannot write markup into it', () => {
  const loud = '<script>alert(1)</script>';
  const fault = {
    ...records([problem({ message: loud, hint: loud, file: loud, line: 1, column: 1 })]),
    textOf: () => loud,
  };
  expect(faultPage(fault as Fault, { ...settings, garden: loud })).not.toContain('<script>alert');
});

test('a garden of faults stays a page that can be read', () => {
  const html = faultPage(records(Array.from({ length: 5000 }, (_, index) => problem({ line: index + 1 }))), settings);
  expect(html.match(/class="problem-place"/g)).toHaveLength(400);
  expect(visible(html)).toContain('4600 more are not listed here');
});

test('marks the piece of the line', () => {
  expect(markedLines(text, problem())).toEqual([
    { number: '2', before: '  fate: picked', marked: '', after: '' },
    { number: '3', before: '  pick: {picked_on: 2025-08-12, mass_kg: ', marked: '3,35', after: '}' },
  ]);
  expect(markedLines('a | b: ^', problem({ line: 1, column: 5 }))).toEqual([
    { number: '1', before: 'a | ', marked: 'b:', after: ' ^' },
  ]);
  expect(markedLines('', problem())).toEqual([]);
});

test('its own policy is the book’s', () => {
  const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/;
  const [book, own] = ['layouts/page.njk', 'layouts/diagnostics.njk'].map(
    (file) => policy.exec(readFileSync(file, 'utf8'))?.[1],
  );
  expect(own).toBeDefined();
  expect(own).toBe(book);
  expect(own).not.toContain('connect-src');
});
