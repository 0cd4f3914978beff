import type { Facts } from '../../src/book/chapter.ts';
import { because, type Figure, happened } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { Crop, Fruit, Planting, Season } from '../../src/garden/garden.ts';
import { harvestOf } from '../../src/ledger/harvest.ts';

/** What the plants of one planting carried. */
interface LoadRow {
  readonly planting: string;
  readonly spot: string;
  /** Null where nobody knows it. */
  readonly variety: string | null;
  readonly plants: number;
  readonly fruits: number;
  /** Fruits a plant, those thinned or dropped young left out. */
  readonly kept: Figure;
  /** Of the picked fruits on the scale. */
  readonly mean_kg: Figure;
}

/** One crop in the last season whose register tells. */
export interface CropLoad {
  readonly crop: string;
  readonly names: { readonly one: string; readonly many: string };
  readonly label: string;
  readonly slug: string;
  /** By spot. */
  readonly rows: readonly LoadRow[];
  readonly plants: number;
  readonly kept: Figure;
  readonly mean_kg: Figure;
}

/** Crops eaten young are left out, and those without a register. */
export const cropLoads = (facts: Facts): CropLoad[] =>
  facts.ledger.years.flatMap(({ crop }) => {
    if (crop.eaten === 'young') return [];
    const season = facts.garden.seasons.findLast((one) => registered(one, crop).length > 0);
    return season ? [loadOf(facts, season, crop)] : [];
  });

/** Plantings whose register counts every fruit as far as anybody knows: no picking tells of more. */
const registered = ({ plantings }: Season, crop: Crop): Planting[] =>
  plantings.filter(
    (planting) =>
      planting.variety?.crop.id === crop.id &&
      planting.plants_set > 0 &&
      planting.fruits.length > 0 &&
      harvestOf(planting)?.from === 'register',
  );

function loadOf(facts: Facts, season: Season, crop: Crop): CropLoad {
  const plantings = registered(season, crop);
  const stem = `thinning.${season.slug}.${crop.id}`;
  const all = figuresOf(facts, stem, plantings);
  return {
    crop: crop.id,
    names: cropNames(crop, facts.garden.about.locale),
    label: season.label,
    slug: season.slug,
    rows: plantings.map((planting) => ({
      planting: planting.id,
      spot: planting.spot.id,
      variety: planting.variety?.name ?? null,
      plants: planting.plants_set,
      fruits: planting.fruits.filter(isKept).length,
      ...figuresOf(facts, `${stem}.${planting.id}`, [planting]),
    })),
    plants: plantsOf(plantings),
    ...all,
  };
}

const isKept = ({ fate }: Fruit): boolean => fate !== 'thinned' && fate !== 'aborted';

const plantsOf = (plantings: readonly Planting[]): number =>
  plantings.reduce((sum, { plants_set }) => sum + plants_set, 0);

function figuresOf({ ledger }: Facts, stem: string, plantings: readonly Planting[]): Pick<LoadRow, 'kept' | 'mean_kg'> {
  const kept = plantings.flatMap(({ fruits }) => fruits.filter(isKept));
  const picked = kept.filter(({ fate }) => fate === 'picked');
  const masses = picked.flatMap(({ pick }) => pick?.mass_kg ?? []);
  const replicate = { kind: 'spot', count: plantings.length };
  const basis = (fruits: readonly Fruit[]): string =>
    ledger.bases.of([...plantings.map(({ key }) => key), ...fruits.map(({ key }) => key)]);
  const some =
    masses.length < picked.length ? because('mean-of-some', { told: masses.length, of: picked.length }) : null;
  return {
    kept: happened({
      id: `${stem}.kept`,
      value: kept.length / plantsOf(plantings),
      unit: 'fruits_per_plant',
      n: kept.length,
      replicate,
      method: 'kept-a-plant',
      basis: basis(plantings.flatMap(({ fruits }) => fruits)),
      reason: null,
    }),
    mean_kg: happened({
      id: `${stem}.mean_kg`,
      value: masses.length === 0 ? null : masses.reduce((sum, mass) => sum + mass, 0) / masses.length,
      unit: 'kg',
      n: masses.length,
      replicate,
      method: 'mean-fruit-mass',
      basis: basis(picked),
      reason: masses.length === 0 ? because('none-weighed') : some,
    }),
  };
}
