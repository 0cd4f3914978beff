/** The least and the most that sources leave room for; equal where a scale and a label tell. */
export interface Span {
  readonly low: number;
  readonly high: number;
}

/** Null unless both ends are told. */
export const spanOf = (low: number | null, high: number | null): Span | null =>
  low === null || high === null ? null : { low, high };
