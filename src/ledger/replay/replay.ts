import { type Figure, happened } from '../../figure.ts';
import { cropsOf } from '../../garden/crops-of.ts';
import type { Crop, Garden, Season } from '../../garden/garden.ts';
import type { Kept } from '../../kept.ts';
import type { Bases } from '../bases.ts';
import { lossesOf } from '../pick-or-wait/losses-of.ts';
import { type Dating, datingOf } from './dating.ts';
import { type Outcome, outcomesOf } from './outcome.ts';
import { type AdviceScore, type JudgedAdvice, judgeAdvice, scoreAdvice } from './score-advice.ts';
import { type ClaimScore, type JudgedClaim, judgeClaim, missesFirst, scoreClaims } from './score-claims.ts';
import { type JudgedWindow, judgeWindow, scoreWindows, type WindowScore } from './score-windows.ts';
import { type SeasonReplay, seasonReplays } from './season-replay.ts';

/** Windows are replayed for so many seasons, the last: each takes seconds to reckon. Decided by the makers. */
const WINDOW_SEASONS = 1;

/** One crop's books of past weeks, judged by what the garden knows now. */
export interface CropReplay {
  readonly crop: Crop;
  /** Seasons in which it was looked over or grew, and the weeks of them. */
  readonly seasons: readonly Season[];
  readonly weeks: number;
  /** Looks, each fruit once a week, and those at which the cuts were too few to claim anything. */
  readonly looked: number;
  readonly unclaimed: number;
  /** Misses first. */
  readonly claims: readonly JudgedClaim[];
  readonly claim_score: ClaimScore | null;
  readonly windows: readonly JudgedWindow[];
  readonly window_score: WindowScore | null;
  /** Seasons whose windows were replayed. */
  readonly window_seasons: readonly Season[];
  readonly growing: number;
  readonly undated: number;
  readonly advice: readonly JudgedAdvice[];
  readonly advice_score: AdviceScore | null;
  /** Whether a station can tell what rain came. */
  readonly has_gauge: boolean;
  readonly figures: ReplayFigures;
}

export interface ReplayFigures {
  readonly judged: Figure;
  readonly missed: Figure;
  /** Claims of 6 in 10 and more, and those of them that came. */
  readonly bold: Figure;
  readonly bold_came: Figure;
  readonly windows: Figure;
  readonly over_before: Figure;
  readonly ripe_before: Figure;
  readonly unripe_after: Figure;
  readonly advice: Figure;
  readonly advice_missed: Figure;
}

export interface Replay {
  /** In the order of their ids; crops with signs that hung or were looked over in a season with a cut. */
  readonly crops: readonly CropReplay[];
  /** Over the seasons with a cut. */
  readonly dating: Dating;
  readonly seasons: readonly Season[];
}

/** The garden as known on the day of the book, judged by itself: its past weeks know nothing later. */
export function replay(garden: Garden, bases: Bases, kept: Kept): Replay {
  const seasons = garden.seasons.filter((season) => outcomesOf(season).size > 0);
  const told = seasons.flatMap((season, at) =>
    seasonReplays(garden, season, at >= seasons.length - WINDOW_SEASONS, kept).map((one) => ({ season, one })),
  );
  const crops = cropsOf(garden.varieties).flatMap((crop) => {
    const own = told.filter(({ one }) => one.crop === crop.id && one.weeks > 0);
    return own.length === 0 ? [] : [cropReplay(garden, crop, own, bases)];
  });
  return { crops, dating: datingOf(seasons), seasons };
}

interface Told {
  readonly season: Season;
  readonly one: SeasonReplay;
}

function cropReplay(garden: Garden, crop: Crop, own: readonly Told[], bases: Bases): CropReplay {
  const losses = lossesOf(garden.about);
  const outcomes = new Map(own.map(({ season }) => [season.slug, outcomesOf(season)] as const));
  const found = ({ season, fruit }: { readonly season: string; readonly fruit: string }): Outcome | undefined =>
    outcomes.get(season)?.get(fruit);
  const claims = missesFirst(own.flatMap(({ one }) => one.claims.map((claim) => judgeClaim(claim, found(claim)))));
  const windows = own.flatMap(({ one }) => one.windows.map((window) => judgeWindow(window, found(window))));
  const advice = own.flatMap(({ one }) => one.advice.map((each) => judgeAdvice(each, found(each), losses)));
  const scores = {
    claim_score: scoreClaims(claims),
    window_score: scoreWindows(windows),
    advice_score: scoreAdvice(advice),
  };
  const sum = (of: (one: SeasonReplay) => number): number => own.reduce((all, { one }) => all + of(one), 0);
  const keys = (told: readonly { readonly season: string; readonly fruit: string }[]): string[] =>
    told.flatMap((each) => found(each)?.fruit.key ?? []);
  return {
    crop,
    seasons: own.map(({ season }) => season),
    weeks: sum(({ weeks }) => weeks),
    looked: sum(({ looked }) => looked),
    unclaimed: sum(({ unclaimed }) => unclaimed),
    claims,
    windows,
    window_seasons: own.flatMap(({ season, one }) => (one.no_windows === 'not-replayed' ? [] : [season])),
    growing: own.reduce((all, { one }) => all + (one.no_windows === 'not-replayed' ? 0 : one.growing), 0),
    undated: own.reduce((all, { one }) => all + (one.no_windows === 'not-replayed' ? 0 : one.undated), 0),
    advice,
    has_gauge: garden.stations.some(({ id }) => id === garden.about.weather?.station),
    ...scores,
    figures: figuresOf(crop, scores, { claims: keys(claims), windows: keys(windows), advice: keys(advice) }, bases),
  };
}

interface Scores {
  readonly claim_score: ClaimScore | null;
  readonly window_score: WindowScore | null;
  readonly advice_score: AdviceScore | null;
}

function figuresOf(
  { id }: Crop,
  { claim_score, window_score, advice_score }: Scores,
  keys: Readonly<Record<'claims' | 'windows' | 'advice', readonly string[]>>,
  bases: Bases,
): ReplayFigures {
  const counter =
    (what: 'claims' | 'windows' | 'advice', n: number) =>
    (name: string, value: number): Figure =>
      happened({
        id: `ripe.replay.${id}.${what}.${name}`,
        value,
        unit: 'fruits',
        n,
        method: 'ripe-replay',
        basis: bases.of(keys[what]),
        reason: null,
      });
  const claim = counter('claims', claim_score?.judged ?? 0);
  const window = counter('windows', window_score?.windows ?? 0);
  const advice = counter('advice', advice_score?.judged ?? 0);
  return {
    judged: claim('judged', claim_score?.judged ?? 0),
    missed: claim('missed', claim_score?.missed ?? 0),
    bold: claim('six_and_more', claim_score?.bold.claims ?? 0),
    bold_came: claim('six_and_more_came', claim_score?.bold.came ?? 0),
    windows: window('judged', window_score?.windows ?? 0),
    over_before: window('over_before_it_opened', window_score?.over_before ?? 0),
    ripe_before: window('ripe_before_it_opened', window_score?.ripe_before ?? 0),
    unripe_after: window('unripe_after_it_closed', window_score?.unripe_after ?? 0),
    advice: advice('judged', advice_score?.judged ?? 0),
    advice_missed: advice('missed', advice_score?.missed ?? 0),
  };
}

/** The same, made when first asked for and then remembered: a home book never asks. */
export function replayOnce(garden: Garden, bases: Bases, kept: Kept): () => Replay {
  const memory: { made?: Replay } = {};
  return () => {
    memory.made ??= replay(garden, bases, kept);
    return memory.made;
  };
}
