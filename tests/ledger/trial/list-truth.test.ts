import { expect, test } from 'vitest';
import { type JudgedList, judgedList } from '../../truth/variety-shortlist-judged.ts';
import { LIST_SETTINGS } from '../../truth/variety-shortlist-settings.ts';
import { claimRows, regretMeans } from '../../truth/variety-shortlist-told.ts';

const GARDENS = 40;
/** Other than those of the slow report. */
const FIRST_SEED = 5001;

function listsOf(name: string): JudgedList[] {
  const setting = LIST_SETTINGS.find((one) => one.name === name);
  if (!setting) throw new Error(`no setting ${name}`);
  return Array.from({ length: GARDENS }, (_, at) => judgedList(setting, FIRST_SEED + at, 500));
}

test('forty gardens: bold claims come true, seasons left out fall within their ranges, the list beats a draw by lot', () => {
  const lists = listsOf('priors, plenty, 4 seasons');
  const rows = claimRows(lists);
  const made = rows.reduce((sum, one) => sum + one.made, 0);
  const of = (value: (row: (typeof rows)[number]) => number): number =>
    rows.reduce((sum, one) => sum + one.made * value(one), 0) / made;
  expect(made).toBeGreaterThan(100);
  // Of 20, by the limit of the slow report.
  expect(of(({ came_true }) => came_true)).toBeGreaterThan(of(({ said }) => said) - 1.5);

  const told = lists.flatMap((one) => one.held_out);
  const held = told.filter(({ interval, truth }) => interval && interval.low <= truth && truth <= interval.high);
  expect(told.length).toBeGreaterThan(300);
  // Nine in ten, less three standard errors of forty gardens.
  expect(held.length / told.length).toBeGreaterThan(0.83);
  expect(held.length / told.length).toBeLessThan(0.97);

  const { lists: judged, ours, raw, lot } = regretMeans(lists);
  expect(judged).toBeGreaterThan(30);
  expect(ours.average).toBeLessThan(0.5 * lot.average);
  expect(ours.best).toBeLessThan(0.5 * lot.best);
  // Summers differ and varieties come and go: raw means mistake one for the other.
  expect(ours.average).toBeLessThanOrEqual(raw.average);
});
