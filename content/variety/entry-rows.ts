import type { Facts } from '../../src/book/chapter.ts';
import type { Variety } from '../../src/garden/garden.ts';
import type { CropTrial } from '../../src/ledger/trial/crop-trial.ts';
import { pathOf } from './paths.ts';

/** What stood in the trial: one variety, its seed and its stand. */
export interface EntryRow {
  readonly name: string;
  readonly path: string;
  readonly yardstick: boolean;
  readonly seed: Variety['seed'];
  readonly stated_size: string | null;
  readonly stated_days: number | null;
  readonly stated_days_from: string | null;
  readonly seasons: readonly string[];
  readonly plants_set: number;
  /** Of the plantings whose plants alive were counted; null where none was. */
  readonly plants_alive: number | null;
  readonly plants_counted: number;
  readonly note: string | null;
}

/** Varieties planted in a season of the trial, in the alphabet's order. */
export const entryRows = ({ garden }: Facts, { varieties, yardstick }: CropTrial): EntryRow[] =>
  varieties.flatMap((variety) => {
    const seasons = garden.seasons.flatMap((season) => {
      const own = season.plantings.filter((planting) => planting.variety?.id === variety.id);
      return own.length > 0 ? [{ label: season.label, own }] : [];
    });
    const plantings = seasons.flatMap(({ own }) => own);
    if (plantings.length === 0) return [];
    const counted = plantings.filter(({ plants_alive }) => plants_alive !== null);
    const sum = (of: readonly (number | null)[]): number => of.reduce<number>((all, one) => all + (one ?? 0), 0);
    return [
      {
        name: variety.name,
        path: pathOf(variety),
        yardstick: variety === yardstick?.variety,
        seed: variety.seed,
        stated_size: variety.stated_size,
        stated_days: variety.stated_days,
        stated_days_from: variety.stated_days_from,
        seasons: seasons.map(({ label }) => label),
        plants_set: sum(plantings.map(({ plants_set }) => plants_set)),
        plants_alive: counted.length > 0 ? sum(counted.map(({ plants_alive }) => plants_alive)) : null,
        plants_counted: sum(counted.map(({ plants_set }) => plants_set)),
        note: variety.note,
      },
    ];
  });
