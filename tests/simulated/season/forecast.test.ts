import { expect, test } from 'vitest';
import { byHand, later } from './by-hand.ts';
import { departure } from './departure.ts';
import type { SeasonGarden } from './garden.ts';
import { gardensOf } from './gardens.ts';
import { settingNamed } from './settings.ts';
import { writtenVisits } from './written.ts';

const RIGHT = settingNamed('3 seasons in blocks');
const DARING = settingNamed('picked early before rain');

interface PickedDay {
  readonly rains: boolean;
  readonly readiness: number;
}

/** The days on which something was picked for the forecast, or for any other reason but damage and the season's end. */
function daysOf({ truth }: SeasonGarden, forecast: boolean, from_mm: number): PickedDay[] {
  const { rain } = byHand(truth);
  return truth.seasons.flatMap(({ fruits }) => {
    const picks = fruits.flatMap(({ pick, heats }) =>
      pick ? [{ ...pick, readiness: Math.log(pick.heat / heats.just_ripe) }] : [],
    );
    const own = picks.filter(({ reason }) => (forecast ? reason === 'forecast' : reason === 'ripe'));
    return [...new Set(own.map(({ picked_on }) => picked_on))].map((date) => {
      const that = own.filter(({ picked_on }) => picked_on === date);
      const readiness = that.reduce((sum, one) => sum + one.readiness, 0) / that.length;
      return { rains: rain(later(date, 1)) >= from_mm, readiness };
    });
  });
}

/** Share of days, of the months of picking, with so much rain. */
function usualShare(gardens: readonly SeasonGarden[], from_mm: number): number {
  const days = gardens.flatMap(({ truth }) => truth.weather.filter(({ date }) => /-0[789]-/.test(date)));
  return days.filter(({ rain_mm }) => rain_mm >= from_mm).length / days.length;
}

test('forecasts that know nothing: it rains after picking for them as often as ever', () => {
  const { from_mm } = RIGHT.keeping.walking.forecast;
  const gardens = gardensOf(RIGHT, 40);
  const days = gardens.flatMap((one) => daysOf(one, true, from_mm)).map(({ rains }) => Number(rains));
  expect(days.length).toBeGreaterThan(120);
  expect(Math.abs(departure(days, usualShare(gardens, from_mm)))).toBeLessThan(4);
});

test('forecasts that know: rain follows picking as often as they are right when they tell it', () => {
  const { from_mm, accuracy, says, daring } = DARING.keeping.walking.forecast;
  const gardens = gardensOf(DARING, 25);
  const days = gardens.flatMap((one) => daysOf(one, true, from_mm));
  const usual = usualShare(gardens, from_mm);
  // Told by those who know it, or by those who guess; and true of the second no more often than of any day.
  const [known, guessed] = [accuracy * usual, (1 - accuracy) * says];
  const right = (known + guessed * usual) / (known + guessed);
  const rains = days.map(({ rains }) => Number(rains));
  expect(Math.abs(departure(rains, right))).toBeLessThan(4);
  expect(departure(rains, usual)).toBeGreaterThan(4);
  // And what is picked so is less ripe than what is picked as ripe.
  const ripe = gardens.flatMap((one) => daysOf(one, false, from_mm));
  const mean = (all: readonly PickedDay[]): number => all.reduce((sum, one) => sum + one.readiness, 0) / all.length;
  expect(mean(ripe) - mean(days)).toBeGreaterThan(daring / 4);
});

test('walks fall on Wednesdays and Saturdays, on the last day, and on eves of rain that was told', () => {
  const odd: number[] = [];
  for (const garden of gardensOf(DARING, 10)) {
    const { rain } = byHand(garden.truth);
    for (const { slug, closes_on } of garden.truth.seasons)
      for (const { visited_on } of writtenVisits(garden.texts, slug)) {
        if ([3, 6].includes(new Date(visited_on).getUTCDay()) || visited_on === closes_on) continue;
        odd.push(Number(rain(later(visited_on, 1)) >= DARING.keeping.walking.forecast.from_mm));
      }
  }
  expect(odd.length).toBeGreaterThan(50);
  expect(departure(odd, 0.5)).toBeGreaterThan(4);
});
