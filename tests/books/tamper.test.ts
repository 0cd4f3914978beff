import { describe, expect, test } from 'vitest';
import type { Book } from '../../src/book/book.ts';
import { loadReference } from '../../src/cli/load-reference.ts';
import { bookOf } from '../../src/cli/make-book.ts';
import { keptInMemory } from '../../src/kept.ts';
import { linkTexts, textsIn, withChange } from '../reading/garden-texts.ts';
import { htmlPages, siteOfTexts } from '../site/built.ts';

const reference = loadReference('data/reference');
const kept = keptInMemory();

type Texts = Readonly<Record<string, string>>;

function bookOfTexts(texts: Texts): Book {
  const { garden, problems } = linkTexts(texts);
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid garden: ${JSON.stringify(errors)}`);
  return bookOf({ reference }, garden, null, kept);
}

/**
 * Pages that may differ without a figure that names the record: lists of the records themselves and what is told of them
 * singly, dates of the year that stand in no figure (calendar, picking), and an earlier season's chart, which shares its axis with the later.
 */
const APART = /^(records|diary|sheets|colophon|methods|calendar|picking|yield\/[^/]+)\/|^index/;

/** Of every figure a template may read, whether the page lists it or another does. */
const basesIn = (model: unknown): string[] =>
  [...JSON.stringify(model).matchAll(/"basis":"([0-9a-f]{8})"/g)].map(([, basis]) => basis ?? '');

/** Records under the figures of each page. */
function keysByPage({ pages, facts }: Book): Map<string, ReadonlySet<string>> {
  const bases = facts.ledger.bases.all();
  return new Map(
    pages.map(({ path, model, figures }) => [
      `${path}index.html`,
      new Set([...figures.map(({ basis }) => basis), ...basesIn(model)].flatMap((basis) => bases[basis] ?? [])),
    ]),
  );
}

/** Pages as they are read: without the mark of their model at the foot. */
async function pagesOf(texts: Texts): Promise<Map<string, string>> {
  const pages = htmlPages(await siteOfTexts(texts));
  return new Map(pages.map(([path, html]) => [path, html.replace(/ · page [0-9a-f]+/g, '')]));
}

/** Figures by id as they are printed, and the records each rests on. */
function figuresOf({ figures, facts }: Book): Map<string, { told: string; keys: readonly string[] }> {
  const bases = facts.ledger.bases.all();
  return new Map(
    figures.map(({ basis, ...told }) => [told.id, { told: JSON.stringify(told), keys: bases[basis] ?? [] }]),
  );
}

interface Tampering {
  readonly garden: string;
  readonly file: string;
  readonly from: string;
  readonly to: string;
  /** Key of the record that was changed. */
  readonly key: string;
  /** Figures that have to be reckoned anew. */
  readonly must: readonly RegExp[];
}

const SOUTHERN = { garden: 'southern', file: 'seasons/2025-26/fruits.yaml' };

const CASES: readonly Tampering[] = [
  {
    ...SOUTHERN,
    from: 'mass_kg: 5.1, condition: whole}, cut: {cut_on: 2026-02-08',
    to: 'mass_kg: 6.3, condition: whole}, cut: {cut_on: 2026-02-08',
    key: 'fruits/2025-26/S1-1',
    must: [/^yield\.2025-26\.garden\.total\.kg$/, /^variety\.watermelon\.mass_kg\./],
  },
  {
    ...SOUTHERN,
    from: 'brix_centre: 11.4',
    to: 'brix_centre: 9.4',
    key: 'fruits/2025-26/S2-1',
    must: [/^variety\..*\.most_brix$/],
  },
  {
    ...SOUTHERN,
    from: '{id: I1-2, planting: I1-25, fate: picked, pick: {picked_on: 2026-02-21, reason: damage, mass_kg: 3.0, condition: split}}',
    to: '{id: I1-2, planting: I1-25, fate: picked, pick: {picked_on: 2026-02-21, reason: damage, mass_kg: 3.0, condition: whole}}',
    key: 'fruits/2025-26/I1-2',
    must: [/^yield\.2025-26\.garden\.total\.sound_fruits$/, /^variety\.watermelon\.sound\./],
  },
  {
    ...SOUTHERN,
    from: '{id: S3-2, planting: S3-25, fate: picked, pick: {picked_on: 2026-03-01',
    to: '{id: S3-2, planting: S3-25, fate: picked, pick: {picked_on: 2026-02-03',
    key: 'fruits/2025-26/S3-2',
    must: [/^variety\.watermelon\.first_ripe_days\./],
  },
  {
    garden: 'southern',
    file: 'seasons/2024-25/pickings.yaml',
    from: '2025-02-15, count: 3, sound_count: 3, mass_kg: 9.0, sound_mass_kg: 9.0',
    to: '2025-02-15, count: 3, sound_count: 3, mass_kg: 7.5, sound_mass_kg: 7.5',
    key: 'pickings/2024-25/I2-24 2025-02-15',
    must: [/^yield\.2024-25\.garden\.total\.kg$/],
  },
  {
    garden: 'southern',
    file: 'seasons/2025-26/waterings.yaml',
    from: '- {watered_on: 2025-11-15, cans: 12,',
    to: '- {watered_on: 2025-11-15, cans: 15,',
    key: 'waterings/2025-26/2025-11-15',
    must: [/^water\.2025-26\.spot\.S1\.given_cans$/],
  },
];

describe('after one record is changed', () => {
  test.each([...CASES])(
    '$garden, $key: only figures and pages whose basis names it differ',
    async ({ garden, file, from, to, key, must }) => {
      const texts = textsIn(`tests/books/gardens/${garden}`);
      const [whole, tampered] = [bookOfTexts(texts), bookOfTexts(withChange(texts, file, from, to))];
      const [before, after] = [figuresOf(whole), figuresOf(tampered)];
      const ids = [...new Set([...before.keys(), ...after.keys()])];
      const changed = ids.filter((id) => before.get(id)?.told !== after.get(id)?.told);
      const unnamed = changed.filter((id) => !before.get(id)?.keys.includes(key) && !after.get(id)?.keys.includes(key));
      expect(unnamed).toEqual([]);
      const [pages, later] = [await pagesOf(texts), await pagesOf(withChange(texts, file, from, to))];
      const [named, then] = [keysByPage(whole), keysByPage(tampered)];
      const odd = [...pages.keys()].filter(
        (path) =>
          pages.get(path) !== later.get(path) &&
          !APART.test(path) &&
          !named.get(path)?.has(key) &&
          !then.get(path)?.has(key),
      );
      expect(odd).toEqual([]);
      for (const wanted of must)
        expect(changed.filter((id) => wanted.test(id)).length, String(wanted)).toBeGreaterThan(0);
    },
  );
});
