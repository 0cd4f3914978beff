import type { Fruit, Picking, Planting } from '../garden/garden.ts';
import { addTallies, isComplete, type Tally } from './tally.ts';

/** What one planting gave in one season. Register and pickings are two views of it and never added. */
export interface Harvest {
  readonly planting: Planting;
  /** Which record the tallies come from: the one that counts more fruits. */
  readonly from: 'register' | 'pickings' | 'all-plants-died';
  readonly fruits: number;
  /** Whole fruits among them. */
  readonly sound: Tally;
  readonly mass_kg: Tally;
  /** Mass of the whole fruits; told for a fruit known to be not whole, weighed or not. */
  readonly sound_mass_kg: Tally;
  /** A count of pickings was reckoned, not counted. */
  readonly about: boolean;
  /** Fruits still on the vine as far as the records know. */
  readonly growing: number;
  /** Keys of the records it rests on. */
  readonly keys: readonly string[];
}

type View = Pick<Harvest, 'fruits' | 'sound' | 'mass_kg' | 'sound_mass_kg' | 'about'>;

/** Null when nothing says whether the planting bore anything: a blank is not a zero. */
export function harvestOf(planting: Planting): Harvest | null {
  const register = planting.fruits.length > 0 ? registerView(planting.fruits) : null;
  const pickings = planting.pickings.length > 0 ? pickingsView(planting.pickings) : null;
  const growing = planting.fruits.filter(({ fate }) => fate === 'growing').length;
  const keys = [planting.key, ...planting.fruits.map(({ key }) => key), ...planting.pickings.map(({ key }) => key)];
  const told = (from: Harvest['from'], view: View): Harvest => ({ planting, from, ...view, growing, keys });
  if (register && (!pickings || prefers(register, pickings))) return told('register', register);
  if (pickings) return told('pickings', pickings);
  return planting.plants_alive === 0 ? told('all-plants-died', registerView([])) : null;
}

/** The larger count holds; at equal counts the register, unless only the pickings were weighed. */
function prefers(register: View, pickings: View): boolean {
  if (register.fruits !== pickings.fruits) return register.fruits > pickings.fruits;
  return isComplete(register.mass_kg) || !isComplete(pickings.mass_kg);
}

function registerView(fruits: readonly Fruit[]): View {
  const picked = fruits
    .filter(({ fate }) => fate === 'picked')
    .map(({ pick }) => ({ condition: pick?.condition ?? null, mass: pick?.mass_kg ?? null }));
  const tally = (values: readonly (number | null)[]): Tally =>
    addTallies(values.map((value) => ({ sum: value ?? 0, told: value === null ? 0 : 1, of: 1 })));
  const isWhole = (condition: string | null): number | null =>
    condition === null ? null : condition === 'whole' ? 1 : 0;
  return {
    fruits: picked.length,
    sound: tally(picked.map(({ condition }) => isWhole(condition))),
    mass_kg: tally(picked.map(({ mass }) => mass)),
    sound_mass_kg: tally(
      picked.map(({ condition, mass }) => (condition === null ? null : condition === 'whole' ? mass : 0)),
    ),
    about: false,
  };
}

function pickingsView(pickings: readonly Picking[]): View {
  const tally = (of: (picking: Picking) => number | null): Tally =>
    addTallies(
      pickings.map((picking) => ({
        sum: of(picking) ?? 0,
        told: of(picking) === null ? 0 : picking.count,
        of: picking.count,
      })),
    );
  return {
    fruits: pickings.reduce((sum, { count }) => sum + count, 0),
    sound: tally(({ sound_count }) => sound_count),
    mass_kg: tally(({ mass_kg }) => mass_kg),
    sound_mass_kg: tally(soundMass),
    about: pickings.some(({ entered }) => Object.keys(entered).length > 0),
  };
}

function soundMass({ count, sound_count, mass_kg, sound_mass_kg }: Picking): number | null {
  if (sound_count === 0) return 0;
  return sound_mass_kg ?? (sound_count === count ? mass_kg : null);
}
