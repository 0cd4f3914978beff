import type { Facts } from '../../src/book/chapter.ts';
import type { Page } from '../../src/book/page.ts';
import type { RecordLevel } from '../../src/book/record-level.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { inLanguage } from '../../src/garden/in-language.ts';
import { type SeasonSpan, seasonSpan } from '../../src/garden/season-span.ts';
import type { CropReplay, ReplayFigures } from '../../src/ledger/replay/replay.ts';
import type { AdviceScore } from '../../src/ledger/replay/score-advice.ts';
import { type ClaimScore, type JudgedClaim, SPEAKS } from '../../src/ledger/replay/score-claims.ts';
import type { WindowCame, WindowScore } from '../../src/ledger/replay/score-windows.ts';
import { WINDOW_WEEKS } from '../../src/ledger/replay/season-replay.ts';
import { ENOUGH } from '../../src/ledger/ripeness/enough.ts';
import { LOOK_HOLDS_DAYS } from '../../src/ledger/ripeness/judged-fruit.ts';
import { replayTables } from './replay-tables.ts';

/** The book judged on past weeks. */
export interface ReplayModel {
  /** The crop with the most judged claims first. */
  readonly crops: readonly ReplayCrop[];
  readonly seasons: SeasonSpan | null;
  /** Parts of records that tell of fruit, and those of them that say when they were written down. */
  readonly parts: number;
  readonly recorded: number;
  readonly enough: typeof ENOUGH;
  readonly look_holds_days: number;
  readonly speaks: number;
  readonly window_weeks: number;
}

interface ReplayCrop {
  readonly names: { readonly one: string; readonly many: string };
  readonly yes: string;
  readonly seasons: SeasonSpan | null;
  readonly season_count: number;
  readonly weeks: number;
  readonly looked: number;
  readonly unclaimed: number;
  readonly claimed: number;
  readonly claims: ClaimsTold | null;
  readonly windows: WindowsTold | null;
  /** Why no window is judged; null where one is. */
  readonly no_windows: 'none-growing' | 'no-set-days' | 'few-cuts' | 'none-cut' | null;
  readonly advice: AdviceTold | null;
  readonly has_gauge: boolean;
  readonly figures: ReplayFigures;
}

interface AdviceTold extends AdviceScore {
  readonly eithers: number;
  /** Less regret than always picking, and than always waiting. */
  readonly beats: { readonly pick: boolean; readonly wait: boolean };
}

interface ClaimsTold extends Omit<ClaimScore, 'scores'> {
  readonly unripe: number;
  readonly seasons: number;
  readonly rows: readonly ClaimRow[];
  readonly more: number;
  /** Of a hundred; a coin has 25. */
  readonly scores: { readonly book: number; readonly base: number; readonly sign: number | null };
  readonly best_sign: string | null;
  readonly beats: { readonly base: boolean; readonly sign: boolean };
}

interface ClaimRow {
  readonly season: string;
  readonly fruit: string;
  readonly looked_on: string;
  readonly of_ten: number;
  readonly state: string;
  readonly so: 'missed' | 'right' | 'open';
}

interface WindowsTold extends WindowScore {
  readonly seasons: SeasonSpan | null;
  readonly belied: readonly BeliedFruit[];
}

/** A fruit whose cut belied a window of it. */
interface BeliedFruit {
  readonly season: string;
  readonly fruit: string;
  readonly came: Exclude<WindowCame, 'as-said' | 'inside'>;
}

const MOST_ROWS = 12;
const STATES = { unripe: 'unripe', 'just-ripe': 'just ripe', prime: 'prime', over: 'over' } as const;

