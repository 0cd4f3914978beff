/** Builds on request, one after another. */
export interface Rebuilds {
  /** Something was saved: build once all has been quiet for a while. */
  readonly want: () => void;
  /** Builds no more; resolves when the one under way has ended. */
  readonly close: () => Promise<void>;
}

/**
 * Never two builds at once; whatever is saved during one starts one more afterwards, so the last state wins.
 * `build` must not reject.
 */
export function createRebuilds(build: () => Promise<void>, quietMs: number): Rebuilds {
  let timer: NodeJS.Timeout | null = null;
  let running: Promise<void> | null = null;
  let isWanted = false;
  let isClosed = false;
  const start = (): void => {
    if (!isWanted || running !== null || timer !== null || isClosed) return;
    isWanted = false;
    running = build().finally(() => {
      running = null;
      start();
    });
  };
  return {
    want: () => {
      isWanted = true;
      if (timer !== null) clearTimeout(timer);
      timer = setTimeout(() => {
        timer = null;
        start();
      }, quietMs);
    },
    close: async () => {
      isClosed = true;
      if (timer !== null) clearTimeout(timer);
      await running;
    },
  };
}
