import type { PlainDifference } from '../../src/ledger/trial/plain-twin.ts';
import type { Trait } from '../../src/ledger/trial/trait.ts';

/** A plain difference with its standard errors where it is printed: in the trait's unit, of a ratio in times. */
export type PlainInPrint = PlainDifference;

/** Of ratios the fit's standard errors are those of logarithms: e to them says how many times up or down. */
export const plainInPrint = ({ scale }: Trait, plain: PlainDifference): PlainInPrint =>
  scale === 'ratio' ? { ...plain, sed: times(plain.sed), over_seasons_se: times(plain.over_seasons_se) } : plain;

const times = (logarithms: number | null): number | null => (logarithms === null ? null : Math.exp(logarithms));
