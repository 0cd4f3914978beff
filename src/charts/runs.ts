/** A value that is known, its place in the row, and which stretch without a gap it belongs to. */
export interface RunValue {
  readonly place: number;
  readonly value: number;
  readonly run: number;
}

/** A line is drawn along a run; between two runs something is not known, and no line is drawn. */
export function runsOf(values: readonly (number | null)[]): RunValue[] {
  let run = 0;
  return values.flatMap((value, place) => {
    if (value === null) return [];
    if (place > 0 && values[place - 1] === null) run += 1;
    return [{ place, value, run }];
  });
}
