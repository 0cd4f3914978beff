import { expect, test } from 'vitest';
import { coverageOf } from './coverage.ts';
import { isWithin, type Limits, tableHead, tableRow } from './coverage-table.ts';
import { type JudgedList, judgedList } from './variety-shortlist-judged.ts';
import type { Short } from './variety-shortlist-regret.ts';
import { LIST_SETTINGS, type ListSetting } from './variety-shortlist-settings.ts';
import { claimRows, regretMeans } from './variety-shortlist-told.ts';

/** Seeds 1 to this. TRUTH_GARDENS=50 tries the report out. */
const GARDENS = Math.min(500, Number(process.env.TRUTH_GARDENS ?? 500));
const DRAWS = 1000;

const LIMITS: Limits = { right: { low: 0.87, high: 0.95 }, broken: { low: 0.83, high: 1 } };
/** Of two differences little is known of how far varieties spread. */
const LIMITS_OF_THREE: Limits = { ...LIMITS, broken: { low: 0.8, high: 1 } };
/** Of 20: how much less often than said a claim may come true where truths come from the priors. */
const BOLD_BY = 1.5;
/** Fewer claims of a kind are printed and not judged: 200 of them stray by half of 20 by lot, 50 by more than one. */
const FEWEST_CLAIMS = 200;
/** Where a fit is quick, claims are read off so many times the gardens: seeds from the last on. */
const MORE_GARDENS = 6;
/** Fewer goings are printed and not judged. */
const FEWEST_GOINGS = 50;
/** Of varieties told to go, at most this share may be better than the yardstick: what the rule says of each of them. */
const GOES_WRONGLY = 0.1;
/** A list is worth its ink when it falls short by at most this share of what one drawn by lot does. */
const OF_LOT = 0.75;
/** Standard errors by which our list may lie behind the raw one and still count as no worse. */
const SAME_WITHIN = 2;

const lists = new Map<ListSetting, JudgedList[]>();
function listsOf(setting: ListSetting): JudgedList[] {
  const known = lists.get(setting) ?? Array.from({ length: GARDENS }, (_, at) => judgedList(setting, at + 1, DRAWS));
  lists.set(setting, known);
  return known;
}

const quickLists = (setting: ListSetting): JudgedList[] =>
  setting.traits.some((trait) => trait === 'brix')
    ? []
    : Array.from({ length: (MORE_GARDENS - 1) * GARDENS }, (_, at) =>
        judgedList(setting, GARDENS + at + 1, DRAWS, false),
      );

const limitsOf = ({ varieties }: ListSetting): Limits => (varieties === 3 ? LIMITS_OF_THREE : LIMITS);

console.log(`\n${tableHead(LIMITS)}`);
console.log('Here width is the mean width itself, in what one fruit (or mound) differs from the next.');

test.each(LIST_SETTINGS)('ranges of differences, and of what a season left out brought: $name', (setting) => {
  const limits = limitsOf(setting);
  const told = listsOf(setting);
  const kinds = [
    ['differences', told.map((one) => one.differences)],
    ['left out', told.map((one) => one.held_out)],
  ] as const;
  const within = kinds.map(([name, ranges]) => {
    if (ranges.flat().length === 0) return { name, within: true };
    const coverage = coverageOf(ranges);
    console.log(tableRow(limits, setting, GARDENS, name, coverage));
    return { name, within: isWithin(limits, setting, coverage) };
  });
  expect(within).toEqual(kinds.map(([name]) => ({ name, within: true })));
});

test.each(LIST_SETTINGS)('claims of 16 of 20 and more come true as often as they say: $name', (setting) => {
  const rows = claimRows([...listsOf(setting), ...quickLists(setting)]);
  console.log(setting.name);
  for (const { seasons, said, made, came_true, lasted } of rows)
    console.log(
      `  ${seasons} shared seasons: ${made} claims of ${said} in 20 came true ${came_true.toFixed(1)} in 20, for good ${lasted.toFixed(1)}`,
    );
  if (setting.model === 'broken') return;
  const bold = rows.filter(
    ({ made, said, came_true, lasted }) => made >= FEWEST_CLAIMS && Math.min(came_true, lasted) < said - BOLD_BY,
  );
  expect(bold).toEqual([]);
});

test.each(LIST_SETTINGS)('varieties told to go are hardly ever better than the yardstick: $name', (setting) => {
  const goes = listsOf(setting).flatMap((one) => one.goes);
  const wrongly = goes.filter((one) => one.wrongly).length;
  console.log(`${setting.name}\n  ${goes.length} told to go, ${wrongly} of them better than the yardstick`);
  if (setting.model === 'right' && goes.length >= FEWEST_GOINGS)
    expect(wrongly / goes.length).toBeLessThanOrEqual(GOES_WRONGLY);
});

test.each(LIST_SETTINGS)('the list beats raw means, and both a draw by lot, in the season after: $name', (setting) => {
  const { lists: judged, ours, raw, lot, behind_raw } = regretMeans(listsOf(setting));
  console.log(`${setting.name}\n  ${judged} lists; short of the best list of that length, in fruits:`);
  const row = (name: string, { average, best }: Short): void =>
    console.log(`  ${name.padEnd(8)} average member ${average.toFixed(3)}, best member ${best.toFixed(3)}`);
  row('ours', ours);
  row('raw', raw);
  row('by lot', lot);
  for (const of of ['average', 'best'] as const) {
    const { mean, se } = behind_raw[of];
    console.log(`  ${of}: behind the raw list by ${mean.toFixed(3)} ± ${se.toFixed(3)}`);
    expect(mean).toBeLessThanOrEqual(SAME_WITHIN * se);
  }
  expect(ours.average).toBeLessThanOrEqual(OF_LOT * lot.average);
  expect(raw.average).toBeLessThanOrEqual(OF_LOT * lot.average);
});
