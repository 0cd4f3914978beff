import type { Facts } from '../../src/book/chapter.ts';
import { column, type Table } from '../../src/book/table.ts';
import { addDays } from '../../src/day.ts';
import type { SeasonWater } from '../../src/ledger/water/season-water.ts';
import type { TankPlan } from '../../src/ledger/water/tank-plan.ts';

/** Levels of the tank over past years, day by day: the chart's numbers. */
export const levelsTable = ({ first, band }: TankPlan): Table => ({
  id: 'tank-levels',
  title: 'Litres in the tank at the end of each day, over past years',
  columns: [
    column('date', 'Date'),
    column('lowest_l', 'Driest year', 'l'),
    column('middle_l', 'Middle year', 'l'),
    column('highest_l', 'Wettest year', 'l'),
  ],
  rows: band.map(({ lowest_l, middle_l, highest_l }, day) => [addDays(first, day), lowest_l, middle_l, highest_l]),
});

/** When each past year would have run dry, dated in the year of the plan; blank where it would not. */
const replayTable = ({ first, replay, thirstier }: TankPlan): Table => {
  const dayOf = (dry_day: number | null | undefined) => (dry_day == null ? null : addDays(first, dry_day));
  return {
    id: 'tank-replay',
    title: 'The day the tank would have run dry in each past year',
    columns: [
      column('year', 'Year'),
      column('dry_on', 'Dry on'),
      column('dry_on_with_a_fifth_more', 'Dry on, with a fifth more wanted'),
    ],
    rows: replay.years.map(({ label, dry_day }, index) => [
      label,
      dayOf(dry_day),
      dayOf(thirstier.years[index]?.dry_day),
    ]),
  };
};

/** Every dip, with what roof and cans make of the dip before it; blank where some day's rain was not told. */
const dipsTable = (seasons: readonly SeasonWater[]): Table => ({
  id: 'tank-dips',
  title: 'Dips of the tank against what was reckoned',
  columns: [
    column('season', 'Season'),
    column('dipped_on', 'Dipped on'),
    column('found_l', 'Found', 'l'),
    column('reckoned_l', 'Reckoned from the dip before', 'l'),
    column('days', 'Days since that dip', 'days'),
  ],
  rows: seasons.flatMap(({ season, dips }) =>
    (dips?.dips ?? []).map((dip) => {
      const pair = dips?.pairs.find(({ to }) => to === dip);
      return [season.label, dip.day, dip.litres, pair?.reckoned_l ?? null, pair?.days ?? null];
    }),
  ),
});

/** Tables of the tank beside the chart's own, which is among them where no chart is drawn. */
export function tankTables({ ledger: { water }, garden: { about } }: Facts): Table[] {
  if (!water?.tank) return [];
  const { tank_plan } = water;
  const dips = dipsTable(water.seasons);
  return [
    ...(tank_plan ? [replayTable(tank_plan)] : []),
    ...(tank_plan && about.edition !== 'community' ? [levelsTable(tank_plan)] : []),
    ...(dips.rows.length > 0 ? [dips] : []),
  ];
}
