/**
 * What is not done: the odds of all cut fruits times the likelihood ratio of each sign, as if signs were independent.
 */
import type { CutFruit, LookedFruit } from '../../src/statistics/signs/ripe-chance.ts';

/** With half a fruit added to each count, and "old enough" (the middle age of the cut) as one more sign. */
export function ratioProduct(cut: readonly CutFruit[]): (fruit: LookedFruit) => number {
  const ages = cut.flatMap(({ days_since_set }) => days_since_set ?? []).sort((a, b) => a - b);
  const middle = ages[Math.floor(ages.length / 2)] ?? Number.POSITIVE_INFINITY;
  const told = ({ signs, days_since_set }: LookedFruit) => [
    ...signs,
    days_since_set === null ? null : days_since_set >= middle,
  ];
  const rows = cut.map((fruit) => ({ answer: fruit.answer, told: told(fruit) }));
  const share = (answer: boolean, sign: number): number => {
    const looked = rows.filter((row) => row.answer === answer && row.told[sign] !== null);
    return (looked.filter((row) => row.told[sign]).length + 0.5) / (looked.length + 1);
  };
  const ripe = cut.filter(({ answer }) => answer).length;
  const base = Math.log((ripe + 0.5) / (cut.length - ripe + 0.5));
  const ratios = (rows[0]?.told ?? []).map((_, sign) => {
    const [yes, no] = [share(true, sign), share(false, sign)];
    return { shown: Math.log(yes / no), absent: Math.log((1 - yes) / (1 - no)) };
  });
  return (fruit) => {
    const odds = told(fruit).reduce<number>((sum, shown, sign) => {
      const ratio = ratios[sign];
      return shown === null || !ratio ? sum : sum + (shown ? ratio.shown : ratio.absent);
    }, base);
    return 1 / (1 + Math.exp(-odds));
  };
}
