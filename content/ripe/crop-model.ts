import type { Card, CardRow, SeedPair } from '../../src/book/card.ts';
import type { Facts } from '../../src/book/chapter.ts';
import { type SeedRow, seedRow } from '../../src/book/seed-row.ts';
import { sourceOf } from '../../src/book/source-of.ts';
import type { Figure } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { inLanguage } from '../../src/garden/in-language.ts';
import { type SeasonSpan, seasonSpan } from '../../src/garden/season-span.ts';
import type { CropRipeness } from '../../src/ledger/ripeness/crop-ripeness.ts';
import { ENOUGH } from '../../src/ledger/ripeness/enough.ts';
import type { Evidence } from '../../src/ledger/ripeness/evidence.ts';
import { LOOK_HOLDS_DAYS } from '../../src/ledger/ripeness/judged-fruit.ts';
import { type TogetherModel, togetherModel } from './together-model.ts';
import { type WorthModel, worthModel } from './worth-model.ts';

export interface CropModel {
  readonly names: { readonly one: string; readonly many: string };
  readonly eaten: 'ripe' | 'young';
  /** Folder of the card's page below the site. */
  readonly card_path: string;
  readonly card: Card;
  /** Signs that say when it is past its best; null where the crop's file has none. */
  readonly too_late: string | null;
  readonly base: Figure;
  readonly unripe_cuts: number;
  readonly enough: typeof ENOUGH;
  readonly look_holds_days: number;
  /** Every sign of the crop, on the card or not, in the order of looking. */
  readonly lines: readonly SignLine[];
  /** Whose signs they are, each source once. */
  readonly cites: readonly string[];
  /** At least one sign can be told from the cuts. */
  readonly told: boolean;
  readonly ticks: {
    readonly needed: number;
    readonly ripe: Figure;
    readonly seeds: SeedRow | null;
    readonly capped: boolean;
    /** The most it may claim, of ten. */
    readonly cap: 8 | 9;
  };
  readonly worth: WorthModel;
  readonly together: TogetherModel;
  /** Lines of the signs told on the vine, in the places the signs put together have. */
  readonly vine_lines: readonly SignLine[];
  /** Of the seasons with a judged fruit; null before the first. */
  readonly seasons: SeasonSpan | null;
}

/** A sign with what the cuts say of it and where it comes from. */
export interface SignLine extends CardRow {
  readonly on_card: boolean;
  readonly ripe: Figure;
  readonly unripe: Figure;
}

export function cropModel(facts: Facts, found: CropRipeness): CropModel {
  const { crop, judged, base, ticks, seasons } = found;
  const { locale } = facts.garden.about;
  const lines = [...daysLine(found), ...signLines(facts, found)];
  return {
    names: cropNames(crop, locale),
    eaten: crop.eaten ?? 'ripe',
    card_path: `ripe/card/${crop.id.toLowerCase()}/`,
    card: { rows: lines.filter(({ on_card }) => on_card), base: seedsOf(base) },
    too_late: inLanguage(crop.too_late, locale),
    base,
    unripe_cuts: judged.filter(({ is_ripe }) => !is_ripe).length,
    enough: ENOUGH,
    look_holds_days: LOOK_HOLDS_DAYS,
    lines,
    cites: citesOf(facts, found),
    told: lines.some(({ seeds }) => seeds !== null),
    ticks: {
      needed: ticks.needed,
      ripe: ticks.ripe,
      seeds: seedsOf(ticks.ripe),
      capped: ticks.is_capped,
      cap: ticks.cap,
    },
    worth: worthModel(facts, found),
    together: togetherModel(found.together),
    vine_lines: found.together.signs.flatMap((vine) =>
      signLines(facts, { ...found, signs: found.signs.filter(({ sign }) => sign === vine) }),
    ),
    seasons: seasonSpan(seasons),
  };
}

function daysLine({ crop: { ripe_days }, days }: CropRipeness): SignLine[] {
  if (!ripe_days || !days) return [];
  const told = { set: ripe_days.set_days_low, planted: ripe_days.planted_days_low };
  const row = { drawing: 'days', sign: null, help: null, days: told, at_picking: false, on_card: true };
  return [{ ...row, ...days, seeds: pairOf(days) }];
}

function signLines({ garden }: Facts, { signs }: CropRipeness): SignLine[] {
  const { locale } = garden.about;
  return signs.map(({ sign, at_picking, ripe, unripe }) => ({
    drawing: sign.drawing,
    sign: inLanguage(sign.names, locale) ?? sign.id,
    help: inLanguage(sign.helps, locale),
    days: null,
    at_picking,
    on_card: sign.on_card,
    ripe,
    unripe,
    seeds: pairOf({ ripe, unripe }),
  }));
}

function citesOf({ reference }: Facts, { crop, signs }: CropRipeness): string[] {
  const ids = [...(crop.ripe_days?.sources ?? []), ...signs.flatMap(({ sign }) => sign.sources)];
  return [...new Set(ids)].map((id) => sourceOf(reference, id).cite);
}

const seedsOf = ({ value }: Figure): SeedRow | null => (value === null ? null : seedRow(value));

function pairOf(evidence: Evidence): SeedPair | null {
  const [ripe, unripe] = [seedsOf(evidence.ripe), seedsOf(evidence.unripe)];
  return ripe && unripe && { ripe, unripe };
}
