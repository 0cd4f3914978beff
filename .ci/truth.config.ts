import { defineConfig } from 'vitest/config';

/** The slow reports, read as they are printed. */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/truth/**/*.truth.ts'],
    testTimeout: 1_800_000,
    disableConsoleIntercept: true,
    fileParallelism: false,
    reporters: [['default', { summary: false }]],
  },
});
