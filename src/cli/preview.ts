import { realpathSync } from 'node:fs';
import type { Day } from '../day.ts';
import { Refusal } from '../disk/refusal.ts';
import { createRebuilds } from '../site/preview/rebuilds.ts';
import { type Ports, startServer } from '../site/preview/server.ts';
import { watchGarden } from '../site/preview/watch-garden.ts';
import { createMaker } from './warm-maker.ts';

export interface PreviewOptions {
  /** Null: the usual one, or the next that is free. */
  readonly port: number | null;
  readonly today: Day | null;
  readonly version: string;
}

export interface PreviewEffects {
  /** A line, or several with their own line ends, for the person at the terminal. */
  readonly say: (text: string) => void;
  /** Called after every build, when the pages have changed. */
  readonly shown: () => void;
}

export interface OpenPreview {
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** The usual port, and how many more are tried. */
const USUAL: Ports = { first: 7417, tries: 20 };
/** An editor saves in several steps a few ms apart. */
const QUIET_MS = 40;

/** Shows the handbook in a browser, anew after every save, until the terminal says stop. */
export async function preview(folder: string, options: PreviewOptions): Promise<void> {
  const say = (text: string): void => void process.stderr.write(text.endsWith('\n') ? text : `${text}\n`);
  const stopped = new Promise<void>((done) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => done());
  });
  const open = await openPreview(folder, options, { say, shown: () => {} });
  await stopped;
  await open.close();
  say('closed');
}

/** Builds once, serves it, and builds again whenever a record is saved. Throws Refusal where there is no garden. */
export async function openPreview(
  folder: string,
  { port, today, version }: PreviewOptions,
  { say, shown }: PreviewEffects,
): Promise<OpenPreview> {
  const root = rootOf(folder);
  const changes = new Set<string>();
  let want = (): void => {};
  // Watching comes first: what is saved during the first build is not lost.
  const watching = await watchGarden(root, {
    changed: (path) => {
      changes.add(path);
      want();
    },
    failed: (error) => say(`unseen   a part of the garden cannot be watched: ${error.message}`),
  });
  try {
    const make = createMaker(root, { today, version, say });
    const server = await startServer(await make(), port === null ? USUAL : { first: port, tries: 1 });
    const rebuilds = createRebuilds(async () => {
      say(`changed  ${changedLine([...changes])}`);
      changes.clear();
      server.show(await make());
      shown();
    }, QUIET_MS);
    want = rebuilds.want;
    if (changes.size > 0) want();
    say(`open     ${server.address} while this runs; Ctrl-C ends it`);
    return { address: server.address, close: () => closeAll([watching, rebuilds, server]) };
  } catch (error) {
    await watching.close();
    throw error;
  }
}

async function closeAll(parts: readonly { readonly close: () => Promise<void> }[]): Promise<void> {
  for (const part of parts) await part.close();
}

/** The folder without links in its name, so that what is watched and what is read are called alike. */
function rootOf(folder: string): string {
  try {
    return realpathSync.native(folder);
  } catch {
    throw new Refusal('not-found', `there is no folder ${folder}`, 'begin a garden with: groundspot new <folder>');
  }
}

const changedLine = ([first = 'something', ...others]: readonly string[]): string =>
  others.length === 0 ? first : `${first} and ${others.length} more`;
