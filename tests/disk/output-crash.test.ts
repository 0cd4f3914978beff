import { existsSync, mkdirSync, readdirSync, rmSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Changes } from '../../src/disk/changes.ts';
import { IGNORE_TEXT, publishFolder, recover } from '../../src/disk/output-folder.ts';
import { Refusal } from '../../src/disk/refusal.ts';
import { cutAt, failAt, PowerCut, quick, systemError, unmovable, watched } from './broken-disk.ts';
import { plant, refusalCode, scratch, tree } from './scratch.ts';

const OLD = new Map([
  ['a.html', 'old a'],
  ['same/s.css', 's'],
  ['old/x.html', 'x'],
  ['turn', 't'],
]);
const NEW = new Map([
  ['a.html', 'new a'],
  ['same/s.css', 's'],
  ['new/y.html', 'y'],
  ['turn/z.html', 'z'],
]);
const FOREIGN = { CNAME: 'mine', 'same/note.txt': 'mine', 'folder/of/mine': 'mine' };

const MORE_THAN_ALL = 200;

function oldSite(): string {
  const target = join(scratch(), 'site');
  publishFolder(target, OLD, { changes: quick });
  plant(target, FOREIGN);
  return target;
}

const withForeign = (site: ReadonlyMap<string, string>) => ({
  '.gitignore': IGNORE_TEXT,
  ...FOREIGN,
  ...Object.fromEntries(site),
});

function pages(folder: string): Record<string, string> {
  const { '.groundspot-site': _, ...rest } = tree(folder);
  return rest;
}

/** Which of the two sites stands there, whole and with all that is not ours; anything else as it is. */
function which(target: string): unknown {
  const found = pages(target);
  const same = (site: ReadonlyMap<string, string>): boolean => {
    const sorted = (map: object): string => JSON.stringify(Object.entries(map).sort());
    return sorted(found) === sorted(withForeign(site));
  };
  return same(OLD) ? 'old' : same(NEW) ? 'new' : found;
}

/** Publishes with a broken disk; true when it came through nevertheless. */
function survives(target: string, changes: Changes): boolean {
  try {
    publishFolder(target, NEW, { changes });
    return true;
  } catch (error) {
    if (error instanceof PowerCut || error instanceof Refusal) return false;
    throw error;
  }
}

/** What stands after each possible cut and the recovery, if any, until a publication comes through; then publishes anew. */
function afterEachCut(
  changesAt: (target: string, count: number) => Changes,
  recovery: ((target: string) => void) | null,
): unknown[] {
  const outcomes: unknown[] = [];
  for (let count = 0; count < MORE_THAN_ALL; count += 1) {
    const target = oldSite();
    if (survives(target, changesAt(target, count))) return outcomes;
    recovery?.(target);
    if (recovery) expect(readdirSync(join(target, '..'))).toEqual(['site']);
    outcomes.push(recovery ? which(target) : null);
    publishFolder(target, NEW, { changes: quick });
    expect(which(target)).toBe('new');
    expect(readdirSync(join(target, '..'))).toEqual(['site']);
  }
  throw new Error('a publication never came through');
}

const startsOldEndsNew = (outcomes: readonly unknown[]): void => {
  const turn = outcomes.indexOf('new');
  expect(turn).toBeGreaterThan(0);
  expect(outcomes).toEqual(outcomes.map((_, index) => (index < turn ? 'old' : 'new')));
};

const swapped = (_: string, count: number): Changes => cutAt(count);
const inPlace = (target: string, count: number): Changes => unmovable(target, 'EBUSY', cutAt(count));
const WAYS = [swapped, inPlace];

describe('power cut at every change', () => {
  test('of a swap: the next start finds the last site or the new one, whole', () => {
    startsOldEndsNew(afterEachCut(swapped, (target) => recover(target, { changes: quick })));
  });

  test('of a replacement in place', () => {
    startsOldEndsNew(afterEachCut(inPlace, (target) => recover(target, { changes: quick })));
  });

  test('the next publication needs no recovery to be asked for', () => {
    for (const way of WAYS) expect(afterEachCut(way, null).length).toBeGreaterThan(20);
  });

  test('a publication in place whose staged files were then lost is published again', () => {
    let torn = 0;
    for (let count = 0; count < MORE_THAN_ALL; count += 1) {
      const target = oldSite();
      if (survives(target, inPlace(target, count))) break;
      rmSync(join(target, '.groundspot-staging'), { recursive: true, force: true });
      if (!['old', 'new'].includes(String(which(target)))) torn += 1;
      publishFolder(target, NEW, { changes: quick });
      expect(which(target)).toBe('new');
    }
    expect(torn).toBeGreaterThan(3);
  });

  test('and again at every change of the recovery', () => {
    for (const way of WAYS) {
      let cuts = 0;
      startsOldEndsNew(
        afterEachCut(way, (target) => {
          for (let count = 0; count < MORE_THAN_ALL; count += 1) {
            try {
              recover(target, { changes: cutAt(count) });
              return;
            } catch (error) {
              expect(error).toBeInstanceOf(PowerCut);
              cuts += 1;
            }
          }
        }),
      );
      expect(cuts).toBeGreaterThan(20);
    }
  });
});

