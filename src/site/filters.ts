import MarkdownIt from 'markdown-it';
import type { Dated } from '../dated.ts';
import type { Day } from '../day.ts';
import type { Figure, FigureUnit, Interval } from '../figure.ts';
import { type Format, sentence } from '../format.ts';
import type { Messages } from './messages.ts';

export type Filters = Readonly<Record<string, (...inputs: never[]) => unknown>>;

/** What templates may do to a value. All rounding is in `format`; a figure without a value becomes its reason in a word. */
export function createFilters(format: Format, messages: Messages): Filters {
  const told = (figure: Figure, print: (value: number, unit: FigureUnit) => string): string => {
    if (figure.value === null) return messages(`short.${figure.reason?.code ?? 'no-values'}`);
    const text = print(figure.value, figure.unit);
    return figure.reason ? `${messages(`short.${figure.reason.code}`)} ${text}` : text;
  };
  const markdown = new MarkdownIt({ html: false, linkify: false, typographer: true }).disable(['image', 'link']);
  return {
    digits: (figure: Figure) => told(figure, format.digits),
    tenths: (figure: Figure) => told(figure, format.tenths),
    amount: (figure: Figure) => told(figure, format.amount),
    range: (figure: Figure) => (figure.interval ? format.range(figure.interval, figure.unit) : ''),
    between: (interval: Interval, unit: FigureUnit) => format.range(interval, unit),
    difference: (figure: Figure) => (figure.value === null ? '' : format.difference(figure.value, figure.unit)),
    apart: (value: number, unit: FigureUnit) => format.difference(value, unit),
    signed_range: (figure: Figure) => (figure.interval ? signedRange(format, figure.interval, figure.unit) : ''),
    value: (value: number, unit: FigureUnit) => format.digits(value, unit),
    setting: (value: number, unit: FigureUnit) => format.setting(value, unit),
    whole: (value: number, unit: FigureUnit) => format.decimal(format.toPrint(value, unit), 0),
    unit: (unit: FigureUnit) => format.unitLabel(unit),
    sentence,
    count: (value: number) => format.count(value),
    decimal: (value: number, decimals: number) => format.decimal(value, decimals),
    day: (value: Day) => format.day(value),
    day_span: (first: Day, last: Day) => format.daySpan(first, last),
    day_year: (value: Day) => format.dayYear(value),
    dated: (value: Dated) => format.dated(value),
    dated_short: (value: Dated) => format.datedShort(value),
    css_text: (text: string) => `"${text.replace(/["\\\n<>&]/g, (sign) => `\\${sign.codePointAt(0)?.toString(16)} `)}"`,
    prose: (text: string) => markdown.renderInline(text),
  };
}

/** "1.2 less to 3.4 more": the sign of each end in words. */
const signedRange = (format: Format, { low, high }: Interval, unit: FigureUnit): string =>
  `${format.difference(low, unit)} to ${format.difference(high, unit)}`;
