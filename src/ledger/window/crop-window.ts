import { type Day, daysBetween } from '../../day.ts';
import { because, type Figure, type Reason } from '../../figure.ts';
import type { Crop, Fruit, Garden, Planting, Season } from '../../garden/garden.ts';
import type { Kept } from '../../kept.ts';
import { naturally } from '../../natural-order.ts';
import type { Bases } from '../bases.ts';
import { setDayOf } from '../maturity/set-day.ts';
import { type YearAhead, yearsAhead } from './calendar-years.ts';
import { type CropCuts, cropCuts, cropFit, seasonOn } from './crop-fit.ts';
import {
  type FruitWindow,
  fruitWindow,
  type NoWindow,
  type Spread,
  type VineFruit,
  type WindowFit,
} from './fruit-window.ts';

/** A fruit still growing, and its window. */
export interface GrowingWindow {
  readonly planting: Planting;
  readonly fruit: Fruit;
  /** Null with `cannot`. */
  readonly window: FruitWindow | null;
  readonly cannot: Reason | null;
  /** Days from the day of the book until it is ripe, and until it is over, called or not. */
  readonly to_ripe: Figure;
  readonly to_over: Figure;
}

export interface CropWindow extends CropCuts {
  /** The season that runs on the day of the book; null between seasons. */
  readonly season: Season | null;
  readonly day: Day | null;
  /** Past years its heat is run through, or 1 for days. */
  readonly years: readonly YearAhead[];
  /** By spot, then id. */
  readonly growing: readonly GrowingWindow[];
}

/** The fruits of a crop that hang on the day of the book, each with its window or why it has none. */
export function cropWindow(garden: Garden, crop: Crop, day: Day | null, bases: Bases, kept: Kept): CropWindow {
  const own = cropCuts(garden, crop, day);
  const season = day && seasonOn(garden, day);
  if (!day || !season) return { ...own, season: null, day, years: [], growing: [] };
  const years = yearsAhead(own.clock, day, season.ends_on);
  const cutKeys = own.cut.map(({ fruit }) => fruit.key);
  const hanging = growingIn(season, crop);
  const fit = hanging.length > 0 ? cropFit(own, kept) : null;
  const growing = hanging.map(({ planting, fruit }): GrowingWindow => {
    const found = windowOf(own, fit, season, fruit, planting, day, years);
    const window = 'window' in found ? found.window : null;
    const cannot = 'window' in found ? null : found.cannot;
    const line = window && (window.called ?? window.line);
    const told = { id: `ripe.${crop.id}.window.${fruit.id}`, cut: cutKeys.length };
    const basis = bases.of([...cutKeys, fruit.key]);
    return {
      planting,
      fruit,
      window,
      cannot,
      to_ripe: spreadFigure({ ...told, id: `${told.id}.to_ripe`, basis }, line?.ripe ?? null, cannot),
      to_over: spreadFigure(
        { ...told, id: `${told.id}.to_over`, basis },
        line?.over ?? null,
        cannot ?? because('few-cut-over'),
      ),
    };
  });
  return { ...own, season, day, years, growing };
}

/** Fruits of a crop on the vine, by spot and then id. */
export const growingIn = ({ plantings }: Season, crop: Crop): { planting: Planting; fruit: Fruit }[] =>
  plantings
    .filter(({ variety }) => variety?.crop.id === crop.id)
    .flatMap((planting) =>
      planting.fruits.filter(({ fate }) => fate === 'growing').map((fruit) => ({ planting, fruit })),
    )
    .sort((a, b) => naturally(a.planting.spot.id, b.planting.spot.id) || naturally(a.fruit.id, b.fruit.id));

/** A fruit as its keepers know it; null where nobody knows when it set. */
export function vineFruit(season: Season, fruit: Fruit, planting: Planting, wrong: number): VineFruit | null {
  const set = setDayOf(fruit);
  if (!set) return null;
  const last = season.visits
    .flatMap(({ visited_on, fruits }) =>
      fruits.filter((look) => look.fruit === fruit.id && look.call !== null).map(({ call }) => ({ visited_on, call })),
    )
    .at(-1);
  const not_yet = last?.call === 'not-yet' && last.visited_on > set.last ? { on: last.visited_on, wrong } : null;
  return { variety: planting.variety?.id ?? '', set, not_yet };
}

function windowOf(
  { cannot, calls }: CropCuts,
  fit: WindowFit | null,
  season: Season,
  fruit: Fruit,
  planting: Planting,
  day: Day,
  years: readonly YearAhead[],
): { readonly window: FruitWindow } | { readonly cannot: Reason } {
  if (!fit) return { cannot: cannot ?? because('few-cut-open') };
  const vine = vineFruit(season, fruit, planting, calls.chance);
  if (!vine) return { cannot: because('no-set-day') };
  if (daysBetween(vine.set.first, day) <= 0) return { cannot: because('time-unknown') };
  const window = fruitWindow(fit, vine, day, years);
  return 'cannot' in window ? { cannot: refusalOf(window) } : { window };
}

function refusalOf({ cannot }: NoWindow): Reason {
  switch (cannot) {
    case 'outgrown':
      return because('outgrown');
    case 'time-unknown':
      return because('time-unknown');
    case 'few-years':
      return because('few-years');
    case 'season-over':
      return because('season-over');
  }
}

interface Stands {
  readonly id: string;
  readonly cut: number;
  readonly basis: string;
}

function spreadFigure({ id, cut, basis }: Stands, spread: Spread | null, without: Reason | null): Figure {
  const { low = null, high = null, level = 0 } = spread?.most ?? {};
  const value = spread?.median ?? null;
  return {
    id,
    value,
    unit: 'days',
    interval: value !== null && low !== null && high !== null ? { low, high, level } : null,
    n: cut,
    replicate: { kind: 'fruit', count: cut },
    reach: 'another-spot-this-summer',
    method: 'ripe-window',
    source: 'mccullagh-1980',
    basis,
    reason: value !== null ? null : spread ? because('beyond-season') : (without ?? because('few-cut-over')),
  };
}
