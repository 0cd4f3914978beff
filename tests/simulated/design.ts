import { type Chance, wholeBetween } from './chance.ts';
import { shuffled } from './shuffled.ts';
import { varietyOf } from './variety.ts';

/** Which varieties stand in how many mounds: a string of initials for each block, or one string without blocks. */
export type Design = { readonly blocks: readonly string[] } | { readonly unblocked: string };

export interface Mound {
  readonly spot: string;
  /** Null in a garden without blocks. */
  readonly block: string | null;
  readonly variety: string;
  readonly plants: number;
}

const MOST_PLANTS = 2;

/** The mounds of a design, one or two plants to each, varieties given to spots by lot within their block. */
export function laidOut(design: Design, chance: Chance): Mound[] {
  const rows = 'blocks' in design ? design.blocks : [design.unblocked];
  return rows.flatMap((row, index) =>
    shuffled(chance, [...row]).map((initial, place) => ({
      spot: `${'blocks' in design ? `R${index + 1}` : 'M'}-${place + 1}`,
      block: 'blocks' in design ? `B${index + 1}` : null,
      variety: varietyOf(initial).id,
      plants: wholeBetween(chance, 1, MOST_PLANTS),
    })),
  );
}

/** The initials in a design, each once, in the alphabet's order. */
export function initialsOf(design: Design): string[] {
  const rows = 'blocks' in design ? design.blocks : [design.unblocked];
  return [...new Set(rows.join(''))].sort();
}
