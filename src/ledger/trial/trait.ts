import type { FigureUnit } from '../../figure.ts';

export type TraitId =
  | 'brix'
  | 'sweet'
  | 'sound_kg_per_plant'
  | 'ripe_fruits_per_plant'
  | 'mass_kg'
  | 'size'
  | 'first_ripe_days'
  | 'first_ripe_c_days'
  | 'crisp'
  | 'juicy'
  | 'liked'
  | 'looks';

/** Something varieties of a crop are compared by. */
export interface Trait {
  readonly id: TraitId;
  /** Of a level; a difference has it too, unless the scale is that of ratios. */
  readonly unit: FigureUnit;
  /** What gives one value: a fruit, or a planting alone in its spot. */
  readonly of: 'fruit' | 'mound';
  readonly better: 'more' | 'less';
  /** Masses are compared by how many times one is the other, since their spread grows with them. */
  readonly scale: 'plain' | 'ratio';
  /** Fruits of one picking day shared their rain, their meter and their taster. */
  readonly by_day: boolean;
}

const trait = (id: TraitId, unit: FigureUnit, of: Trait['of'], told: Partial<Trait> = {}): Trait => ({
  id,
  unit,
  of,
  better: 'more',
  scale: 'plain',
  by_day: false,
  ...told,
});

/** In the order they are printed. The words of a ladder count from 1, a step like another. */
export const TRAITS: readonly Trait[] = [
  trait('brix', 'brix', 'fruit', { by_day: true }),
  trait('sweet', 'steps', 'fruit'),
  trait('sound_kg_per_plant', 'kg_per_plant', 'mound'),
  trait('ripe_fruits_per_plant', 'fruits_per_plant', 'mound'),
  trait('mass_kg', 'kg', 'fruit', { scale: 'ratio' }),
  trait('size', 'steps', 'fruit'),
  trait('first_ripe_days', 'days', 'mound', { better: 'less' }),
  trait('first_ripe_c_days', 'c_days', 'mound', { better: 'less' }),
  trait('crisp', 'steps', 'fruit'),
  trait('juicy', 'steps', 'fruit'),
  trait('liked', 'steps', 'fruit'),
  trait('looks', 'steps', 'fruit'),
];

/** Throws RangeError for an id that is none. */
export function traitOf(id: string): Trait {
  const found = TRAITS.find((one) => one.id === id);
  if (!found) throw new RangeError(`invalid trait: ${id}`);
  return found;
}

/** Ratios are told by logarithms. */
export const scaled = ({ scale }: Trait, value: number): number => (scale === 'ratio' ? Math.log(value) : value);

/** Back from the scale of a fit: to the trait's unit, or of a ratio's difference to times. */
export const unscaled = ({ scale }: Trait, value: number): number => (scale === 'ratio' ? Math.exp(value) : value);
