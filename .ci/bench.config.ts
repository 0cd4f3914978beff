import { defineConfig } from 'vitest/config';

/** What a build costs beside what its libraries cost alone: a table to read, no test. */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/bench/**/*.bench.ts'],
    testTimeout: 3_600_000,
    fileParallelism: false,
    disableConsoleIntercept: true,
    reporters: [['default', { summary: false }]],
  },
});
