/** Invented varieties by the initials that designs are written in. */
const NAMES = ['Amber', 'Birch', 'Cinder', 'Dapple', 'Ember', 'Fennel', 'Garnet', 'Hazel'];

export interface Variety {
  readonly id: string;
  readonly name: string;
}

/** Throws RangeError for an initial that no variety has. */
export function varietyOf(initial: string): Variety {
  const name = NAMES.find((one) => one.startsWith(initial));
  if (!name) throw new RangeError(`invalid initial: ${initial}`);
  return { id: name.toLowerCase(), name };
}
