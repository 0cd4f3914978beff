import { addDays, type Day } from '../../day.ts';
import type { Figure, Interval, Reason } from '../../figure.ts';
import type { Crop, Fruit, Garden, Planting, Season } from '../../garden/garden.ts';
import { type Kept, keptOr } from '../../kept.ts';
import type { CropSignRecord } from '../../records/trait/sign.ts';
import { type ClaimCap, claimOfTen } from '../../statistics/signs/claim-cap.ts';
import type { RipeQuestion } from '../../statistics/signs/likelihood-ratio.ts';
import { type LookedFruit, type RipeChance, ripeModel } from '../../statistics/signs/ripe-chance.ts';
import type { Bases } from '../bases.ts';
import { tooFewFor } from './enough.ts';
import { type HeldClaims, heldClaims } from './held-claims.ts';
import { type JudgedFruit, LOOK_HOLDS_DAYS } from './judged-fruit.ts';
import { type KnownCut, knownCuts } from './known-cuts.ts';
import { lookOn, vineSigns } from './look.ts';
import { capOn, cutFor, type KnownFruit, LEVEL, type QuestionNumbers, togetherNumbers } from './together-numbers.ts';

/** The signs of a crop on the vine put together with the age of the fruit. */
export interface CropTogether {
  /** Their places in a look: those told on the vine, in the crop file's order. */
  readonly signs: readonly CropSignRecord[];
  /** Cut fruits that were looked over for at least one of them, with what they showed. */
  readonly known: readonly KnownCut[];
  /** Of them, those with a day of set. */
  readonly dated: number;
  readonly ripe_yet: TogetherQuestion;
  readonly too_late: TogetherQuestion;
  /** The most that may be claimed of ten, as judged on seasons not seen. */
  readonly cap: ClaimCap;
  /** A fruit of the middle age with every sign, and one with none. */
  readonly usual: {
    /** Null where no day of set is known. */
    readonly days: number | null;
    readonly all: Figure;
    readonly none: Figure;
  };
  /** Fruit still growing with a look in the days a look holds before the day of the book, by season and id. */
  readonly growing: readonly GrowingFruit[];
  /** What may be said of any look; null where the cuts are too few. The model is made once, when first asked. */
  readonly of: (fruit: LookedFruit) => LookClaim | null;
  /** The same of a fruit on a day, by the looks in the days before; null too when nobody looked. */
  readonly on: (season: Season, planting: Planting, fruit: Fruit, day: Day) => LookClaim | null;
}

export interface TogetherQuestion {
  readonly question: RipeQuestion;
  readonly fruits: number;
  readonly yes: number;
  readonly seasons: number;
  /** Why nothing is claimed; null when something is. */
  readonly reason: Reason | null;
  readonly held: HeldClaims | null;
}

/** What a look says of a fruit. */
export interface LookClaim {
  /** That it is ripe, or past it: just ripe, prime or over. */
  readonly ripe: RipeChance;
  /** The same of ten, under the cap. */
  readonly of_ten: number;
  /** The chance that it is past its best, 0 to 1; null where too few over-ripe ones are cut to tell. */
  readonly over: number | null;
}

export interface GrowingFruit {
  readonly season: Season;
  readonly planting: Planting;
  readonly fruit: Fruit;
  readonly look: LookedFruit;
  /** Null where the cuts are too few. */
  readonly claim: LookClaim | null;
}

interface Desk {
  readonly garden: Pick<Garden, 'seasons'>;
  readonly today: Day | null;
  readonly bases: Bases;
  readonly kept: Kept;
}

