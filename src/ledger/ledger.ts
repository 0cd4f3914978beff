import type { Day } from '../day.ts';
import { cropsOf } from '../garden/crops-of.ts';
import type { Garden } from '../garden/garden.ts';
import { type Kept, NOTHING_KEPT } from '../kept.ts';
import { type Bases, createBases } from './bases.ts';
import { type SeasonMaturity, seasonMaturities } from './maturity/season-maturity.ts';
import { type CropPickOrWait, cropPicksOrWaits } from './pick-or-wait/crop-pick-or-wait.ts';
import { type CropRain, cropRains } from './rain-sugar/crop-rain.ts';
import { type Replay, replayOnce } from './replay/replay.ts';
import { type CropRipeness, cropRipenesses } from './ripeness/crop-ripeness.ts';
import { type SeasonYield, seasonYield } from './season-yield.ts';
import { type CropTrial, cropTrials } from './trial/crop-trial.ts';
import { type VarietySeason, varietySeasons } from './variety-season.ts';
import { type GroundFacts, NO_GROUND_FACTS, type WaterLedger, waterLedger } from './water/water-ledger.ts';
import { type SeasonWeather, seasonWeather } from './weather/season-weather.ts';
import { type CropWindow, cropWindow } from './window/crop-window.ts';
import { type CropYear, cropYear } from './year/crop-year.ts';
import { type UsualFrosts, usualFrosts } from './year/frosts.ts';
import { planSeasonOf } from './year/plan-season.ts';

/** Everything the pages share, computed once from the garden as known on a day. */
export interface Ledger {
  readonly bases: Bases;
  /** By season, the first first. */
  readonly yields: readonly SeasonYield[];
  /** By variety id: every season it was planted in, the first first. */
  readonly varieties: ReadonlyMap<string, readonly VarietySeason[]>;
  /** By crop, in the order of their ids; over all seasons. */
  readonly trials: readonly CropTrial[];
  /** By season, the first first. */
  readonly maturity: readonly SeasonMaturity[];
  /** By crop, in the order of their ids; over all seasons. */
  readonly rain: readonly CropRain[];
  /** By crop, in the order of their ids; over all seasons. */
  readonly ripeness: readonly CropRipeness[];
  /** By crop, in the order of their ids: when the fruits that hang will be ripe. */
  readonly windows: readonly CropWindow[];
  /** By crop eaten ripe that has signs, in the order of their ids; over all seasons. */
  readonly picks: readonly CropPickOrWait[];
  /** The books of past weeks, judged: seconds of reckoning, so only made when asked for. */
  readonly replay: () => Replay;
  /** By season slug. */
  readonly weather: ReadonlyMap<string, SeasonWeather>;
  /** By crop, in the order of their ids: the year in outline, for the season that runs or the next. */
  readonly years: readonly CropYear[];
  /** For the same season, from the station's record; null without one. */
  readonly frosts: UsualFrosts | null;
  /** Null before the first season. */
  readonly water: WaterLedger | null;
}

/** `today` is null before the first season, when there is nothing to compute. Fits are kept by their inputs. */
export function openLedger(
  garden: Garden,
  today: Day | null,
  kept: Kept = NOTHING_KEPT,
  ground: GroundFacts = NO_GROUND_FACTS,
): Ledger {
  const bases = createBases();
  const ripeness = cropRipenesses(garden, today, bases, kept);
  const trials = cropTrials(garden, bases, kept);
  const years = cropsOf(garden.varieties).map((crop) => cropYear(garden, today, crop));
  const windows = cropsOf(garden.varieties).map((crop) => cropWindow(garden, crop, today, bases, kept));
  const replay = replayOnce(garden, bases, kept);
  if (today === null) {
    return {
      bases,
      replay,
      yields: [],
      varieties: new Map(),
      trials,
      maturity: [],
      rain: [],
      ripeness,
      windows,
      picks: cropPicksOrWaits(garden, null, { rain: [], ripeness, waters: [] }, bases, kept),
      weather: new Map(),
      years,
      frosts: null,
      water: null,
    };
  }
  const yields = garden.seasons.map((season) => seasonYield(garden, season, today, bases));
  const weather = garden.seasons.flatMap((season) => {
    const found = seasonWeather(garden, season, today, bases);
    return found ? [[season.slug, found] as const] : [];
  });
  const varieties = garden.varieties.map((variety) => [variety.id, varietySeasons(variety, yields, bases)] as const);
  const rain = cropRains(garden, bases, kept);
  const water = waterLedger(garden, today, years, ground);
  return {
    bases,
    replay,
    yields,
    trials,
    maturity: seasonMaturities(garden, today, bases, kept),
    rain,
    ripeness,
    windows,
    picks: cropPicksOrWaits(garden, today, { rain, ripeness, waters: water.seasons }, bases, kept),
    varieties: new Map(varieties),
    weather: new Map(weather),
    years,
    frosts: usualFrosts(garden, planSeasonOf(garden, today)),
    water,
  };
}
