import { readilyAvailable } from '../../src/agronomy/soil-water.ts';
import type { Facts } from '../../src/book/chapter.ts';
import type { Chart } from '../../src/book/chart.ts';
import { givenAndWanted } from '../../src/charts/given-and-wanted.ts';
import { waterLevel } from '../../src/charts/water-level.ts';
import { measuresOf } from '../../src/garden/measures.ts';
import { ownStation } from '../../src/garden/own-station.ts';
import { thresholdsOf } from '../../src/garden/weather-settings.ts';
import { rootZoneOf } from '../../src/ledger/water/crop-water.ts';
import type { SeasonWater } from '../../src/ledger/water/season-water.ts';
import type { SpotWater } from '../../src/ledger/water/spot-water.ts';
import { readDay } from '../../src/ledger/weather/read-day.ts';
import { windowsOf } from '../../src/ledger/weather/window.ts';
import { dailyTable, weeklyTable, weeksOf } from './tables.ts';

/** What was left for the roots of one spot, day by day; null without the soil's figures. */
export function levelChart({ garden, format }: Facts, { season }: SeasonWater, spot: SpotWater): Chart | null {
  const zone = rootZoneOf(spot.water);
  const station = ownStation(garden);
  const [first, last] = [spot.days[0]?.day, spot.days.at(-1)?.day];
  if (!zone || !station || !first || !last) return null;
  const { root_m2 } = spot.water.ground;
  const { can_l } = measuresOf(garden.about);
  const left = spot.days.map(({ step }) => (step ? (zone.taw_mm - step.end.root_mm) * root_m2 : null));
  const least = Math.min(...left.flatMap((litres) => litres ?? []));
  return {
    id: `water-level-${season.slug.toLowerCase()}`,
    title: `Water left for the roots of spot ${spot.spot.id}, ${season.label}`,
    description: `From ${format.amount((zone.taw_mm * root_m2) / can_l, 'cans')} when full down to ${format.amount(least / can_l, 'cans')}; ${spot.days.filter(({ given_l }) => given_l > 0).length} waterings.`,
    spec: waterLevel(
      {
        first,
        last,
        days: spot.days.map(({ rain }, index) => ({ left_l: left[index] ?? null, unread: rain.told === 'not' })),
        full_l: zone.taw_mm * root_m2,
        harmed_below_l: (zone.taw_mm - readilyAvailable(zone.taw_mm, zone.depletion_share)) * root_m2,
        rain: {
          days: windowsOf(station)(first, last).days.map(readDay),
          labelled_mm: thresholdsOf(garden.about).soaking_day_mm,
        },
        given_l: spot.days.map(({ given_l }) => given_l),
        can_l,
      },
      format,
    ),
    table: dailyTable(season, [spot], 'level'),
  };
}

/** What one spot was given and had of rain, week by week, against what it wanted; null before its first week is over. */
export function weeksChart({ format }: Facts, { season }: SeasonWater, spot: SpotWater): Chart | null {
  const { root_m2 } = spot.water.ground;
  const weeks = weeksOf(spot.days).filter(({ days }) => days.length === 7);
  if (weeks.length === 0) return null;
  return {
    id: `water-weeks-${season.slug.toLowerCase()}`,
    title: `Given and wanted, spot ${spot.spot.id}, ${season.label}`,
    description: `${weeks.length} weeks of water given, rain and water wanted, in litres.`,
    spec: givenAndWanted(
      {
        weeks: weeks.map(({ first, days }) => ({
          first,
          wanted_l: days.reduce((sum, { wanted_l }) => sum + wanted_l, 0),
          given_l: days.reduce((sum, { given_l }) => sum + given_l, 0),
          rain_l: days.some(({ rain }) => rain.told === 'not')
            ? null
            : days.reduce((sum, { rain }) => sum + rain.rain_mm * root_m2, 0),
        })),
      },
      format,
    ),
    table: weeklyTable(season, [spot], 'weeks'),
  };
}
