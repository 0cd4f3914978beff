import { z } from 'zod';
import { type Dated, parseDated } from '../../dated.ts';
import { type Day, parseDay } from '../../day.ts';
import { refuse } from './refuse.ts';

interface Heading {
  readonly title: string;
  readonly description?: string;
}

const DAY_MONTH_YEAR = /^(\d{1,2})[/.-](\d{1,2})[/.-](\d{4})$/;
const LOOSE_ISO = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/;
const EARLIEST = '1900-01-01';
const LATEST = '2199-12-31';

/** A date in the one grammar of all records: a day, about a day, a span, a month, or unknown. */
export const when = (heading: Heading) =>
  z
    .string()
    .transform((text, context): Dated => {
      const found = parseDated(text.trim());
      if (!found)
        return refuseDate(context, text.trim(), 'or about 2025-08-12, 2025-08-10..2025-08-14, 2025-08, unknown');
      if (found.first && (found.first < EARLIEST || found.last > LATEST)) return refuseYear(context, text);
      return found;
    })
    .meta({ ...heading, format: 'dated' });

/** A date that has to be one day: a season's edge, the day a record was written, a weather row. */
export const exactDay = (heading: Heading) =>
  z
    .string()
    .transform((text, context): Day => {
      const found = parseDay(text.trim());
      if (!found) return refuseDate(context, text.trim(), 'one exact day');
      if (found < EARLIEST || found > LATEST) return refuseYear(context, text);
      return found;
    })
    .meta({ ...heading, format: 'date' });

function refuseYear(context: z.RefinementCtx, text: string): never {
  return refuse(context, 'year-out-of-range', `"${text}" is outside the years 1900 to 2199`, 'check the year');
}

function refuseDate(context: z.RefinementCtx, text: string, forms: string): never {
  const ordered = DAY_MONTH_YEAR.exec(text);
  if (ordered) return refuseOrder(context, text, ordered);
  const loose = LOOSE_ISO.exec(text);
  if (loose) {
    const iso = `${loose[1]}-${loose[2]?.padStart(2, '0')}-${loose[3]?.padStart(2, '0')}`;
    if (parseDay(iso)) return refuse(context, 'date-form', `"${text}" is not written year-month-day`, `write ${iso}`);
    return refuse(context, 'no-such-day', `there is no day ${text}`, `write year-month-day: 2025-08-12, ${forms}`);
  }
  return refuse(context, 'date-form', `"${text}" is not a date`, `write year-month-day: 2025-08-12, ${forms}`);
}

/** Never guesses which of two small numbers is the month: it offers each reading that exists. */
function refuseOrder(context: z.RefinementCtx, text: string, [, a = '', b = '', year = '']: RegExpExecArray): never {
  const iso = (month: string, date: string): string => `${year}-${month.padStart(2, '0')}-${date.padStart(2, '0')}`;
  const readings = [...new Set([iso(b, a), iso(a, b)])].filter((reading) => parseDay(reading));
  return refuse(
    context,
    'date-order',
    readings.length > 1 ? `"${text}" can be read in more than one order` : `"${text}" is not written year-month-day`,
    readings.length > 0 ? `write ${readings.join(' or ')}` : 'write year-month-day, like 2025-08-12',
  );
}
