/** How observations lie over treatments and blocks, whatever their values. */
import { components } from './connectivity.ts';

export interface Observation {
  readonly treatment: string;
  /** The block (bed, row, day) the observation shares with others; null when it has none. */
  readonly block: string | null;
  readonly value: number;
}

/** An observation by the places of its treatment and block in the design's lists. */
export interface Cell {
  readonly treatment: number;
  readonly block: number;
  readonly value: number;
}

export interface BlockDesign {
  /** Sorted by code unit. */
  readonly treatments: readonly string[];
  /** Sorted by code unit; empty when the model has none: see `arrange`. */
  readonly blocks: readonly string[];
  /** Sorted by treatment, block, value: sums run in one order, whatever the order of the records. */
  readonly cells: readonly Cell[];
}

/**
 * Blocks count only when every observation names one and there are at least two blocks and two treatments:
 * with one treatment there is no comparison a block could make fairer, and its blocks are its repeats.
 * Throws RangeError for a value that is not finite.
 */
export function arrange(observations: readonly Observation[]): BlockDesign {
  const treatments = sortedNames(observations.map((one) => one.treatment));
  const named = observations.flatMap((one) => (one.block === null ? [] : [one.block]));
  const found = sortedNames(named);
  const usable = named.length === observations.length && found.length > 1 && treatments.length > 1;
  const blocks = usable ? found : [];
  const treatmentPlace = places(treatments);
  const blockPlace = places(blocks);
  const cells = observations.map((one) => ({
    treatment: treatmentPlace.get(one.treatment) ?? 0,
    block: blockPlace.get(one.block ?? '') ?? 0,
    value: checked(one.value),
  }));
  cells.sort((a, b) => a.treatment - b.treatment || a.block - b.block || a.value - b.value);
  return { treatments, blocks, cells };
}

/** Whether every treatment stands equally often in every block; false without blocks. */
export function isComplete(design: BlockDesign): boolean {
  const { treatments, blocks, cells } = design;
  if (blocks.length === 0) return false;
  const counts = new Array<number>(treatments.length * blocks.length).fill(0);
  for (const cell of cells) {
    const place = cell.treatment * blocks.length + cell.block;
    counts[place] = (counts[place] ?? 0) + 1;
  }
  return counts.every((count) => count === counts[0]);
}

/**
 * Treatments that can be compared with each other: two are linked when they share a block, or are both linked
 * to a third. One group means a connected design. Names sorted in each group, groups by their first name.
 */
export function linkedGroups(design: BlockDesign): string[][] {
  const togetherIn = new Map<number, string[]>();
  for (const { block, treatment } of design.cells) {
    const together = togetherIn.get(block) ?? [];
    together.push(design.treatments[treatment] ?? '');
    togetherIn.set(block, together);
  }
  return components([...togetherIn.values()]);
}

const sortedNames = (names: readonly string[]): string[] => [...new Set(names)].sort();

const places = (names: readonly string[]): Map<string, number> => new Map(names.map((name, place) => [name, place]));

function checked(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`invalid value: ${value}`);
  return value;
}
