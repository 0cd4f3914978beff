import { boxVolume } from '../../src/agronomy/heap-volume.ts';
import { massForNitrogen } from '../../src/agronomy/nutrients.ts';
import type { Facts } from '../../src/book/chapter.ts';
import { type Figure, type FigureUnit, reckoned } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { Crop, Spot } from '../../src/garden/garden.ts';
import { inLanguage } from '../../src/garden/in-language.ts';
import { measuresOf } from '../../src/garden/measures.ts';
import { nitrogenWanted } from '../../src/ledger/feeding/nitrogen-wanted.ts';
import { type Span, spanOf } from '../../src/ledger/feeding/span.ts';
import type { MaterialRecord } from '../../src/records/material.ts';

/** How much of one material gives a crop its nitrogen on the average spot. */
export interface MaterialLine {
  readonly id: string;
  readonly name: string;
  readonly kg: Span;
  /** Null where nobody tells what a litre weighs. */
  readonly l: Span | null;
  readonly barrows: Span | null;
}

export interface NitrogenModel {
  readonly id: string;
  readonly names: { readonly one: string; readonly many: string };
  /** Nitrogen that sources give the crop in a season. */
  readonly n_g_per_m2: Span;
  /** On the average spot, as it is weighed out of a bag that is five parts of a hundred nitrogen. */
  readonly feed_5_kg: Span;
  readonly materials: readonly MaterialLine[];
}

export interface Nitrogen {
  /** Mean of the spots with an area; one square metre where none has. */
  readonly area_m2: number;
  readonly area_known: boolean;
  /** A layer of compost over the average spot, for crops nobody has a figure for: common practice, no source. */
  readonly layer: { readonly deep_cm: number; readonly l: number; readonly barrows: number };
  readonly crops: readonly NitrogenModel[];
  /** Garden compost for any of the crops; null where no source tells. */
  readonly compost: { readonly l: Span; readonly barrows: Span } | null;
  readonly figures: readonly Figure[];
}

const LAYER_CM = 3;
/** First number of an example label. */
const LABEL_N = 5;

export function nitrogenOf(facts: Facts): Nitrogen {
  const { garden, ledger, reference } = facts;
  const { barrow_l } = measuresOf(garden.about);
  const areas = garden.spots.flatMap(({ share_m2 }: Spot) => share_m2 ?? []);
  const area_known = areas.length > 0;
  const area_m2 = area_known ? areas.reduce((sum, area) => sum + area, 0) / areas.length : 1;
  const crops = ledger.years.flatMap(
    ({ crop }) => modelOf(crop, { area_m2, barrow_l, locale: garden.about.locale }, reference) ?? [],
  );
  const layer_l = boxVolume({ length_m: area_m2, width_m: 1, height_m: LAYER_CM / 100 });
  return {
    area_m2,
    area_known,
    layer: { deep_cm: LAYER_CM, l: layer_l, barrows: layer_l / barrow_l },
    crops,
    compost: compostOf(crops),
    figures: crops.flatMap((crop) => figuresOf(crop, ledger.bases.of([]))),
  };
}

function compostOf(crops: readonly NitrogenModel[]): Nitrogen['compost'] {
  const lines = crops.flatMap(({ materials }) => materials.filter(({ id }) => id === 'compost'));
  const [l, barrows] = [widest(lines.map((line) => line.l)), widest(lines.map((line) => line.barrows))];
  return l && barrows && { l, barrows };
}

function widest(spans: readonly (Span | null)[]): Span | null {
  const known = spans.filter((span): span is Span => span !== null);
  if (known.length === 0) return null;
  return { low: Math.min(...known.map(({ low }) => low)), high: Math.max(...known.map(({ high }) => high)) };
}

interface Here {
  readonly area_m2: number;
  readonly barrow_l: number;
  readonly locale: string;
}

/** Null for a crop of which no source tells how much it is given. */
function modelOf(crop: Crop, here: Here, { materials }: Facts['reference']): NitrogenModel | null {
  const n_g_per_m2 = nitrogenWanted(crop);
  if (!n_g_per_m2) return null;
  const lines = materials.flatMap((material) => lineOf(material, n_g_per_m2, here) ?? []);
  const bag = { low: LABEL_N, high: LABEL_N };
  const all = { low: 100, high: 100 };
  return {
    id: crop.id,
    names: cropNames(crop, here.locale),
    n_g_per_m2,
    feed_5_kg: massSpan(n_g_per_m2, here.area_m2, bag, all) ?? { low: 0, high: 0 },
    materials: lines,
  };
}

/** Null for a material of which no source tells the nitrogen, or how much of it the first year has. */
function lineOf(material: MaterialRecord, wanted: Span, { area_m2, barrow_l, locale }: Here): MaterialLine | null {
  const n = spanOf(material.n_of_100_low, material.n_of_100_high);
  const first = spanOf(material.first_year_n_of_100_low, material.first_year_n_of_100_high);
  const kg = n && first && massSpan(wanted, area_m2, n, first);
  if (!kg) return null;
  const weighs = spanOf(material.kg_per_l_low, material.kg_per_l_high);
  const l = weighs && { low: kg.low / weighs.high, high: kg.high / weighs.low };
  return {
    id: material.id,
    name: inLanguage(material.names, locale) ?? material.id,
    kg,
    l,
    barrows: l && { low: l.low / barrow_l, high: l.high / barrow_l },
  };
}

/** Least of the richest for the smaller target, most of the poorest for the larger; null without nitrogen. */
function massSpan(wanted: Span, area_m2: number, n: Span, first: Span): Span | null {
  const mass = (n_g_m2: number, n_percent: number, of100: number): number | null =>
    massForNitrogen({ n_g_m2, area_m2, n_percent, first_year_share: of100 / 100 });
  return spanOf(mass(wanted.low, n.high, first.high), mass(wanted.high, n.low, first.low));
}

const figuresOf = ({ id, n_g_per_m2, feed_5_kg, materials }: NitrogenModel, basis: string): Figure[] => {
  const pair = (name: string, { low, high }: Span, unit: FigureUnit): Figure[] =>
    [low, high].map((value, index) => {
      const end = index === 0 ? 'least' : 'most';
      return reckoned({ id: `ground.${id}.${name}_${end}`, value, unit, method: 'nitrogen-from-material', basis });
    });
  return [
    ...pair('n_g_per_m2', n_g_per_m2, 'g_per_m2'),
    ...pair('feed_5_kg', feed_5_kg, 'kg'),
    ...materials.flatMap((line) => [
      ...pair(`${line.id}.kg`, line.kg, 'kg'),
      ...(line.l ? pair(`${line.id}.l`, line.l, 'l') : []),
    ]),
  ];
};
