import type { Dated } from './dated.ts';
import { type Day, dateOf, monthOf, yearOf } from './day.ts';
import type { FigureUnit, Interval } from './figure.ts';
import { fromSi } from './units.ts';

/** Value, unit system and locale in; text out. The only place that rounds. */

export type UnitSystem = 'metric' | 'us';

export interface Style {
  readonly units: UnitSystem;
  /** BCP 47 tag, for instance en-GB. */
  readonly locale: string;
}

interface PrintUnit {
  readonly toPrint: (si: number) => number;
  readonly label: string;
  /** Decimals when the value is under ten; from ten on one fewer. */
  readonly decimals: number;
  /** Leave a last nought away: 34, but 29.8. */
  readonly trim?: boolean;
}

const whole = (label: string): PrintUnit => ({ toPrint: (value) => value, label, decimals: 0 });
const scaled = (label: string, decimals: number, toPrint: (si: number) => number): PrintUnit => ({
  toPrint,
  label,
  decimals,
});
const same = (value: number): number => value;
const pounds = (kg: number): number => fromSi('mass', 'lb', kg);
const squareFeet = (m2: number): number => fromSi('area', 'ft2', m2);

const COUNTS = {
  fruits: whole('fruits'),
  plants: whole('plants'),
  spots: whole('spots'),
  days: whole('days'),
  nights: whole('nights'),
  place: whole('place'),
  brix: scaled('°Brix', 1, same),
  of_ten: whole('of ten'),
  of_twenty: whole('of twenty'),
  steps: scaled('steps', 1, same),
  times: scaled('times', 1, same),
  seeds: whole('seeds'),
  barrows: scaled('barrows', 1, same),
  cans: whole('cans'),
  weeks: whole('weeks'),
  hours: { ...scaled('hours', 1, same), trim: true },
  minutes: { ...scaled('minutes', 1, same), trim: true },
  years: whole('years'),
  fruits_per_plant: scaled('fruits a plant', 1, same),
};

const PRINT_UNITS: Record<UnitSystem, Record<FigureUnit, PrintUnit>> = {
  metric: {
    ...COUNTS,
    kg: scaled('kg', 1, same),
    kg_per_plant: scaled('kg a plant', 1, same),
    fruits_per_m2: scaled('fruits a m²', 1, same),
    kg_per_m2: scaled('kg a m²', 1, same),
    m: scaled('m', 1, same),
    m2: scaled('m²', 1, same),
    mm: scaled('mm', 0, same),
    c: { ...scaled('°C', 1, same), trim: true },
    brix_per_mm: scaled('°Brix for 10\u00a0mm', 2, (value) => 10 * value),
    mean_c: scaled('°C', 1, same),
    c_days: scaled('°C·days', 0, same),
    l: scaled('litres', 0, same),
    l_per_week: scaled('litres a week', 0, same),
    l_per_kg: scaled('litres a kg', 0, same),
    cm: scaled('cm', 0, same),
    g_per_m2: scaled('g a m²', 1, same),
    mm_per_day: scaled('mm a day', 1, same),
  },
  us: {
    ...COUNTS,
    kg: scaled('lb', 1, pounds),
    kg_per_plant: scaled('lb a plant', 1, pounds),
    fruits_per_m2: scaled('fruits a ft²', 2, (value) => value / squareFeet(1)),
    kg_per_m2: scaled('lb a ft²', 1, (value) => pounds(value) / squareFeet(1)),
    m: scaled('ft', 0, (value) => fromSi('height', 'ft', value)),
    m2: scaled('ft²', 0, squareFeet),
    mm: scaled('in', 1, (value) => fromSi('rain', 'in', value)),
    c: { ...scaled('°F', 1, (value) => fromSi('temperature', 'f', value)), trim: true },
    brix_per_mm: scaled('°Brix an inch', 2, (value) => 25.4 * value),
    mean_c: scaled('°F', 1, (value) => fromSi('temperature', 'f', value)),
    c_days: scaled('°F·days', 0, (value) => fromSi('temperature', 'f', value) - fromSi('temperature', 'f', 0)),
    l_per_kg: scaled('gallons a lb', 1, (value) => fromSi('volume', 'gal', value) / pounds(1)),
    l: scaled('gallons', 0, (value) => fromSi('volume', 'gal', value)),
    l_per_week: scaled('gallons a week', 0, (value) => fromSi('volume', 'gal', value)),
    cm: scaled('in', 0, (value) => fromSi('length', 'in', value)),
    g_per_m2: scaled('lb a 100 ft²', 2, (value) => (100 * pounds(value / 1000)) / squareFeet(1)),
    mm_per_day: scaled('in a day', 2, (value) => fromSi('rain', 'in', value)),
  },
};