test.each([
  ['ENOSPC', [true, false]],
  ['EIO', [true, false]],
  // A closed place is taken for one that cannot be renamed, and written in place instead.
  ['EACCES', [true]],
])('a disk that answers any one change with %s leaves one whole site', (code, expected) => {
  const outcomes = Array.from({ length: 40 }, (_, count) => {
    const target = oldSite();
    const came = survives(target, failAt(count, code));
    const atOnce = which(target);
    // Only where tidying failed, after the swap, does what is not ours wait beside the site for the next start.
    const waits = existsSync(join(target, '../.site.previous'));
    if (waits) expect(tree(target)).toMatchObject(Object.fromEntries(NEW));
    else expect(atOnce).toBe(came ? 'new' : 'old');
    expect(waits && !came).toBe(false);
    recover(target);
    expect(which(target)).toBe(came ? 'new' : 'old');
    expect(readdirSync(join(target, '..'))).toEqual(['site']);
    return came;
  });
  expect(new Set(outcomes)).toEqual(new Set(expected));
});

test('so does, in place, the next start', () => {
  const outcomes = Array.from({ length: 60 }, (_, count) => {
    const target = oldSite();
    const came = survives(target, unmovable(target, 'EBUSY', failAt(count, 'EIO')));
    recover(target);
    const result = which(target);
    expect(readdirSync(join(target, '..'))).toEqual(['site']);
    return `${came ? 'came' : 'failed'}, ${result}`;
  });
  expect(new Set(outcomes)).toEqual(new Set(['failed, old', 'failed, new', 'came, new']));
});

test('a full disk is refused in plain words, the last site stands, and nothing is left beside it', () => {
  const target = oldSite();
  for (const changes of [
    unmovable(target, 'EBUSY', fullFrom(0, '.groundspot-staging')),
    fullFrom(0),
    fullFrom(1),
    fullFrom(3),
  ]) {
    expect(refusalCode(() => publishFolder(target, NEW, { changes }))).toBe('disk-full');
    expect(which(target)).toBe('old');
    expect(readdirSync(join(target, '..'))).toEqual(['site']);
  }
});

/** Full from its nth file on, counting those with `part` in their path; deletions still work. */
function fullFrom(first: number, part = ''): Changes {
  let writes = 0;
  return watched((_, step, [path = '']) => {
    if (step !== 'write' || !path.includes(part)) return;
    writes += 1;
    if (writes > first) throw systemError('ENOSPC');
  });
}

describe('recover', () => {
  /** As a crash between the two renames of a swap leaves it. */
  function between(): string {
    const target = oldSite();
    let renames = 0;
    const changes = watched((_, step) => {
      if (step === 'rename') renames += 1;
      if (renames > 1) throw new PowerCut('between the renames');
    });
    expect(survives(target, changes)).toBe(false);
    return target;
  }

  test('puts the last site back, once', () => {
    const target = between();
    expect(readdirSync(join(target, '..')).sort()).toEqual(['.site.previous', `.site.staging-${process.pid}`]);
    expect(recover(target)).toBe('put-back');
    expect(which(target)).toBe('old');
    expect(recover(target)).toBe('nothing');
  });

  test('puts it back over a target that was made anew with nothing but a .gitignore', () => {
    const target = between();
    plant(target, { '.gitignore': 'from the repository' });
    expect(recover(target)).toBe('put-back');
    expect(which(target)).toBe('old');
  });

  test('takes away what stood aside of a folder that was empty before and is empty again', () => {
    const target = join(scratch(), 'site');
    plant(target, { '.gitignore': 'mine' });
    plant(target, { '../.site.previous/.gitignore': 'mine' });
    expect(recover(target)).toBe('put-back');
    expect(tree(join(target, '..'))).toEqual({ 'site/.gitignore': 'mine' });
  });

  test('leaves a target alone that somebody has filled meanwhile, and the last site beside it', () => {
    const target = between();
    plant(target, { mine: 'm' });
    expect(recover(target)).toBe('nothing');
    expect(pages(target)).toEqual({ mine: 'm' });
    expect(refusalCode(() => publishFolder(target, NEW))).toBe('not-ours');
    expect(which(join(target, '../.site.previous'))).toBe('old');
  });

  test('finds the last site behind a link that a crash left without an end', () => {
    const target = between();
    const link = join(scratch(), 'link');
    symlinkSync(target, link);
    expect(recover(link)).toBe('put-back');
    expect(which(target)).toBe('old');
  });

  test('keeps a foreign file whose place is taken, and says where it is', () => {
    const target = oldSite();
    const previous = join(target, '../.site.previous');
    mkdirSync(previous);
    plant(previous, { '.groundspot-site': '# groundspot site 1\n', CNAME: 'other' });
    expect(refusalCode(() => publishFolder(target, NEW))).toBe('previous-left');
    expect(tree(previous)).toMatchObject({ CNAME: 'other' });
    expect(which(target)).toBe('old');
  });

  test('does not take away the staging folder of a process that runs', () => {
    const target = oldSite();
    const staging = join(target, `../.site.staging-${process.ppid}`);
    plant(staging, { '.groundspot-site': '# groundspot site 1\n' });
    recover(target);
    expect(readdirSync(join(target, '..'))).toContain(`.site.staging-${process.ppid}`);
  });

  test('of a place where nothing is does nothing', () => {
    const folder = scratch();
    expect(recover(join(folder, 'none/site'))).toBe('nothing');
    expect(readdirSync(folder)).toEqual([]);
  });
});
