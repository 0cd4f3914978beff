import { expect, test } from 'vitest';
import { feed } from '../../../content/feed/chapter.ts';
import type { FedLine } from '../../../content/feed/fed-lines.ts';
import type { LateLine } from '../../../content/feed/late-lines.ts';
import type { Target } from '../../../content/feed/targets.ts';
import type { Page } from '../../../src/book/page.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

const reference = loadReference('data/reference');
const OWN = 'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n';
const WANTS = 'feeding: {n_low_kg_ha: 80, n_high_kg_ha: 168, sources: [trade-practice]}\n';

interface Model {
  readonly leaf: readonly { readonly last: string | null }[];
  readonly together: boolean;
  readonly wanted: readonly Target[];
  readonly unknown: readonly string[];
  readonly fed: { readonly lines: readonly FedLine[] } | null;
  readonly late: readonly LateLine[];
  readonly of_100: { readonly p: number; readonly k: number };
}

function pageOf(crop: string, feeding = '', flowering = '', season = true): { page: Page; model: Model } {
  const { garden, problems } = linkTexts({
    'garden.yaml':
      'name: T\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\nspots: [{id: S1, kind: mound, area_m2: 4}, {id: S2, kind: mound, area_m2: 4}, {id: S3, kind: tub}]\n',
    'crops/globe.yaml': crop,
    'varieties.yaml': '- {id: amber, name: Amber, crop: globe, seed: unknown}\n',
    ...(season && {
      'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-10-31\n',
      'seasons/2025/plantings.yaml': ['S1', 'S2', 'S3']
        .map((spot) => `- {id: P${spot}, spot: ${spot}, variety: amber, planted_on: 2025-05-20, plants_set: 2}\n`)
        .join(''),
      'seasons/2025/feeding.yaml': feeding,
      'seasons/2025/flowering.yaml': flowering,
    }),
  });
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid garden: ${JSON.stringify(errors)}`);
  const [page] = feed.write(bookOf({ reference }, garden, null).facts);
  if (!page) throw new Error('there is no page');
  return { page, model: page.model as Model };
}

// 80 and 168 kg on the 10,000 m² of a hectare are 8 and 16.8 g a m².
test('a crop’s nitrogen is told by the square metre, or not at all', () => {
  const { model, page } = pageOf(OWN + WANTS);
  expect(model.wanted[0]?.n_g_per_m2).toEqual({ low: 8, high: 16.8 });
  expect(page.figures.map(({ id, value, unit }) => [id, value, unit])).toEqual([
    ['feed.globe.wanted_n_least', 8, 'g_per_m2'],
    ['feed.globe.wanted_n_most', 16.8, 'g_per_m2'],
  ]);
  expect(pageOf(OWN).model).toMatchObject({ wanted: [], unknown: ['globes'], leaf: [], late: [] });
});

// 1 kg of 8 in 100 on 4 m² is 20 g a m²; on both spots together 10.
test('spots that got the same share a line, and an amount in a word makes it at least', () => {
  const bag = (spots: string, mass_kg = 1): string =>
    `- {given_on: 2025-06-01, spots: [${spots}], material: bought-feed, mass_kg: ${mass_kg}, label_n: 8}\n`;
  const { model, page } = pageOf(OWN, bag('S1, S2', 2));
  expect(model.fed?.lines).toMatchObject([{ spots: ['S1', 'S2'], n_g_per_m2: { low: 20, high: 20 }, lacks: null }]);
  expect(page.tables.map(({ id, rows }) => [id, rows.length])).toEqual([['feed-spots', 2]]);
  const some = pageOf(
    OWN,
    `${bag('S1')}${bag('S2')}- {given_on: 2025-06-02, spots: [S2], material: compost, roughly: some}\n`,
  );
  expect(some.model.fed?.lines.map(({ spots, at_least }) => [spots, at_least.all])).toEqual([
    [['S1'], false],
    [['S2'], true],
  ]);
  const figure = some.page.figures.find(({ id }) => id === 'feed.2025.S2.n_least');
  expect(figure).toMatchObject({ value: 20, n: 1, reason: { code: 'at-least' }, method: 'nitrogen-given' });
});

test('what has no number keeps its reason', () => {
  const { model, page } = pageOf(
    OWN,
    '- {given_on: 2025-06-01, spots: [S1], material: liquid-feed, volume_l: 10}\n- {given_on: 2025-06-01, spots: [S3], material: bought-feed, mass_kg: 1, label_n: 8}\n',
  );
  expect(model.fed?.lines.map(({ spots, lacks }) => [spots[0], lacks])).toEqual([
    ['S1', 'content-untold'],
    ['S3', 'area-missing'],
  ]);
  expect(page.figures.every(({ value, reason }) => value === null && reason !== null)).toBe(true);
});

test('a feed after the first female flower is named with its spot and day', () => {
  const { model, page } = pageOf(
    OWN,
    '- {given_on: 2025-07-02, spots: [S1, S2], material: liquid-feed, roughly: some}\n',
    '- {seen_on: 2025-06-25, planting: PS1, what: first-female}\n- {seen_on: 2025-07-04, planting: PS2, what: first-female}\n',
  );
  expect(model.late).toMatchObject([{ name: 'liquid feed', spots: ['S1'], flower: 'seen', bears: 'perhaps' }]);
  expect(page.tables.map(({ id }) => id)).toEqual(['feed-spots', 'feed-late-nitrogen']);
  // From planting out on 20 May to the first of the female flowers, day 36.
  expect(model.leaf[0]?.last).toBe('2025-06-25');
});

test('of a crop whose flowers are male and female in one, the first flower ends it', () => {
  expect(pageOf(OWN).model.together).toBe(false);
  expect(
    pageOf(`${OWN}flowering: {sexes: together, carried_by: shaking, sources: [trade-practice]}\n`).model.together,
  ).toBe(true);
});

// Usual handbook factors, 0.44 and 0.83: tests/published/nutrients.
test('oxides on a label hold 44 and 83 parts of the element', () => {
  const { of_100 } = pageOf(OWN).model;
  expect([Math.round(of_100.p), Math.round(of_100.k)]).toEqual([44, 83]);
});

test('before the first season it has its page, and needs little', () => {
  const { model, page } = pageOf(OWN + WANTS, '', '', false);
  expect([model.fed, page.level]).toEqual([null, { needs: 'little', kept: null, next: 'little' }]);
  expect(pageOf(OWN, '- {given_on: 2025-06-01, material: compost}\n').page.level?.kept).toBe('little');
});