/** Rates, sugar and mean temperatures keep one decimal at any size, so that a column of them lines up. */
const RATES: readonly FigureUnit[] = [
  'kg_per_plant',
  'fruits_per_plant',
  'fruits_per_m2',
  'kg_per_m2',
  'brix',
  'steps',
  'times',
  'mean_c',
  'brix_per_mm',
];

export interface Format {
  /** A value in its SI unit as digits in the print unit, without the unit. */
  readonly digits: (value: number, unit: FigureUnit) => string;
  /** The same with the unit after it, never parted from it at a line's end. */
  readonly amount: (value: number, unit: FigureUnit) => string;
  /** "3.1 to 6.4", both ends with the same decimals. */
  readonly range: (interval: Interval, unit: FigureUnit) => string;
  /** A difference: "2.1 more", "0.4 less", "the same", with the sign in words; of a ratio "1.4 times". */
  readonly difference: (value: number, unit: FigureUnit) => string;
  /** A value as a scale shows it, with one decimal at any size. */
  readonly tenths: (value: number, unit: FigureUnit) => string;
  /** A threshold or base as its keeper set it: up to three digits, none added. */
  readonly setting: (value: number, unit: FigureUnit) => string;
  readonly unitLabel: (unit: FigureUnit) => string;
  readonly toPrint: (value: number, unit: FigureUnit) => number;
  readonly count: (value: number) => string;
  /** A plain decimal that is no figure, for instance a t quantile. */
  readonly decimal: (value: number, decimals: number) => string;
  /** "7 Aug", the month as a word. */
  readonly day: (value: Day) => string;
  /** "7 to 12 Aug", "28 Jul to 3 Aug", "7 Aug". */
  readonly daySpan: (first: Day, last: Day) => string;
  /** "Aug". */
  readonly month: (value: Day) => string;
  /** "7 Aug 2025". */
  readonly dayYear: (value: Day) => string;
  readonly dated: (value: Dated) => string;
  /** The same without its year. */
  readonly datedShort: (value: Dated) => string;
}

