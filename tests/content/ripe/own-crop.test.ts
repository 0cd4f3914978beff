import { describe, expect, test } from 'vitest';
import type { CropModel } from '../../../content/ripe/crop-model.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { buildSite } from '../../../src/site/build-site.ts';
import { createDraw } from '../../../src/site/draw.ts';
import { readPage } from '../../books/reading.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

const reference = loadReference('data/reference');
const draw = createDraw();

const textsOf = (signs: string, locale = 'en-GB', edition = 'home'): Record<string, string> => ({
  'garden.yaml': `name: Test plot\nedition: ${edition}\nunits: metric\npaper: A4\nlocale: ${locale}\nspots: [{id: S1, kind: mound}]\n`,
  'crops/globe.yaml': `id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n${signs}`,
  'varieties.yaml': '- {id: amber, name: Amber, crop: globe, seed: unknown}\n',
});

function bookWith(signs: string, locale?: string, edition?: string) {
  const { garden, problems } = linkTexts(textsOf(signs, locale, edition));
  if (!garden || problems.length > 0) throw new Error(`invalid garden: ${JSON.stringify(problems)}`);
  return bookOf({ reference }, garden, null);
}

function modelOf(signs: string, locale?: string): CropModel {
  const page = bookWith(signs, locale).pages.find(({ path }) => path === 'ripe/');
  const [crop] = (page?.model as { crops: CropModel[] } | undefined)?.crops ?? [];
  if (!crop) throw new Error('no crop');
  return crop;
}

async function builtPages(signs: string, edition?: string) {
  const book = bookWith(signs, 'en-GB', edition);
  const site = await buildSite(book, { layouts: 'layouts', content: 'content', version: '0.0.0', draw });
  const [page, card] = ['ripe/', 'ripe/card/globe/'].map((path) => String(site.get(`${path}index.html`)));
  return { page: page ?? '', card: card ?? '' };
}

const sign = (id: string, more: string): string =>
  `  - {id: ${id}, on_card: yes, shown: {tendril: [dry]}, sources: [], ${more}}\n`;

describe('signs in words of another language', () => {
  const SIGNS = `too_late: {fr: trop mou}\nsigns:\n${sign('coil', 'drawing: tendril-dry, names: {fr: Vrille}, helps: {fr: sèche}')}${sign('both', 'drawing: size, names: {fr: Poids, en: Weight, en-GB: Heft}, helps: {en: lift it}')}`;

  test('go by their id, with no line of help', () => {
    const { lines, too_late } = modelOf(SIGNS);
    expect(lines.map((line) => [line.sign, line.help])).toEqual([
      ['coil', null],
      ['Heft', 'lift it'],
    ]);
    expect(too_late).toBeNull();
    expect(modelOf(SIGNS, 'en-US').lines[1]?.sign).toBe('Weight');
  });

  test('are printed so', async () => {
    const { page, card } = await builtPages(SIGNS);
    expect(readPage(page).tables[0]?.map(([, name]) => name)).toEqual(['coil', 'Heftlift it']);
    expect(card).toContain('<strong>coil</strong>');
    expect(page + card).not.toMatch(/Too late|null|undefined/);
  });
});

test('a drawing that nobody made leaves its place blank', async () => {
  const made = sign('made', 'drawing: tendril-dry, names: {en: Made}, helps: {en: help}');
  const not = sign('not', 'drawing: no-such-thing, names: {en: Not made}, helps: {en: help}');
  const odd = sign('odd', 'drawing: Spot2, names: {en: Odd}, helps: {en: help}');
  const { page, card } = await builtPages(`signs:\n${made}${not}${odd}`);
  const drawn = [...page.matchAll(/<td class="drawn">(.*?)<\/td>/gs)].map(([, inside]) => inside?.includes('<svg'));
  expect(drawn).toEqual([true, false, false]);
  const onCard = [...card.matchAll(/<span class="card-drawing">(.*?)<\/span>/gs)].map(([, inside]) => inside);
  expect(onCard.map((inside) => inside?.includes('<svg'))).toEqual([...drawn, ...drawn, ...drawn, ...drawn]);
  expect(onCard[1]).toBe('');
});

test('a source that the book does not know is named by its id, each source once', async () => {
  const signs = `signs:\n${['one', 'two'].map((id) => sign(id, `drawing: size, names: {en: ${id}}, helps: {en: help}`)).join('')}`;
  const { page } = await builtPages(signs.replaceAll('sources: []', 'sources: [my-aunt, trade-practice]'), 'community');
  const list = /<ul class="sources">(.*?)<\/ul>/s.exec(page)?.[1] ?? '';
  expect(list.match(/<li>/g)).toHaveLength(2);
  expect(list).toContain('<li>my-aunt</li>');
});

describe('what a crop’s file may not say', () => {
  const codes = (signs: string): string[] =>
    linkTexts(textsOf(`signs:\n${signs}`)).problems.map(({ file, code }) => `${file} ${code}`);
  const named = (name: string, help = 'help'): string =>
    sign('one', `drawing: size, names: {en: ${name}}, helps: {en: ${help}}`);

  test('a name of more than 20 letters, a help of more than 30', () => {
    expect(codes(named('a'.repeat(20), 'b'.repeat(30)))).toEqual([]);
    expect(codes(named('a'.repeat(21)))).toEqual(['crops/globe.yaml text-too-long']);
    expect(codes(named('a', 'b'.repeat(31)))).toEqual(['crops/globe.yaml text-too-long']);
  });

  test('a step no ladder has, a sign no record tells, a drawing outside its folder', () => {
    expect(codes(named('a').replace('[dry]', '[brown]'))).toEqual(['crops/globe.yaml unknown-word']);
    expect(codes(named('a').replace('tendril:', 'colour:'))).toHaveLength(1);
    expect(codes(named('a').replace('drawing: size', 'drawing: ../book'))).toEqual(['crops/globe.yaml id-form']);
  });
});
