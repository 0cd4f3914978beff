import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createRebuilds } from '../../../src/site/preview/rebuilds.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const QUIET_MS = 40;
const BUILD_MS = 300;

/** A build that takes its time and notes the state it began with, and how many ran at once. */
function bench(): { state: number; seen: number[]; most: number; build: () => Promise<void> } {
  let running = 0;
  const noted = {
    state: 0,
    seen: [] as number[],
    most: 0,
    build: async () => {
      running += 1;
      noted.most = Math.max(noted.most, running);
      noted.seen.push(noted.state);
      await new Promise((done) => setTimeout(done, BUILD_MS));
      running -= 1;
    },
  };
  return noted;
}

test('saves close together are one build, of the last state', async () => {
  const noted = bench();
  const { want } = createRebuilds(noted.build, QUIET_MS);
  for (noted.state = 1; noted.state < 10; noted.state += 1) {
    want();
    await vi.advanceTimersByTimeAsync(QUIET_MS - 1);
  }
  expect(noted.seen).toEqual([]);
  await vi.advanceTimersByTimeAsync(BUILD_MS * 3);
  expect(noted.seen).toEqual([10]);
});

test('saves during a build start one more when it has ended, never a second beside it', async () => {
  const noted = bench();
  const { want } = createRebuilds(noted.build, QUIET_MS);
  want();
  await vi.advanceTimersByTimeAsync(QUIET_MS);
  for (noted.state = 1; noted.state < 5; noted.state += 1) {
    want();
    await vi.advanceTimersByTimeAsync(QUIET_MS + 1);
  }
  await vi.advanceTimersByTimeAsync(BUILD_MS * 4);
  expect(noted).toMatchObject({ seen: [0, 5], most: 1 });
});

test('a save in the last moment of a build waits for quiet as well', async () => {
  const noted = bench();
  const { want } = createRebuilds(noted.build, QUIET_MS);
  want();
  await vi.advanceTimersByTimeAsync(QUIET_MS + BUILD_MS - 1);
  want();
  await vi.advanceTimersByTimeAsync(QUIET_MS - 1);
  expect(noted.seen).toHaveLength(1);
  await vi.advanceTimersByTimeAsync(1);
  expect(noted.seen).toHaveLength(2);
});

test('once closed nothing begins, and what runs is waited for', async () => {
  const noted = bench();
  const { want, close } = createRebuilds(noted.build, QUIET_MS);
  want();
  await vi.advanceTimersByTimeAsync(QUIET_MS);
  want();
  let isClosed = false;
  void close().then(() => {
    isClosed = true;
  });
  want();
  await vi.advanceTimersByTimeAsync(BUILD_MS - 1);
  expect(isClosed).toBe(false);
  await vi.advanceTimersByTimeAsync(BUILD_MS * 3);
  expect([isClosed, noted.seen.length]).toEqual([true, 1]);
});
