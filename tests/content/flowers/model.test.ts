import { expect, test } from 'vitest';
import type { FirstFlowers } from '../../../content/flowers/first-flowers.ts';
import type { InsectCounts } from '../../../content/flowers/insect-counts.ts';
import type { SeasonTagged } from '../../../content/flowers/tagged.ts';
import { floweredGarden, pageOf } from './flowered-garden.ts';

interface Model {
  readonly first: readonly FirstFlowers[];
  readonly tagged: SeasonTagged | null;
  readonly insects: InsectCounts | null;
}
const modelOf = (...of: Parameters<typeof floweredGarden>): Model => pageOf(floweredGarden(...of)).model as Model;

const tag = (what: string, more: string, on = '2025-07-01'): string => `- {seen_on: ${on}, what: ${what}, ${more}}\n`;
const P1 = 'planting: P1';

test('the first female flower of each planting, in days and weeks from planting out', () => {
  const [one] = modelOf(
    [
      tag('first-male', P1, '2025-06-20'),
      tag('first-female', P1, '2025-07-04'),
      // The earlier of two entries counts.
      tag('first-female', P1, '2025-06-30'),
      tag('first-female', 'planting: P2', 'about 2025-07-08'),
      // Some day of June tells no day.
      tag('first-male', 'planting: P2', '2025-06'),
    ].join(''),
  ).first;
  // 20 May to 20 June: 31 days; to 30 June: 41; to 8 July: 49. In weeks 4.4, 5.9 and 7.
  expect(one?.rows.map(({ planting, male, female }) => [planting?.id, male?.days, female?.days])).toEqual([
    ['P1', 31, 41],
    ['P2', undefined, 49],
  ]);
  expect(one?.female).toMatchObject({
    first: '2025-06-30',
    last: '2025-07-08',
    count: 2,
    weeks: { low: 6, high: 7, side: 'after' },
  });
  expect([one?.female?.days?.soonest.value, one?.female?.days?.latest.value]).toEqual([41, 49]);
  expect(one?.male).toMatchObject({ first: '2025-06-20', last: '2025-06-20', weeks: { low: 4, high: 4 } });
});

test('a flower in the pot opens before planting out', () => {
  const [one] = modelOf(tag('first-male', P1, 'about 2025-05-06')).first;
  // 14 days before 20 May; a day not marked as about is refused.
  expect(one?.male).toMatchObject({ weeks: { low: 2, high: 2, side: 'before' } });
  expect(one?.male?.days?.soonest.value).toBe(-14);
});

test('an entry of the whole plot gives a date, and the only crop its name; of two crops nobody can say', () => {
  const entry = '- {seen_on: 2025-07-01, what: first-female}\n';
  const [one] = modelOf(entry).first;
  expect(one?.rows).toMatchObject([{ planting: null, female: { on: '2025-07-01', days: null } }]);
  expect(one?.female).toMatchObject({ days: null, weeks: null });
  expect(modelOf(entry, { bell: '' }).first).toEqual([]);
});

test('the last season that tells is told', () => {
  const earlier = '- {seen_on: 2024-07-01, what: first-female, planting: P1}\n';
  expect(modelOf('', { earlier }).first[0]?.label).toBe('2024');
  expect(modelOf(tag('first-female', P1), { earlier }).first[0]?.label).toBe('2025');
});

/** Chance of k or more of n, summed term by term: another way to the same number than the code's. */
function chanceOfAtLeast(k: number, n: number, share: number): number {
  const choose = (of: number, take: number): number => (take === 0 ? 1 : (choose(of - 1, take - 1) * of) / take);
  let sum = 0;
  for (let one = k; one <= n; one++) sum += choose(n, one) * share ** one * (1 - share) ** (n - one);
  return sum;
}

