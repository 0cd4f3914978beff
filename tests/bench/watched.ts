/**
 * Loaded before a script: at its end writes how much memory it took at most and what clock and processor had counted,
 * at its end and whenever a line it said began with a new word. Where to: BENCH_WATCHED.
 */
import { writeFileSync } from 'node:fs';

/** Seconds since the process started. */
export interface Mark {
  readonly clock: number;
  readonly processor: number;
}

export interface Watched {
  readonly peak_mb: number;
  readonly end: Mark;
  readonly marks: Readonly<Record<string, Mark>>;
}

const marks: Record<string, Mark> = {};
const say = process.stderr.write.bind(process.stderr);
process.stderr.write = ((text: string) => {
  const word = /^[a-z]+(?= )/.exec(text)?.[0];
  if (word) marks[word] ??= now();
  return say(text);
}) as typeof process.stderr.write;

process.on('exit', () => {
  const peak_mb = process.resourceUsage().maxRSS / 1024;
  writeFileSync(process.env.BENCH_WATCHED ?? '', JSON.stringify({ peak_mb, end: now(), marks } satisfies Watched));
});

function now(): Mark {
  const { user, system } = process.cpuUsage();
  return { clock: performance.now() / 1000, processor: (user + system) / 1e6 };
}