/** Numbers are kept by their inputs. */
export function cropTogether(crop: Crop, judged: readonly JudgedFruit[], stem: string, desk: Desk): CropTogether {
  const signs = vineSigns(crop);
  const cuts = knownCuts(judged, signs);
  const [looked, known] = [cuts.map((one) => one.judged), cuts.map(({ look }) => look)];
  const growing = growingLooks(crop, signs, desk);
  const days = middleOf(known.flatMap(({ days_since_set }) => days_since_set ?? []));
  const usual = [true, false].map(
    (shown): LookedFruit => ({
      days_since_set: days,
      signs: signs.map(() => shown),
      variety: null,
    }),
  );
  const input = { known, asked: [...usual, ...growing.map(({ look }) => look)] };
  const numbers = keptOr(desk.kept, 'fits', JSON.stringify(['ripe-together', input]), () => togetherNumbers(input));
  const [ripe, late] = [questionOf(numbers, 'ripe-yet'), questionOf(numbers, 'too-late')];
  const cap = capOn(known, ripe);
  const claims = input.asked.map((_, index) => claimOf(ripe.chances?.[index], late.chances?.[index], cap));
  const basis = desk.bases.of(looked.map(({ fruit }) => fruit.key));
  const reason = tooFewFor('ripe-yet', ripe.yes, ripe.fruits - ripe.yes);
  const figure = (name: string, claim: LookClaim | null | undefined): Figure => ({
    id: `${stem}.together.${name}.ripe_of_ten`,
    value: claim?.of_ten ?? null,
    unit: 'of_ten',
    interval: claim ? rangeOf(claim) : null,
    n: looked.length,
    replicate: { kind: 'season', count: ripe.seasons },
    reach: ripe.seasons > 1 ? 'next-summer-here' : 'another-spot-this-summer',
    method: 'sign-together',
    source: 'gelman-bda',
    basis,
    reason,
  });
  const of = asker(known, ripe, late, cap);
  return {
    signs,
    known: cuts,
    dated: known.filter(({ days_since_set }) => days_since_set !== null).length,
    ripe_yet: { ...told(ripe), reason, held: heldClaims(looked, known, ripe, cap) },
    too_late: {
      ...told(late),
      reason: tooFewFor('too-late', late.yes, late.fruits - late.yes),
      held: heldClaims(looked, known, late, cap),
    },
    cap,
    usual: { days, all: figure('all-signs', claims[0]), none: figure('no-sign', claims[1]) },
    growing: growing.map((one, index) => ({ ...one, claim: claims[usual.length + index] ?? null })),
    of,
    on: (season, planting, fruit, day) => {
      const look = lookOn(signs, season, planting, fruit, day);
      return look && of(look);
    },
  };
}

function growingLooks(
  crop: Crop,
  signs: readonly CropSignRecord[],
  { garden, today }: Desk,
): Omit<GrowingFruit, 'claim'>[] {
  if (today === null) return [];
  return garden.seasons
    .filter(({ ends_on }) => ends_on >= addDays(today, -LOOK_HOLDS_DAYS))
    .flatMap((season) =>
      season.plantings
        .filter(({ variety }) => variety?.crop.id === crop.id)
        .flatMap((planting) =>
          planting.fruits
            .filter(({ fate }) => fate === 'growing')
            .flatMap((fruit) => {
              const look = lookOn(signs, season, planting, fruit, today);
              return look ? [{ season, planting, fruit, look }] : [];
            }),
        ),
    );
}

function middleOf(days: readonly number[]): number | null {
  const sorted = days.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? null;
}

function questionOf(numbers: readonly QuestionNumbers[], question: RipeQuestion): QuestionNumbers {
  const found = numbers.find((one) => one.question === question);
  if (!found) throw new RangeError(`invalid question: ${question}`);
  return found;
}

const told = ({ question, fruits, yes, seasons }: QuestionNumbers) => ({ question, fruits, yes, seasons });

/** In tenths; null where a claim held back by the cap, or rounded to a whole tenth, lies outside of it. */
function rangeOf({ of_ten, ripe }: LookClaim): Interval | null {
  const interval = tenths(ripe.interval);
  return interval.low <= of_ten && of_ten <= interval.high ? interval : null;
}

/** Over is the chance that it is ripe times that of being over among the ripe. */
function claimOf(
  ripe: RipeChance | undefined,
  late: RipeChance | undefined,
  { cap }: Pick<ClaimCap, 'cap'>,
): LookClaim | null {
  if (!ripe) return null;
  return { ripe, of_ten: claimOfTen(ripe.chance, cap), over: late ? ripe.chance * late.chance : null };
}

function asker(known: readonly KnownFruit[], ripe: QuestionNumbers, late: QuestionNumbers, cap: ClaimCap) {
  if (ripe.chances === null) return () => null;
  let made: readonly ((fruit: LookedFruit) => RipeChance | undefined)[] | null = null;
  const models = () =>
    [ripe, late].map(({ question, chances }) => {
      if (chances === null) return () => undefined;
      const model = ripeModel(cutFor(known, question));
      return (fruit: LookedFruit) => model.of(fruit, LEVEL);
    });
  return (fruit: LookedFruit): LookClaim | null => {
    made ??= models();
    return claimOf(made[0]?.(fruit), made[1]?.(fruit), cap);
  };
}

const tenths = ({ low, high, level }: Interval): Interval => ({ low: 10 * low, high: 10 * high, level });
