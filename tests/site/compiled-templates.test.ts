import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import nunjucks from 'nunjucks';
import { expect, test } from 'vitest';
import { CompiledTemplates } from '../../src/site/compiled-templates.ts';
import { scratch } from '../disk/scratch.ts';

const SETTINGS = { autoescape: true, throwOnUndefined: true };

/** As a book is set: by an environment of its own, whose words are its own. */
function rendered(folder: string, name: string, word: string): string {
  const environment = new nunjucks.Environment(new CompiledTemplates([folder], SETTINGS), SETTINGS);
  environment.addGlobal('word', word);
  environment.addFilter('loud', (text: string) => `${text} of ${word}!`);
  return environment.render(name, { model: { name: '<b>' } });
}

test('a text compiled once serves other environments with their own words, and a changed one is read anew', () => {
  const folder = scratch();
  writeFileSync(join(folder, 'frame.njk'), '[{% block body %}{% endblock %}]');
  writeFileSync(
    join(folder, 'page.njk'),
    '{% extends "frame.njk" %}{% block body %}{{ model.name | loud }}{% endblock %}',
  );
  expect(rendered(folder, 'page.njk', 'one')).toBe('[&lt;b&gt; of one!]');
  expect(rendered(folder, 'page.njk', 'two')).toBe('[&lt;b&gt; of two!]');
  writeFileSync(join(folder, 'frame.njk'), '({% block body %}{% endblock %})');
  expect(rendered(folder, 'page.njk', 'three')).toBe('(&lt;b&gt; of three!)');
});

test('a fault is told with its file, line and column, the first time and the second', () => {
  const folder = scratch();
  writeFileSync(join(folder, 'lacking.njk'), 'one\n{{ model.nothing }}');
  writeFileSync(join(folder, 'broken.njk'), 'one\n{% if model %}\n');
  for (const _ of [1, 2]) {
    expect(() => rendered(folder, 'lacking.njk', '')).toThrow(
      /lacking\.njk.*\[Line 2, Column \d+\]\s+attempted to output null or undefined/s,
    );
    expect(() => rendered(folder, 'broken.njk', '')).toThrow(/broken\.njk\)\s+parseIf: .*got end of file/s);
  }
});
