import type { Facts } from '../../src/book/chapter.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { cropsOf } from '../../src/garden/crops-of.ts';
import type { Crop, Spot } from '../../src/garden/garden.ts';
import { inLanguage } from '../../src/garden/in-language.ts';
import { lastPlanted } from '../../src/garden/last-planted.ts';
import { measuresOf } from '../../src/garden/measures.ts';
import { type Rhythm, rhythmIn } from '../../src/ledger/water/rhythm.ts';

/** What a neighbour needs who waters and picks for a week. */
export interface AwayModel {
  readonly spots: readonly {
    readonly id: string;
    readonly kind: Spot['kind'];
    readonly grows: readonly string[];
    /** In a usual week at full leaf; null to be written in. */
    readonly water: Rhythm | null;
  }[];
  /** Some spot’s cans are filled in. */
  readonly reckoned: boolean;
  readonly can_l: number;
  readonly can_measured: boolean;
  readonly crops: readonly PickLine[];
}

interface PickLine {
  readonly many: string;
  readonly eaten: 'ripe' | 'young';
  /** Signs to look for, in words of the crop's file; empty where it has none. */
  readonly signs: readonly string[];
}

/** A neighbour looks for three signs, not for six. */
const SIGNS_TOLD = 3;

/** Spots of the last season that was planted, else all of the garden's. */
export function awayModel({ garden, ledger }: Facts): AwayModel {
  const { about, spots, varieties } = garden;
  const plantings = lastPlanted(garden)?.plantings ?? [];
  const planted = spots.filter(({ id }) => plantings.some(({ spot }) => spot.id === id));
  const shown = planted.length > 0 ? planted : spots;
  const grown = cropsOf(plantings.flatMap(({ variety }) => variety ?? []));
  const { can_l, can_measured } = measuresOf(about);
  const rows = shown.map(({ id, kind }) => {
    const own = plantings.filter(({ spot }) => spot.id === id);
    return {
      id,
      kind,
      grows: [...new Set(own.flatMap(({ variety }) => variety?.name ?? []))],
      water: waterOf(ledger, own[0]?.variety?.crop.id ?? null, can_l),
    };
  });
  return {
    spots: rows,
    reckoned: rows.some(({ water }) => water !== null),
    can_l,
    can_measured,
    crops: (grown.length > 0 ? grown : cropsOf(varieties)).map((crop) => pickLine(crop, about.locale)),
  };
}

function waterOf({ water }: Facts['ledger'], crop: string | null, can_l: number): Rhythm | null {
  const plan = water?.crops.find((one) => one.crop.id === crop);
  const full = plan?.stages.find(({ stage }) => stage === 'middle');
  return rhythmIn(full, 'usual', can_l);
}

const pickLine = (crop: Crop, locale: string): PickLine => ({
  many: cropNames(crop, locale).many,
  eaten: crop.eaten ?? 'ripe',
  signs: (crop.signs ?? [])
    .filter(({ on_card, shown }) => on_card && shown?.parted == null)
    .flatMap(({ names }) => inLanguage(names, locale) ?? [])
    .slice(0, SIGNS_TOLD),
});
