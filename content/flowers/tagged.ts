import type { Facts } from '../../src/book/chapter.ts';
import { type SeedRow, seedRow } from '../../src/book/seed-row.ts';
import { because, type Figure } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { Crop, Season } from '../../src/garden/garden.ts';
import { clopperPearson } from '../../src/statistics/clopper-pearson.ts';
import { cropOf, type Flower } from './flower-of.ts';

/** Flowers looked at again, below which no share of ten is told. */
const FEWEST_FLOWERS = 10;
const LEVEL = 0.9;

/** Who brought the pollen; a flower closed for seed was pollinated by hand. */
type Carrier = 'insects' | 'hand';

const CARRIERS: Readonly<Partial<Record<Flower['what'], Carrier>>> = {
  tagged: 'insects',
  'hand-pollinated': 'hand',
  'closed-for-seed': 'hand',
};

/** Flowers of one crop and one carrier that were tagged and looked at again. */
export interface TaggedLine {
  /** Null where the entries name no planting and several crops grow. */
  readonly crop: string | null;
  readonly names: { readonly one: string; readonly many: string } | null;
  readonly carrier: Carrier;
  readonly flowers: number;
  readonly took: number;
  /** One of the two was reckoned, not counted. */
  readonly about: boolean;
  /** Entries of which nobody has said yet what became of them, or how many they were. */
  readonly untold: number;
  /** With its range, from ten flowers on. */
  readonly of_ten: Figure;
  readonly seeds: SeedRow | null;
}

export interface SeasonTagged {
  readonly label: string;
  readonly slug: string;
  readonly lines: readonly TaggedLine[];
}

/** The last season with a flower looked at again; null where nobody ever did. */
export function lastTagged(facts: Facts): SeasonTagged | null {
  const season = facts.garden.seasons.findLast(({ events }) => events.flowering.some(isTold));
  return season ? { label: season.label, slug: season.slug, lines: taggedLines(facts, season) } : null;
}

/** By crop, insects before the hand; only those with a flower looked at again. */
export function taggedLines(facts: Facts, season: Season): TaggedLine[] {
  const tagged = season.events.flowering.filter(({ what }) => CARRIERS[what]);
  const crops = new Map(tagged.map((flower) => [cropOf(season, flower)?.id ?? '', cropOf(season, flower)]));
  return [...crops.values()]
    .sort((a, b) => ((a?.id ?? '') < (b?.id ?? '') ? -1 : 1))
    .flatMap((crop) =>
      (['insects', 'hand'] as const).flatMap((carrier) => {
        const own = tagged.filter(
          (flower) => CARRIERS[flower.what] === carrier && cropOf(season, flower)?.id === crop?.id,
        );
        return own.some(isTold) ? [lineOf(facts, season, { crop, carrier, own })] : [];
      }),
    );
}

function lineOf(
  { garden, ledger }: Facts,
  season: Season,
  { crop, carrier, own }: { crop: Crop | null; carrier: Carrier; own: readonly Flower[] },
): TaggedLine {
  const told = own.filter(isTold);
  const sum = (of: (flower: Flower) => number | null): number =>
    told.reduce((total, flower) => total + (of(flower) ?? 0), 0);
  const [flowers, took] = [sum(flowersOf), sum(({ took: set }) => set)];
  const about = told.some(({ entered }) => entered.flowers === 'about' || entered.took === 'about');
  const enough = flowers >= FEWEST_FLOWERS;
  const range = enough ? clopperPearson(took, flowers, LEVEL) : null;
  const of_ten: Figure = {
    id: `flowers.${season.slug}.${crop?.id ?? 'any'}.${carrier}.set_of_ten`,
    value: enough ? (10 * took) / flowers : null,
    unit: 'of_ten',
    interval: range && { low: 10 * range.low, high: 10 * range.high, level: LEVEL },
    n: flowers,
    replicate: { kind: 'flower', count: flowers },
    reach: 'another-spot-this-summer',
    method: 'flowers-set',
    source: 'clopper-pearson-1934',
    basis: ledger.bases.of(told.map(({ key }) => key)),
    reason: enough ? (about ? because('about') : null) : because('few-flowers', { flowers, need: FEWEST_FLOWERS }),
  };
  return {
    crop: crop?.id ?? null,
    names: crop && cropNames(crop, garden.about.locale),
    carrier,
    flowers,
    took,
    about,
    untold: own.length - told.length,
    of_ten,
    seeds: of_ten.value === null ? null : seedRow(of_ten.value),
  };
}

/** A tag hangs on one flower unless somebody wrote more. */
const flowersOf = ({ flowers, tag }: Flower): number | null => flowers ?? (tag === null ? null : 1);

function isTold(flower: Flower): boolean {
  const of = flowersOf(flower);
  return CARRIERS[flower.what] !== undefined && of !== null && of > 0 && flower.took !== null && flower.took <= of;
}
