import { parseFragment, serialize } from 'parse5';
import { expect, test } from 'vitest';
import { elementsUnder } from '../../src/print/markup.ts';
import { relink, renameIds } from '../../src/print/references.ts';

/** The markup of the one element of a text after a change. */
function changed(markup: string, change: (root: ReturnType<typeof elementsUnder>[number]) => void): string {
  const fragment = parseFragment(markup);
  const [root] = elementsUnder(fragment);
  if (root) change(root);
  return serialize(fragment);
}

test('a new id reaches every place that names the old one, in drawings and labels too', () => {
  const before =
    '<div id="a"><svg aria-labelledby="t d"><title id="t">T</title><desc id="d">D</desc><clipPath id="c"></clipPath>' +
    '<g clip-path="url(#c)" style="fill:url(\'#c\')"><use xlink:href="#s" href="#s"></use></g></svg><p>url(#c) #s</p></div>';
  const after =
    '<div id="x-a"><svg aria-labelledby="x-t x-d"><title id="x-t">T</title><desc id="x-d">D</desc><clipPath id="x-c"></clipPath>' +
    '<g clip-path="url(#x-c)" style="fill:url(\'#x-c\')"><use xlink:href="#x-s" href="#x-s"></use></g></svg><p>url(#c) #s</p></div>';
  expect(changed(before, (root) => renameIds(root, (id) => `x-${id}`))).toBe(after);
});

test('a link without an address leaves its words', () => {
  const before = '<p><a href="data/x.csv" download="">Numbers</a>, <a href="../y/">there</a></p>';
  const after = '<p><a>Numbers</a>, <a href="#y">there</a></p>';
  expect(changed(before, (root) => relink(root, (href) => (href.startsWith('data/') ? null : '#y')))).toBe(after);
});
