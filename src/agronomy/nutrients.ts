/**
 * Nutrients in what is put on the ground. A label may give phosphorus and potassium as oxides; the plant and the book
 * count elements.
 */

/** g/mol: conventional atomic weights of IUPAC, from memory. */
const MOLAR_MASS = { phosphorus: 30.974, potassium: 39.098, oxygen: 15.999 };

/** P in P₂O₅ by mass: 0.4364. */
export const P_IN_P2O5 = (2 * MOLAR_MASS.phosphorus) / (2 * MOLAR_MASS.phosphorus + 5 * MOLAR_MASS.oxygen);
/** K in K₂O by mass: 0.83015. */
export const K_IN_K2O = (2 * MOLAR_MASS.potassium) / (2 * MOLAR_MASS.potassium + MOLAR_MASS.oxygen);

/** The three numbers of a bag, per cent by mass; null for one it does not give. */
export interface Label {
  readonly n_percent: number | null;
  readonly p_percent: number | null;
  readonly k_percent: number | null;
  /** Whether P and K are printed as P₂O₅ and K₂O, the custom in most countries, or as elements. */
  readonly as: 'oxides' | 'elements';
}

/** Elements, kg; null where the label gives no number. */
export interface Nutrients {
  readonly n_kg: number | null;
  readonly p_kg: number | null;
  readonly k_kg: number | null;
}

/** Elements in a mass by its label. Throws RangeError for a negative mass, or a number not from 0 to 100 per cent. */
export function nutrientsIn(mass_kg: number, { n_percent, p_percent, k_percent, as }: Label): Nutrients {
  check('mass_kg', mass_kg, mass_kg >= 0);
  const [p, k] = as === 'oxides' ? [P_IN_P2O5, K_IN_K2O] : [1, 1];
  const of = (name: string, percent: number | null, element: number): number | null => {
    if (percent === null) return null;
    check(name, percent, percent >= 0 && percent <= 100);
    return (mass_kg * percent * element) / 100;
  };
  return {
    n_kg: of('n_percent', n_percent, 1),
    p_kg: of('p_percent', p_percent, p),
    k_kg: of('k_percent', k_percent, k),
  };
}

export interface NitrogenTarget {
  /** Nitrogen the crop is to be given in the season, g a m². 1 g a m² is 10 kg a hectare. */
  readonly n_g_m2: number;
  readonly area_m2: number;
  /** Nitrogen in the material, per cent by mass. */
  readonly n_percent: number;
  /** Part of that nitrogen the plant can have in the first year, above 0 and at most 1. */
  readonly first_year_share: number;
}

/**
 * Mass of a material, kg, that gives the nitrogen wanted: target · area / (share · share of the first year). One pair of
 * values, one mass; for a range the caller asks for both ends. Null for a material without nitrogen: no mass is enough.
 * Throws RangeError for a negative target or area, a per cent not from 0 to 100, or a share not above 0 and at most 1.
 */
export function massForNitrogen({ n_g_m2, area_m2, n_percent, first_year_share }: NitrogenTarget): number | null {
  check('n_g_m2', n_g_m2, n_g_m2 >= 0);
  check('area_m2', area_m2, area_m2 >= 0);
  check('n_percent', n_percent, n_percent >= 0 && n_percent <= 100);
  check('first_year_share', first_year_share, first_year_share > 0 && first_year_share <= 1);
  if (n_percent === 0) return null;
  const wanted_kg = (n_g_m2 * area_m2) / 1000;
  return wanted_kg / ((n_percent / 100) * first_year_share);
}

/**
 * Mass, kg, of a volume by its bulk density, kg a m³ (the same number as g a litre). Throws RangeError for a negative one.
 */
export function massOfVolume(volume_l: number, density_kg_m3: number): number {
  check('volume_l', volume_l, volume_l >= 0);
  check('density_kg_m3', density_kg_m3, density_kg_m3 >= 0);
  return (volume_l * density_kg_m3) / 1000;
}

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
