import { areJoined } from '../../statistics/connectivity.ts';
import { differences } from '../../statistics/posterior/level-summary.ts';
import { standardNormal } from '../../statistics/posterior/variates.ts';
import { randomStream } from '../../statistics/random-stream.ts';
import { LEVEL } from '../comparison.ts';
import { plainTwin } from './plain-twin.ts';
import { type Trait, type TraitId, traitOf } from './trait.ts';
import { fitTrait, type TraitFit } from './trait-fit.ts';
import { back, drawsOf, FEWEST, groupsOf, type Spanned } from './trait-numbers.ts';
import type { TraitValue } from './trait-value.ts';

/** What the other seasons said of one difference from the yardstick, and what its season brought. */
export interface HeldOut {
  readonly trait: TraitId;
  readonly season: string;
  readonly variety: string;
  /** In the trait's unit; of a ratio, times. Its range should hold what came 9 times in 10. */
  readonly said: Spanned;
  readonly came: number;
  readonly hit: boolean;
  /** Seasons it was said from. */
  readonly from: number;
}

const DRAWS = 1000;
const SEED = 7001;

/**
 * Each season left out whole, and told from the others: of every variety with enough values there that was joined to the
 * yardstick. The furthest from what was said first, so misses before hits.
 */
export function heldOut(
  id: TraitId,
  all: readonly TraitValue[],
  varieties: readonly string[],
  yardstick: string,
): HeldOut[] {
  const trait = traitOf(id);
  const values = all.filter((value) => value.trait === id);
  const seasons = [...new Set(values.map(({ season }) => season))].sort();
  if (seasons.length < 2) return [];
  return seasons
    .flatMap((season) => ofSeason(trait, values, season, varieties, yardstick))
    .sort((a, b) => away(b) - away(a));
}

/** How far what came lay from the middle of the range, in halves of its width: above 1 outside. */
const away = ({ said: { value, interval }, came }: HeldOut): number =>
  came < value ? (value - came) / (value - interval.low) : (came - value) / (interval.high - value);

function ofSeason(
  trait: Trait,
  values: readonly TraitValue[],
  season: string,
  varieties: readonly string[],
  yardstick: string,
): HeldOut[] {
  const others = values.filter((value) => value.season !== season);
  const own = values.filter((value) => value.season === season);
  const enough = (variety: string): boolean => others.filter((value) => value.variety === variety).length >= FEWEST;
  const groups = groupsOf(others);
  const grown = varieties.filter(
    (variety) => variety !== yardstick && enough(variety) && areJoined(groups, variety, yardstick),
  );
  if (!enough(yardstick) || grown.length === 0) return [];
  const fit = fitTrait(trait, others, varieties, { draws: DRAWS, pull: 1 });
  if ('cannot' in fit) return [];
  const came = plainTwin(trait, own, yardstick).differences;
  const random = randomStream(SEED);
  const from = new Set(others.map((value) => value.season)).size;
  return grown.flatMap((variety) => {
    const found = came.find((one) => one.variety === variety);
    if (!found) return [];
    const said = expected(trait, fit, own, variety, yardstick, random);
    const hit = said.interval.low <= found.value && found.value <= said.interval.high;
    return [{ trait: trait.id, season, variety, said, came: found.value, hit, from }];
  });
}

/** The difference of two means that a fresh summer would show, from as many mounds and fruits as it had. */
function expected(
  trait: Trait,
  { lasting, sd }: TraitFit,
  own: readonly TraitValue[],
  variety: string,
  yardstick: string,
  random: () => number,
): Spanned {
  const sizes = [variety, yardstick].map((one) => sizeOf(own.filter((value) => value.variety === one)));
  const noise = (per: (size: Size) => number): number => sizes.reduce((sum, size) => sum + 1 / per(size), 0);
  const parts = [
    { sd: sd.variety_season, share: sizes.length },
    { sd: sd.residual, share: noise(({ values }) => values) },
    ...(sd.mound ? [{ sd: sd.mound, share: noise(({ mounds }) => mounds) }] : []),
    ...(sd.day ? [{ sd: sd.day, share: noise(({ days }) => days) }] : []),
  ];
  const shaken = drawsOf(lasting, variety).draws.map((value, draw) => {
    const variance = parts.reduce((sum, part) => sum + part.share * (part.sd[draw] ?? 0) ** 2, 0);
    return value + Math.sqrt(variance) * standardNormal(random);
  });
  const [found] = differences([{ level: variety, draws: shaken }, drawsOf(lasting, yardstick)], yardstick, LEVEL);
  return back(trait, found);
}

interface Size {
  readonly values: number;
  readonly mounds: number;
  readonly days: number;
}

function sizeOf(values: readonly TraitValue[]): Size {
  const count = (of: (value: TraitValue) => string): number => new Set(values.map(of)).size;
  return { values: values.length, mounds: count(({ spot }) => spot), days: count(({ day, key }) => day ?? key) };
}