/** Would the book have been right? Of a community book; null in a home book, which has no page for it. */
export function replayPage(facts: Facts, level: RecordLevel): Page | null {
  if (facts.garden.about.edition !== 'community') return null;
  const told = facts.ledger.replay();
  const crops = told.crops
    .map((one) => replayCrop(facts, one))
    .toSorted((a, b) => (b.claims?.judged ?? 0) - (a.claims?.judged ?? 0) || b.looked - a.looked);
  const model: ReplayModel = {
    crops,
    seasons: seasonSpan(told.seasons),
    parts: told.dating.parts,
    recorded: told.dating.recorded,
    enough: ENOUGH,
    look_holds_days: LOOK_HOLDS_DAYS,
    speaks: SPEAKS,
    window_weeks: WINDOW_WEEKS,
  };
  return {
    chapter: 'ripe',
    path: 'ripe/replay/',
    template: 'ripe/replay.njk',
    title: 'Would the book have been right?',
    finding: null,
    level,
    model,
    charts: [],
    tables: replayTables(told).filter(({ rows }) => rows.length > 0),
    figures: told.crops.flatMap(({ figures }) => Object.values(figures)),
    cautions: [],
    listed: false,
  };
}

function replayCrop({ garden }: Facts, found: CropReplay): ReplayCrop {
  const { crop, seasons, claims, weeks, looked, unclaimed, advice_score, has_gauge, figures } = found;
  const windows = windowsTold(found);
  return {
    names: cropNames(crop, garden.about.locale),
    yes: crop.eaten === 'young' ? 'big enough' : 'ripe',
    seasons: seasonSpan(seasons),
    season_count: seasons.length,
    weeks,
    looked,
    unclaimed,
    claimed: claims.length,
    claims: claimsTold(found, garden.about.locale),
    windows,
    no_windows: windows === null ? whyNoWindows(found) : null,
    advice: advice_score && adviceTold(advice_score),
    has_gauge,
    figures,
  };
}

const adviceTold = (score: AdviceScore): AdviceTold => ({
  ...score,
  eithers: score.judged - score.picks - score.waits,
  beats: { pick: score.regret.card < score.regret.always_pick, wait: score.regret.card < score.regret.always_wait },
});

function claimsTold({ claims, claim_score, crop }: CropReplay, locale: string): ClaimsTold | null {
  if (claim_score === null) return null;
  const judged = claims.filter(({ came }) => came !== null);
  const { book, base, sign } = claim_score.scores;
  return {
    ...claim_score,
    unripe: judged.filter(({ came }) => !came).length,
    seasons: new Set(judged.map(({ season }) => season)).size,
    rows: judged.slice(0, MOST_ROWS).map(rowOf),
    more: Math.max(judged.length - MOST_ROWS, 0),
    scores: { book: 100 * book, base: 100 * base, sign: sign === null ? null : 100 * sign },
    best_sign: oneSign(judged, crop, locale),
    beats: { base: book < base, sign: sign === null || book < sign },
  };
}

const rowOf = ({ season, fruit, looked_on, of_ten, state, missed }: JudgedClaim): ClaimRow => ({
  season,
  fruit,
  looked_on,
  of_ten,
  state: state === null ? '' : STATES[state],
  so: missed ? 'missed' : Math.max(of_ten, 10 - of_ten) >= SPEAKS ? 'right' : 'open',
});

/** The name of the best single sign where it was the same all along. */
function oneSign(judged: readonly JudgedClaim[], { signs }: CropReplay['crop'], locale: string): string | null {
  const [id, ...others] = new Set(judged.map(({ best_sign }) => best_sign));
  const found = others.length === 0 ? signs?.find((sign) => sign.id === id) : undefined;
  return found ? inLanguage(found.names, locale) : null;
}

function windowsTold({ windows, window_score, window_seasons }: CropReplay): WindowsTold | null {
  if (window_score === null) return null;
  const belied = windows.flatMap(({ season, fruit, most_came }): BeliedFruit[] =>
    most_came === null || most_came === 'as-said' || most_came === 'inside' ? [] : [{ season, fruit, came: most_came }],
  );
  const once = belied.filter(
    (one, at) => belied.findIndex(({ season, fruit }) => season === one.season && fruit === one.fruit) === at,
  );
  return { ...window_score, seasons: seasonSpan(window_seasons), belied: once };
}

function whyNoWindows({ growing, undated, windows }: CropReplay): ReplayCrop['no_windows'] {
  if (growing === 0) return 'none-growing';
  if (undated === growing) return 'no-set-days';
  return windows.length === 0 ? 'few-cuts' : 'none-cut';
}
