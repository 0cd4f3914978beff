import type { Day } from '../../day.ts';
import { because, type Figure, type FigureUnit, happened, type Reason } from '../../figure.ts';
import type { Fruit, Planting, Season, Variety } from '../../garden/garden.ts';
import { type Kept, keptOr } from '../../kept.ts';
import type { Quantile } from '../../statistics/survival/quantile.ts';
import type { RipeTime } from '../../statistics/survival/ripe-time.ts';
import { type RipeTimes, ripeTimes } from '../../statistics/survival/ripe-times.ts';
import type { Bases } from '../bases.ts';
import type { HeatBetween } from '../weather/heat-record.ts';
import { inDays, inHeat, type Length, ripeObservation } from './ripe-observation.ts';
import { type Ripening, ripeningOf } from './ripening.ts';
import { type SetDay, setDayOf, spanOf } from './set-day.ts';

/** What time is counted from. */
export type Origin = 'set' | 'planting' | 'sowing';
export const ORIGINS: readonly Origin[] = ['set', 'planting', 'sowing'];

/** How long ripening took: the first ripe one, the middle of all, and the last. */
export interface Duration {
  readonly earliest: Figure;
  readonly middle: Figure;
  readonly last: Figure;
  /** Fruits with both days known well enough. */
  readonly n: number;
  readonly spots: number;
}

export interface VarietyMaturity {
  readonly variety: Variety;
  /** Fruits that set, as the register has them. */
  readonly set: Figure;
  /** Of them found or called ripe, or found over. */
  readonly ripened: Figure;
  readonly days: Readonly<Record<Origin, Duration>>;
  readonly heat: Readonly<Record<Origin, Duration>>;
  /** Days from set to ripe of the fruits whose days are known to the day, the shortest first. */
  readonly single_days: readonly number[];
}

interface Account {
  readonly season: Season;
  readonly today: Day;
  readonly bases: Bases;
  readonly kept: Kept;
  /** Null without a station. */
  readonly heat: HeatBetween | null;
}

interface Told {
  readonly planting: Planting;
  readonly fruit: Fruit;
  readonly ripening: Ripening;
}

/** Ripening of one variety in one season, from the fruits of its register. */
export function varietyMaturity(account: Account, variety: Variety): VarietyMaturity {
  const { season, bases, kept, today } = account;
  const plantings = season.plantings.filter((planting) => planting.variety?.id === variety.id);
  const fruits = plantings.flatMap((planting) => planting.fruits.map((fruit) => ({ planting, fruit })));
  const told = fruits.flatMap(({ planting, fruit }) => {
    const ripening = ripeningOf(fruit, today);
    return ripening ? [{ planting, fruit, ripening }] : [];
  });
  const stem = `maturity.${season.slug}.variety.${variety.id}`;
  const basis = bases.of([...plantings, ...fruits.map(({ fruit }) => fruit)].map(({ key }) => key));
  const figure = (name: string, unit: FigureUnit, value: number | null, n: number, reason: Reason | null): Figure =>
    happened({ id: `${stem}.${name}`, value, unit, n, method: 'ripe-times', basis, reason });
  const durations = (unit: FigureUnit, name: string, length: Length | null): Record<Origin, Duration> =>
    Object.fromEntries(
      ORIGINS.map((origin) => {
        const used = length ? told.flatMap((one) => observationOf(one, origin, length)) : [];
        const found = printedTimes(
          used.map(({ time }) => time),
          kept,
        );
        const spots = new Set(used.map(({ planting }) => planting.spot.id)).size;
        const at = (what: 'earliest' | 'middle' | 'last'): Figure => {
          const { value, reason } = found === null ? nothing(length) : toldBy(quantileFor(found, what), used);
          const made = figure(`${origin}_${name}_${what}`, unit, value, used.length, reason);
          return { ...made, replicate: spots > 0 ? { kind: 'spot', count: spots } : null };
        };
        return [origin, { earliest: at('earliest'), middle: at('middle'), last: at('last'), n: used.length, spots }];
      }),
    ) as Record<Origin, Duration>;
  const ripe = told.filter(({ ripening }) => ripening.kind !== 'not-yet');
  return {
    variety,
    set: figure('set_fruits', 'fruits', fruits.length, fruits.length, null),
    ripened: figure('ripe_fruits', 'fruits', ripe.length, fruits.length, null),
    days: durations('days', 'days', inDays),
    heat: durations('c_days', 'heat', account.heat && inHeat(account.heat)),
    single_days: told.flatMap(singleDays).sort((a, b) => a - b),
  };
}

/** Null when there is nothing to estimate from. */
function printedTimes(times: readonly RipeTime[], kept: Kept): PrintedTimes | null {
  return keptOr(kept, 'fits', JSON.stringify(['ripe-times', times]), () => {
    const found = ripeTimes(times);
    return 'cannot' in found ? null : { median: found.median, earliest: found.earliest, latest: found.latest };
  });
}

const originOf = ({ planting, fruit }: Told, origin: Origin): SetDay | null => {
  if (origin === 'set') return setDayOf(fruit);
  return spanOf(origin === 'planting' ? planting.planted_on : planting.sown_on);
};

function observationOf(told: Told, origin: Origin, length: Length) {
  const from = originOf(told, origin);
  const time = from && ripeObservation(from, told.ripening, length);
  return time ? [{ planting: told.planting, time, about: from.about || told.ripening.on.kind === 'about' }] : [];
}

function singleDays(told: Told): number[] {
  const [found] = observationOf(told, 'set', inDays);
  return found && !found.about && found.time.low !== null && found.time.low === found.time.high ? [found.time.low] : [];
}

/** The three times a page prints of an estimate. */
type PrintedTimes = Pick<RipeTimes, 'median' | 'earliest' | 'latest'>;

const quantileFor = (found: PrintedTimes, what: 'earliest' | 'middle' | 'last'): Quantile =>
  what === 'middle' ? found.median : what === 'earliest' ? found.earliest : found.latest;

/** A span is told by its middle, as "about", and so is a time that a fruit with an "about" in its dates may have given. */
function toldBy(
  { span, reason }: Quantile,
  used: readonly { readonly time: RipeTime; readonly about: boolean }[],
): { value: number | null; reason: Reason | null } {
  if (!span) return { value: null, reason: because(reason?.code ?? 'none-seen') };
  const value = ((span.low ?? span.high) + span.high) / 2;
  const isGiven = ({ low, high }: RipeTime): boolean => low !== null && high !== null && low <= value && value <= high;
  const about = span.low !== span.high || used.some((one) => one.about && isGiven(one.time));
  return { value, reason: about ? because('about') : null };
}

const nothing = (length: Length | null): { value: null; reason: Reason } => ({
  value: null,
  reason: because(length ? 'days-unknown' : 'no-thermometer'),
});
