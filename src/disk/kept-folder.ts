import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Kept } from '../kept.ts';
import { writeAtomic } from './atomic-file.ts';
import { sha256 } from './output/manifest.ts';
import { isPlainData } from './plain-data.ts';
import { Refusal } from './refusal.ts';
import { systemCode } from './system-error.ts';

/** Kept values in a folder: one file a kind. */
export interface KeptFolder extends Kept {
  /**
   * Writes what was found or kept since the last save and drops the rest, so that the folder never holds more than one
   * build uses. Kinds that nobody asked for stay. A folder that cannot be written is left as it is.
   */
  readonly save: () => void;
}

interface Value {
  /** sha256 of the text. */
  readonly sum: string;
  readonly text: Uint8Array;
  /** What the text says, once somebody asked for it and its hash was right. */
  data?: unknown;
}

/** Values by the hash of their inputs. */
type Values = ReadonlyMap<string, Value>;

/** One kind of values. */
interface Pack {
  onDisk: Values;
  /** What can be found: what the disk held, or the last save. */
  known: Values;
  /** Found or kept since the last save. */
  readonly used: Map<string, Value>;
}

const HEAD = '# groundspot kept 1';
const LINE_END = 10;
const HASH_LENGTH = 64;

/**
 * Opens the kept values of a folder that need not exist. `mark` names the program that makes them: what another one
 * kept is not found. A damaged value is not found either, for each carries the hash of its text.
 */
export function openKept(folder: string, mark: string): KeptFolder {
  const packs = new Map<string, Pack>();
  const head = `${HEAD} ${mark}`;
  const packOf = (kind: string): Pack => {
    const pack = packs.get(kind) ?? readPack(join(folder, kind), head);
    packs.set(kind, pack);
    return pack;
  };
  return {
    find: (kind, inputs) => {
      const { known, used } = packOf(kind);
      const key = sha256(inputs);
      const value = used.get(key) ?? known.get(key);
      if (!value || !isRead(value)) return undefined;
      used.set(key, value);
      return value.data;
    },
    keep: (kind, inputs, data) => {
      if (!isPlainData(data)) return;
      const text = Buffer.from(JSON.stringify(data));
      packOf(kind).used.set(sha256(inputs), { sum: sha256(text), text, data });
    },
    save: () => {
      for (const [kind, pack] of packs) savePack(folder, kind, head, pack);
    },
  };
}

/** False for a text that is not as it was written. */
function isRead(value: Value): boolean {
  if (value.data === undefined && sha256(value.text) === value.sum)
    value.data = JSON.parse(new TextDecoder().decode(value.text));
  return value.data !== undefined;
}

/** Each line: hash of the inputs, hash of the text, the text. What is cut off or of another program is passed over. */
function readPack(path: string, head: string): Pack {
  const values = new Map<string, Value>();
  const [first, ...lines] = linesOf(bytesAt(path));
  if (first && first.toString() === head) {
    for (const line of lines) {
      const key = line.toString('latin1', 0, HASH_LENGTH);
      const sum = line.toString('latin1', HASH_LENGTH + 1, 2 * HASH_LENGTH + 1);
      if (sum.length === HASH_LENGTH) values.set(key, { sum, text: line.subarray(2 * HASH_LENGTH + 2) });
    }
  }
  return { onDisk: values, known: values, used: new Map() };
}

function bytesAt(path: string): Buffer {
  try {
    return readFileSync(path);
  } catch (error) {
    if (systemCode(error) === null) throw error;
    return Buffer.alloc(0);
  }
}

function linesOf(bytes: Buffer): Buffer[] {
  const lines: Buffer[] = [];
  let from = 0;
  for (let end = bytes.indexOf(LINE_END); end >= 0; end = bytes.indexOf(LINE_END, from)) {
    lines.push(bytes.subarray(from, end));
    from = end + 1;
  }
  return lines;
}

function savePack(folder: string, kind: string, head: string, pack: Pack): void {
  const values: Values = new Map([...pack.used].sort(([a], [b]) => (a < b ? -1 : 1)));
  const stands =
    values.size === pack.onDisk.size && [...values].every(([key, value]) => pack.onDisk.get(key) === value);
  if (!stands && isWritten(folder, kind, head, values)) pack.onDisk = values;
  pack.known = values;
  pack.used.clear();
}

/** False where the disk says no: the next process then makes again what this one made. */
function isWritten(folder: string, kind: string, head: string, values: Values): boolean {
  const lines = [...values].flatMap(([key, { sum, text }]) => [Buffer.from(`${key} ${sum} `), text, Buffer.from('\n')]);
  try {
    mkdirSync(folder, { recursive: true });
    writeAtomic(join(folder, kind), Buffer.concat([Buffer.from(`${head}\n`), ...lines]));
    return true;
  } catch (error) {
    if (error instanceof Refusal || systemCode(error) !== null) return false;
    throw error;
  }
}
