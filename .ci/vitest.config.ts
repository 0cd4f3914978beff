import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    // All processors: by itself the test runner leaves one idle, which is half of a small machine.
    maxWorkers: availableParallelism(),
    testTimeout: 120_000,
  },
});
