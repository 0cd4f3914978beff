import { because, type Figure, type FigureUnit, type Interval, type Reason } from '../../figure.ts';
import { FEWEST_MOUNDS } from '../comparison.ts';
import { twentieths } from './claim.ts';
import type { HeldOut } from './held-out.ts';
import type { ListEntry } from './shortlist.ts';
import type { SoundShare } from './sound-share.ts';
import type { VarietyTaste } from './taste.ts';
import type { Trait } from './trait.ts';
import { FEWEST, type TraitNumbers, type VarietyNumbers } from './trait-numbers.ts';

/** What the figures of one trait, list or question share. */
export interface FigureDesk {
  /** For instance `variety.squash.brix`. */
  readonly stem: string;
  readonly basis: string;
  /** Seasons with values; one reaches no further than its summer. */
  readonly seasons: number;
}

interface Told {
  readonly value: number | null;
  readonly interval?: Interval | null;
  readonly unit: FigureUnit;
  readonly n: number;
  readonly replicate: Figure['replicate'];
  readonly method: string;
  /** Why there is no value. */
  readonly without: Reason | null;
}

/** Of the formula; of all others that of the posterior. */
const SOURCES: Readonly<Record<string, string>> = { 'taste-worth': 'rue-2009', 'sound-share': 'skellam-1948' };

const figureOf = ({ stem, basis, seasons }: FigureDesk, id: string, told: Told): Figure => ({
  id: `${stem}.${id}`,
  value: told.value,
  unit: told.unit,
  interval: told.interval ?? null,
  n: told.n,
  replicate: told.replicate,
  reach: seasons > 1 ? 'next-summer-here' : 'another-spot-this-summer',
  method: told.method,
  source: SOURCES[told.method] ?? 'gelman-bda',
  basis,
  reason: told.value === null ? told.without : null,
});

export interface VarietyFigures {
  readonly level: Figure;
  readonly difference: Figure;
  /** Twentieths that it is better than the yardstick. */
  readonly better: Figure;
  /** Twentieths that it is among the best three. */
  readonly best: Figure;
}

/** Of one variety in one trait; `shared` counts the seasons it and the yardstick both gave values in. */
export function varietyFigures(
  desk: FigureDesk,
  trait: Trait,
  { cannot }: TraitNumbers,
  own: VarietyNumbers,
  shared: number,
): VarietyFigures {
  const { variety, n, mounds } = own;
  const alone = cannot ?? (own.without ? 'few-told' : null);
  const told = (
    name: string,
    without: string | null,
    rest: Pick<Told, 'value' | 'unit' | 'method' | 'interval'>,
  ): Figure =>
    figureOf(desk, `${variety}.${name}`, {
      n,
      replicate: { kind: 'mound', count: mounds },
      without: without === null ? null : because(without, { count: n, wanted: FEWEST }),
      ...rest,
    });
  const seeds = (share: number | null, seasons: number) => ({
    value: share === null ? null : twentieths(share, seasons),
    unit: 'of_twenty' as const,
    method: 'variety-chance',
  });
  const apart = alone ?? own.apart;
  return {
    level: told('level', alone, { ...spanOf(own.level), unit: trait.unit, method: 'variety-level' }),
    difference: told('difference', apart, {
      ...spanOf(own.difference),
      unit: trait.scale === 'ratio' ? 'times' : trait.unit,
      method: 'variety-difference',
    }),
    better: told('better_of_twenty', apart, seeds(own.better, shared)),
    best: told('best_three_of_twenty', alone ?? 'few-varieties', seeds(own.best, own.seasons.length)),
  };
}

const spanOf = (span: { readonly value: number; readonly interval: Interval } | null) => ({
  value: span?.value ?? null,
  interval: span?.interval ?? null,
});

/** What a season added to the trait, against the average of them all; of a ratio, times. */
export const summerFigure = (
  desk: FigureDesk,
  trait: Trait,
  { season, value, interval, varieties }: TraitNumbers['seasons'][number],
): Figure =>
  figureOf(desk, `season.${season}`, {
    value,
    interval,
    unit: trait.scale === 'ratio' ? 'times' : trait.unit,
    n: varieties,
    replicate: { kind: 'variety', count: varieties },
    method: 'season-share',
    without: null,
  });

/** The chances behind a variety’s place on the list. */
export function listFigures(desk: FigureDesk, entry: ListEntry): Pick<VarietyFigures, 'better' | 'best'> {
  const known = entry.standing !== 'few';
  const told = (name: string, share: number | null, why: string): Figure =>
    figureOf(desk, `${entry.variety}.${name}`, {
      value: share === null ? null : twentieths(share, entry.seasons),
      unit: 'of_twenty',
      n: entry.seasons,
      replicate: { kind: 'season', count: entry.seasons },
      method: 'variety-list',
      without: because(why),
    });
  return {
    better: told('better_of_twenty', entry.better, known ? 'yardstick' : 'few-told'),
    best: told('best_three_of_twenty', entry.best, known ? 'few-varieties' : 'few-told'),
  };
}

/** Twentieths that a fruit of the variety is liked better (or is sweeter) than one of the yardstick. */
export const tasteFigure = (
  desk: FigureDesk,
  { variety, fruits, ballots, seasons, better, cannot }: VarietyTaste,
): Figure =>
  figureOf(desk, `${variety}.better_of_twenty`, {
    value: better === null ? null : twentieths(better, seasons),
    unit: 'of_twenty',
    n: ballots,
    replicate: { kind: 'fruit', count: fruits },
    method: 'taste-worth',
    without: cannot === null ? null : because(cannot, { fruits, ballots }),
  });

/** How many of ten fruits are sound. */
export function soundFigure(desk: FigureDesk, { variety, mounds, fruits, share }: SoundShare): Figure {
  const interval = share && {
    ...share.interval,
    low: 10 * share.interval.low,
    high: 10 * share.interval.high,
  };
  return figureOf(desk, `${variety}.sound_of_ten`, {
    value: share && 10 * share.value,
    interval,
    unit: 'of_ten',
    n: fruits,
    replicate: { kind: 'mound', count: mounds },
    method: 'sound-share',
    without: because('few-mounds', { count: mounds, wanted: FEWEST_MOUNDS }),
  });
}

/** What the other seasons said of a difference. */
export const heldFigure = (desk: FigureDesk, trait: Trait, { season, variety, said, from }: HeldOut): Figure =>
  figureOf(desk, `held-out.${season}.${variety}`, {
    ...said,
    unit: trait.scale === 'ratio' ? 'times' : trait.unit,
    n: from,
    replicate: { kind: 'season', count: from },
    method: 'season-held-out',
    without: null,
  });