test('flowers tagged are added, those pollinated by hand or closed for seed apart', () => {
  const tagged = modelOf(
    [
      tag('tagged', `${P1}, flowers: 12, took: 8`),
      tag('tagged', 'planting: P2, flowers: 8, took: 5'),
      // Nobody looked again.
      tag('tagged', `${P1}, flowers: 30`),
      tag('hand-pollinated', `${P1}, flowers: 3, took: 1`),
      // A tag alone is one flower.
      tag('closed-for-seed', `${P1}, tag: red, took: 1`),
      tag('closed-for-seed', `${P1}, took: 1`),
    ].join(''),
  ).tagged;
  const [insects, hand] = tagged?.lines ?? [];
  expect(
    tagged?.lines.map(({ crop, carrier, flowers, took, untold }) => [crop, carrier, flowers, took, untold]),
  ).toEqual([
    ['globe', 'insects', 20, 13, 1],
    ['globe', 'hand', 4, 2, 1],
  ]);
  expect(insects?.of_ten).toMatchObject({ value: 6.5, n: 20, reason: null, interval: { level: 0.9 } });
  const { low = 0, high = 0 } = insects?.of_ten.interval ?? {};
  // Each end leaves one chance in twenty, by its definition (Clopper and Pearson 1934).
  expect(chanceOfAtLeast(13, 20, low / 10)).toBeCloseTo(0.05, 9);
  expect(1 - chanceOfAtLeast(14, 20, high / 10)).toBeCloseTo(0.05, 9);
  expect(hand?.of_ten).toMatchObject({ value: null, interval: null, reason: { code: 'few-flowers' } });
  expect([insects?.seeds?.filled, hand?.seeds]).toEqual([7, null]);
});

test('ten flowers are enough, nine are not', () => {
  const of = (flowers: number) =>
    modelOf(tag('tagged', `${P1}, flowers: ${flowers}, took: 4`)).tagged?.lines[0]?.of_ten;
  expect([of(9)?.value, of(10)?.value]).toEqual([null, 4]);
});

test('without a look at any tag there is nothing to tell, nor where crops cannot be told apart by name', () => {
  expect(modelOf(tag('tagged', `${P1}, flowers: 12`)).tagged).toBeNull();
  const [line] = modelOf(tag('tagged', 'flowers: 12, took: 3'), { bell: '' }).tagged?.lines ?? [];
  expect([line?.crop, line?.names, line?.flowers]).toEqual([null, null, 12]);
});

test('two insects are scarce, three are not, and none is a count', () => {
  const counts = [0, 3, 2, 14].map((insects) => tag('insects-counted', `insects: ${insects}`)).join('');
  const insects = modelOf(`${counts}${tag('insects-counted', P1)}`).insects;
  expect([insects?.counts.value, insects?.scarce.value, insects?.least, insects?.most]).toEqual([4, 2, 0, 14]);
  expect(modelOf('').insects).toBeNull();
});

test('what was reckoned is told as about', () => {
  const insects = modelOf(
    `${tag('insects-counted', 'insects: about 6')}${tag('insects-counted', 'insects: 1')}`,
  ).insects;
  expect([insects?.about, insects?.scarce.reason?.code, insects?.counts.reason]).toEqual([true, 'about', null]);
  expect(modelOf(tag('insects-counted', 'insects: 6')).insects?.about).toBe(false);
  const [line] = modelOf(tag('tagged', `${P1}, flowers: about 12, took: 6`)).tagged?.lines ?? [];
  expect([line?.about, line?.of_ten.reason?.code]).toEqual([true, 'about']);
});

test('the level of record grows from first flowers to tags looked at again to insects', () => {
  const level = (entries: string) => pageOf(floweredGarden(entries)).level?.kept;
  const first = tag('first-male', P1);
  const looked = `${first}${tag('tagged', `${P1}, flowers: 2, took: 1`)}`;
  expect([level(''), level(first), level(looked), level(`${looked}${tag('insects-counted', 'insects: 0')}`)]).toEqual([
    null,
    'little',
    'some',
    'full',
  ]);
});

test('stings are warned of', () => {
  expect(pageOf(floweredGarden('')).cautions).toContain('stings');
});

test('the files hold all seasons', () => {
  const { tables } = pageOf(
    floweredGarden(tag('first-female', P1), { earlier: tag('first-female', P1, '2024-07-01') }),
  );
  expect(tables.map(({ id, rows }) => [id, rows.map(([season]) => season)])).toEqual([
    ['flowers-first', ['2024', '2025']],
  ]);
});
