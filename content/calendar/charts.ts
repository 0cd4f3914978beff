import type { Facts } from '../../src/book/chapter.ts';
import type { Chart } from '../../src/book/chart.ts';
import { yearBands } from '../../src/charts/year-bands.ts';
import { addDays, type Day } from '../../src/day.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { type CropYear, YEAR_STEPS, type YearBand, type YearStep } from '../../src/ledger/year/crop-year.ts';
import { yearTable } from './tables.ts';

const LABELS: Readonly<Record<YearStep, string>> = {
  sow: 'sow',
  'plant-out': 'plant out',
  mulch: 'mulch',
  'feed-leaf': 'feed for leaf',
  set: 'fruit sets',
  pick: 'pick',
};

type DatedBand = YearBand & { readonly first: Day; readonly last: Day };

/** Days of room on both sides of the first and the last band. */
const ROOM = 7;

/** One crop's year as bars; null where no date is known. */
export function yearChart({ garden, today, format }: Facts, year: CropYear): Chart | null {
  const bands = YEAR_STEPS.flatMap((step) => year.bands[step] ?? []).filter(isDated);
  if (bands.length === 0) return null;
  const { many } = cropNames(year.crop, garden.about.locale);
  const days = bands.flatMap(({ first, last }) => [first, last]).sort();
  return {
    id: `calendar-${year.crop.id.toLowerCase()}`,
    title: `The year of our ${many}${year.plan ? `, ${year.plan.label}` : ''}`,
    description: bands.map(({ step, first, last }) => `${LABELS[step]} ${format.daySpan(first, last)}`).join('; '),
    spec: yearBands(
      {
        first: addDays(days[0] as Day, -ROOM),
        last: addDays(days.at(-1) as Day, ROOM),
        rows: bands.map(({ step, first, last, basis }) => ({ label: LABELS[step], first, last, own: basis === 'own' })),
        today,
      },
      format,
    ),
    table: yearTable(year),
  };
}

const isDated = (band: YearBand): band is DatedBand => band.first !== null && band.last !== null;
