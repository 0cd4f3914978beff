/**
 * What a mulch takes off the crop coefficient: FAO Irrigation and Drainage Paper 56 (Allen et al. 1998), chapter 10. A
 * mulch chiefly saves what the bare ground between the leaves would lose.
 */
import type { Coefficients } from './crop-coefficient.ts';

/**
 * Shares of 1. `cover` is the part of the ground under the mulch. What plastic over the whole ground does differs from
 * crop to crop, even in sign, so its cuts are the crop's own (the paper's table 25) and have no default.
 */
export type Mulch =
  | { readonly kind: 'none' }
  | { readonly kind: 'organic'; readonly cover: number }
  | {
      readonly kind: 'plastic';
      readonly cover: number;
      /** The single coefficient of the first stage under whole cover; the paper has it near 0.10. */
      readonly kc_initial: number;
      /** Off the single coefficient of the full stage and the end. */
      readonly kc_cut: number;
      /** Off the basal coefficient; negative where the plants drink more for the warmer ground. */
      readonly transpiration_cut: number;
      readonly evaporation_cut: number;
    };

/** Of the soil's evaporation, 5 in 100 less for every 10 in 100 of the ground covered. */
const SAVED_BY_ORGANIC_COVER = 0.5;

/**
 * The share of the soil's evaporation that the mulch takes off, 0 to 1. Plastic over a part of the ground takes off its
 * share of that part; the paper gives whole cover only, so this straight line is the makers' choice.
 * Throws RangeError for a share out of its range.
 */
export function evaporationCut(mulch: Mulch): number {
  check(mulch);
  if (mulch.kind === 'none') return 0;
  return mulch.cover * (mulch.kind === 'organic' ? SAVED_BY_ORGANIC_COVER : mulch.evaporation_cut);
}

/**
 * Single coefficients under a mulch. Organic: the first stage, mostly evaporation, falls by the evaporation's cut r; the
 * full stage and the end by r (Kc - Kcb), their evaporating part (nothing where Kcb is the larger). Plastic: the crop's
 * own cut, in proportion to the cover. Throws RangeError for a share out of its range.
 */
export function mulchedSingle(kc: Coefficients, kcb: Coefficients, mulch: Mulch): Coefficients {
  const cut = evaporationCut(mulch);
  if (mulch.kind === 'plastic') {
    const kept = 1 - mulch.cover * mulch.kc_cut;
    return {
      initial: kc.initial + mulch.cover * (mulch.kc_initial - kc.initial),
      middle: kc.middle * kept,
      end: kc.end * kept,
    };
  }
  return {
    initial: kc.initial * (1 - cut),
    middle: kc.middle - cut * Math.max(kc.middle - kcb.middle, 0),
    end: kc.end - cut * Math.max(kc.end - kcb.end, 0),
  };
}

/**
 * Basal coefficients under a mulch: unchanged by an organic one; by plastic cut as the crop's transpiration is, in
 * proportion to the cover. Throws RangeError for a share out of its range.
 */
export function mulchedBasal(kcb: Coefficients, mulch: Mulch): Coefficients {
  check(mulch);
  if (mulch.kind !== 'plastic') return kcb;
  const kept = 1 - mulch.cover * mulch.transpiration_cut;
  return { initial: kcb.initial * kept, middle: kcb.middle * kept, end: kcb.end * kept };
}

function check(mulch: Mulch): void {
  const { kind, ...shares } = mulch;
  for (const [name, share] of Object.entries(shares)) {
    const least = name === 'transpiration_cut' ? -1 : 0;
    if (!(share >= least && share <= 1)) throw new RangeError(`invalid ${name}: ${share} of ${kind}`);
  }
}