/** Throws RangeError for a locale that is no language tag. */
export function createFormat(style: Style): Format {
  const printUnits = PRINT_UNITS[style.units];
  const told = (print: number, unit: FigureUnit): string => {
    const { trim, decimals: most } = printUnits[unit];
    const decimals = trim ? most : decimalsFor(printUnits[unit], unit, print);
    return fixed(style.locale, print, decimals, trim ? 0 : decimals);
  };
  const digits = (value: number, unit: FigureUnit): string => {
    const print = printUnits[unit].toPrint(value);
    return told(print, unit);
  };
  const months = new Intl.DateTimeFormat(style.locale, { month: 'short', timeZone: 'UTC' });
  const monthWord = (value: Day): string => months.format(Date.UTC(2001, monthOf(value) - 1, 1)).replace(/\.$/, '');
  const monthFirst = style.locale === 'en-US';
  const day = (value: Day): string =>
    monthFirst ? `${monthWord(value)} ${dateOf(value)}` : `${dateOf(value)} ${monthWord(value)}`;
  const dayYear = (value: Day): string =>
    monthFirst ? `${day(value)}, ${yearOf(value)}` : `${day(value)} ${yearOf(value)}`;

  return {
    digits,
    amount: (value, unit) => `${digits(value, unit)}\u00a0${printUnits[unit].label}`,
    range: (interval, unit) => rangeText(style.locale, printUnits[unit], unit, interval),
    difference: (value, unit) => {
      if (unit === 'times') return `${digits(value, unit)}\u00a0${printUnits[unit].label}`;
      // The zero of °F is not that of °C: a difference takes the scale alone.
      const print = Math.abs(printUnits[unit].toPrint(value) - printUnits[unit].toPrint(0));
      return differenceText(told(print, unit), value);
    },
    tenths: (value, unit) => fixed(style.locale, printUnits[unit].toPrint(value), 1),
    setting: (value, unit) =>
      printUnits[unit]
        .toPrint(value)
        .toLocaleString(style.locale, { maximumSignificantDigits: 3 })
        .replace('-', '\u2212'),
    unitLabel: (unit) => printUnits[unit].label,
    toPrint: (value, unit) => printUnits[unit].toPrint(value),
    count: (value) => fixed(style.locale, value, 0),
    decimal: (value, decimals) => fixed(style.locale, value, decimals),
    day,
    daySpan: (first, last) => {
      if (first === last) return day(first);
      if (first.slice(0, 7) !== last.slice(0, 7)) return `${day(first)} to ${day(last)}`;
      return monthFirst ? `${day(first)} to ${dateOf(last)}` : `${dateOf(first)} to ${day(last)}`;
    },
    month: monthWord,
    dayYear,
    dated: (value) => datedText(value, dayYear, (month) => `${monthWord(month)} ${yearOf(month)}`),
    datedShort: (value) => datedText(value, day, monthWord),
  };
}

/** With a capital at its head. */
export const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

function fixed(locale: string, value: number, decimals: number, fewest = decimals): string {
  // A half that the change of units moved by a last bit is still a half.
  const rounded = Math.abs(value) < 0.5 * 10 ** -decimals ? 0 : value * (1 + 1e-12);
  return numberFormat(locale, fewest, decimals).format(rounded).replace('-', '\u2212');
}

/** Making one takes far longer than using it, and a book prints thousands of numbers in a handful of ways. */
function numberFormat(locale: string, fewest: number, most: number): Intl.NumberFormat {
  const key = `${locale} ${fewest} ${most}`;
  const known = numberFormats.get(key);
  if (known) return known;
  const made = new Intl.NumberFormat(locale, { minimumFractionDigits: fewest, maximumFractionDigits: most });
  numberFormats.set(key, made);
  return made;
}

const numberFormats = new Map<string, Intl.NumberFormat>();

function decimalsFor(print: PrintUnit, unit: FigureUnit, value: number): number {
  if (RATES.includes(unit) || Number(Math.abs(value).toFixed(print.decimals)) < 10) return print.decimals;
  return Math.max(print.decimals - 1, 0);
}

function rangeText(locale: string, print: PrintUnit, unit: FigureUnit, interval: Interval): string {
  const [low, high] = [print.toPrint(interval.low), print.toPrint(interval.high)];
  const decimals = decimalsFor(print, unit, high);
  return `${fixed(locale, low, decimals)} to ${fixed(locale, high, decimals)}`;
}

function differenceText(size: string, value: number): string {
  if (!/[1-9]/.test(size)) return 'the same';
  return `${size} ${value > 0 ? 'more' : 'less'}`;
}

function datedText(value: Dated, dayYear: (day: Day) => string, monthWord: (day: Day) => string): string {
  switch (value.kind) {
    case 'unknown':
      return 'not known';
    case 'day':
      return dayYear(value.first);
    case 'about':
      return `about ${dayYear(value.first)}`;
    case 'span':
      return `${dayYear(value.first)} to ${dayYear(value.last)}`;
    case 'month':
      return monthWord(value.first);
  }
}
