import type { CropModel, LastSet } from './crop-model.ts';

/** After which day a set comes too late, crops of one day together. */
export interface LateLine {
  /** Null where it holds for every crop grown. */
  readonly names: readonly string[] | null;
  readonly last_set: LastSet;
}

/** A crop eaten young, or whose days to ripe nobody tells, has none. */
export function lateLines(crops: readonly CropModel[]): LateLine[] {
  const lines = new Map<number, { names: string[]; last_set: LastSet }>();
  for (const { young, last_set, names } of crops) {
    if (young || last_set?.days.value == null) continue;
    const line = lines.get(last_set.days.value) ?? { names: [], last_set };
    line.names.push(names.many);
    lines.set(last_set.days.value, line);
  }
  return [...lines.values()].map(({ names, last_set }) => ({
    names: names.length === crops.length ? null : names,
    last_set,
  }));
}
