import type { Facts } from '../../src/book/chapter.ts';
import { type Day, dayOf, monthOf, yearOf } from '../../src/day.ts';
import { because, type Figure, type FigureUnit, reckoned } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { Crop } from '../../src/garden/garden.ts';
import { measuresOf } from '../../src/garden/measures.ts';
import type { MonthRecord } from '../../src/ledger/water/month-record.ts';
import type { CropYear } from '../../src/ledger/year/crop-year.ts';
import { type Ground, groundOf } from './ground.ts';
import { type Rhythm, rhythmOf } from './rhythm.ts';

/** One month of the season that is planned, for one crop’s ground. */
export interface MonthNeed {
  /** Printed name of the month. */
  readonly label: string;
  readonly month: number;
  readonly eto: Figure;
  readonly l_per_week: Figure;
  readonly cans_per_week: Figure;
  /** Usual rain on the same ground. */
  readonly rain_l_per_week: Figure;
  /** Null without a need. */
  readonly rhythm: Rhythm | null;
}

export interface CropNeed {
  readonly id: string;
  readonly names: { readonly one: string; readonly many: string };
  readonly ground: Ground;
  readonly kc: number;
  readonly months: readonly MonthNeed[];
  /** The thirstiest month. */
  readonly peak: MonthNeed;
}

const DAYS_A_WEEK = 7;

/** A crop without coefficients or ground, or a record without a month told, has no need that can be reckoned. */
export function cropNeed(
  facts: Facts,
  year: CropYear,
  records: readonly MonthRecord[],
  basis: string,
): CropNeed | null {
  const { garden, format } = facts;
  const { crop } = year;
  const ground = groundOf(garden, crop);
  if (!crop.water || !ground) return null;
  const kc = crop.water.kc_middle;
  const { can_l } = measuresOf(garden.about);
  const months = monthsOf(year).flatMap((first): MonthNeed[] => {
    const record = records.find(({ month }) => month === monthOf(first));
    if (!record) return [];
    const figure = figuresOf(crop, record, basis);
    const { eto_mm_per_day: eto, rain_mm_per_day: rain } = record;
    // A millimetre on a square metre is a litre.
    const l_per_day = eto === null ? null : eto * kc * ground.area_m2;
    const weekly = (l: number | null): number | null => l && l * DAYS_A_WEEK;
    const cans = l_per_day === null ? null : (l_per_day * DAYS_A_WEEK) / can_l;
    return [
      {
        label: format.month(first),
        month: record.month,
        eto: figure('eto', eto, 'mm_per_day', 'thirst-of-air'),
        l_per_week: figure('l_per_week', weekly(l_per_day), 'l', 'water-need'),
        cans_per_week: figure('cans_per_week', cans, 'cans', 'water-need'),
        rain_l_per_week: figure(
          'rain_l_per_week',
          weekly(rain === null ? null : rain * ground.area_m2),
          'l',
          'water-need',
        ),
        rhythm: l_per_day === null ? null : rhythmOf(l_per_day / can_l),
      },
    ];
  });
  const [peak] = [...months].sort((a, b) => (b.l_per_week.value ?? -1) - (a.l_per_week.value ?? -1));
  if (!peak || peak.l_per_week.value === null) return null;
  return { id: crop.id, names: cropNames(crop, garden.about.locale), ground, kc, months, peak };
}

/** First days of the months from planting out, or the season’s start, to the season’s end. */
function monthsOf({ plan, planting_out }: CropYear): Day[] {
  if (!plan) return [];
  const from = planting_out?.first ?? plan.starts_on;
  const months: Day[] = [];
  for (
    let first = dayOf(yearOf(from), monthOf(from), 1);
    first <= plan.ends_on;
    first = dayOf(yearOf(first), monthOf(first) + 1, 1)
  )
    months.push(first);
  return months;
}

type FigureOf = (name: string, value: number | null, unit: FigureUnit, method: string) => Figure;

const figuresOf =
  ({ id }: Crop, { month, eto_years, rain_years }: MonthRecord, basis: string): FigureOf =>
  (name, value, unit, method) => {
    const years = name.startsWith('rain') ? rain_years : eto_years;
    return reckoned({
      id: `water.${id}.${String(month).padStart(2, '0')}.${name}${name === 'eto' ? '_mm_per_day' : ''}`,
      value,
      unit,
      n: years,
      replicate: { kind: 'year', count: years },
      method,
      source: name.startsWith('rain') ? null : 'fao-56',
      basis,
      reason: value === null ? because('few-years') : null,
    });
  };
