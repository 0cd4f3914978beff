import { mkdirSync, readFileSync, unlinkSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { Refusal } from './refusal.ts';
import { isRunning } from './running.ts';
import { inPlainWords, systemCode } from './system-error.ts';

const LOCK_FILE = 'lock';
const TRIES = 5;
const WAIT_MS = 40;

interface Holder {
  readonly pid: number;
  readonly host: string;
  /** When the process started, ms since 1970: tells us from a dead process that had our number. */
  readonly started_ms: number;
}

/**
 * Runs `work` while no other process works on `folder` (made when missing). Always gives the lock back.
 * A lock whose process is dead is taken over; a live one, or one of another machine, throws a Refusal `locked`.
 */
export async function withLock<T>(folder: string, work: () => Promise<T>): Promise<T> {
  const path = join(folder, LOCK_FILE);
  const text = await take(folder, path);
  try {
    return await work();
  } finally {
    removeIfStill(path, text);
  }
}

/** Takes the lock and gives the text it wrote. */
async function take(folder: string, path: string): Promise<string> {
  inPlainWords(folder, () => mkdirSync(folder, { recursive: true }));
  const text = `${JSON.stringify(thisProcess())}\n`;
  let seen: string | null = null;
  for (let attempt = 0; attempt < TRIES; attempt += 1) {
    if (create(path, text)) return text;
    seen = textOf(path);
    const holder = seen === null ? null : parseHolder(seen);
    if (holder && isHeld(holder)) throw locked(path, holder);
    // A text that cannot be read may be one that is just being written: look again before taking it over.
    if (seen !== null && (holder || attempt > 1)) removeIfStill(path, seen);
    await sleep(WAIT_MS);
  }
  throw locked(path, seen === null ? null : parseHolder(seen));
}

/** False when there is a lock already. */
function create(path: string, text: string): boolean {
  return inPlainWords(path, () =>
    unless('EEXIST', false, () => {
      writeFileSync(path, text, { flag: 'wx' });
      return true;
    }),
  );
}

const thisProcess = (): Holder => ({
  pid: process.pid,
  host: hostname(),
  started_ms: Math.round(performance.timeOrigin),
});

function isHeld(holder: Holder): boolean {
  const us = thisProcess();
  if (holder.host !== us.host) return true;
  if (holder.pid === us.pid) return holder.started_ms === us.started_ms;
  return isRunning(holder.pid);
}

function locked(path: string, holder: Holder | null): Refusal {
  const who = holder ? `process ${holder.pid} on ${holder.host}` : 'another process';
  return new Refusal(
    'locked',
    `${who} is working here (${path})`,
    'Wait until it is done. If nothing runs there any more, delete that file.',
  );
}

function parseHolder(text: string): Holder | null {
  try {
    const { pid, host, started_ms } = JSON.parse(text) as Partial<Holder>;
    const whole = Number.isInteger(pid) && typeof host === 'string' && typeof started_ms === 'number';
    return whole ? { pid: Number(pid), host, started_ms } : null;
  } catch {
    return null;
  }
}

const textOf = (path: string): string | null =>
  inPlainWords(path, () => unless('ENOENT', null, () => readFileSync(path, 'utf8')));

/** Leaves a lock alone that another process has put in the dead one's place meanwhile. */
function removeIfStill(path: string, text: string): void {
  if (textOf(path) === text) inPlainWords(path, () => unless('ENOENT', undefined, () => unlinkSync(path)));
}

/** The outcome of `work`, or `instead` when the system answers with this one code. */
function unless<T>(code: string, instead: T, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (systemCode(error) === code) return instead;
    throw error;
  }
}
