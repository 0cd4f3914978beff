import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { Facts, QuestionChapter } from '../../src/book/chapter.ts';
import { shortCites } from '../../src/book/cites.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import { whenLines } from '../../src/book/when-line.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { measuresOf } from '../../src/garden/measures.ts';
import { ownStation } from '../../src/garden/own-station.ts';
import { type MonthRecord, monthRecords } from '../../src/ledger/water/month-record.ts';
import { cropNeed, type MonthNeed } from './crop-need.ts';
import { needTable } from './tables.ts';

/** Watering is due when so much of the soil is dry: common practice, no source. */
const FINGER_CM = 5;

/** How much water? The finger first; then the need at full leaf by month, from the long record of warmth. */
export const water: QuestionChapter = {
  kind: 'question',
  id: 'water',
  write(facts) {
    const { garden, ledger, reference } = facts;
    const { locale } = garden.about;
    const records = monthRecords(garden) ?? [];
    const basis = ledger.bases.of(recordKeys(facts));
    const needs = ledger.years.flatMap((year) => cropNeed(facts, year, records, basis) ?? []);
    const table = needTable(needs);
    const { can_l, can_measured } = measuresOf(garden.about);
    return [
      {
        path: 'water/',
        chapter: 'water',
        template: 'water/index.njk',
        title: 'How much water?',
        finding: 'water/finding.njk',
        level: levelOf(facts, records),
        model: {
          finger_cm: FINGER_CM,
          even: whenLines(ledger.years, 'set', locale),
          needs: needs.map((need) => ({ ...need, read: need.months.filter(isRead) })),
          unread: [
            ...new Set(needs.flatMap(({ months }) => months.filter((one) => !isRead(one)).map(({ label }) => label))),
          ],
          /** Crops without a number beside others that have one. */
          unknown:
            needs.length === 0
              ? []
              : ledger.years.flatMap(({ crop }) =>
                  needs.some(({ id }) => id === crop.id) ? [] : [cropNames(crop, locale).many],
                ),
          lacks: needs.length > 0 ? null : lackingOf(facts),
          can_l,
          can_measured,
          has_rain: needs.some(({ months }) => months.some(({ rain_l_per_week }) => rain_l_per_week.value !== null)),
          cites: shortCites(
            reference,
            ledger.years.flatMap(({ crop }) => crop.water?.sources ?? []),
          ),
        },
        charts: [],
        tables: table.rows.length > 0 ? [table] : [],
        figures: needs.flatMap(({ months }) =>
          months.flatMap(({ eto, l_per_week, cans_per_week, rain_l_per_week }) => [
            eto,
            l_per_week,
            cans_per_week,
            rain_l_per_week,
          ]),
        ),
        cautions: cautionsAt(reference, 'watering'),
        listed: true,
      },
    ];
  },
};

const isRead = ({ l_per_week }: MonthNeed): boolean => l_per_week.value !== null;

/** The whole record of the station stands under every figure. */
function recordKeys({ garden }: Facts): string[] {
  const station = ownStation(garden);
  const [first, last] = [station?.days[0]?.date, station?.days.at(-1)?.date];
  return station && first && last ? [`weather/${station.id}/${first}..${last}`] : [];
}

/** The first thing that is missing for a number. */
function lackingOf({ garden, ledger }: Facts): 'trait' | 'season' | 'thermometer' | 'place' | 'years' {
  const { years } = ledger;
  if (years.length > 0 && years.every(({ crop }) => crop.water === null)) return 'trait';
  if (garden.seasons.length === 0 || years.length === 0) return 'season';
  const days = ownStation(garden)?.days ?? [];
  if (!days.some(({ tmin_c, tmax_c }) => tmin_c !== null && tmax_c !== null)) return 'thermometer';
  return garden.about.place === null ? 'place' : 'years';
}

/** The rain in words, then a gauge and a thermometer, then five years of them. */
function levelOf({ garden }: Facts, records: readonly MonthRecord[]): RecordLevel {
  const days = ownStation(garden)?.days ?? [];
  return recordLevel('little', {
    little: days.length > 0,
    some:
      days.some(({ rain_mm }) => rain_mm !== null) &&
      days.some(({ tmin_c, tmax_c }) => tmin_c !== null && tmax_c !== null),
    full: records.some(({ eto_mm_per_day }) => eto_mm_per_day !== null),
  });
}
