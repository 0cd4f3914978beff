import { writeFileSync } from 'node:fs';
import { type Changes, disk } from '../../src/disk/changes.ts';

/** The process is gone: nothing after it may reach the disk, not even a clean-up. */
export class PowerCut extends Error {}

/** The real disk without the waiting: these tests cut the power only in their own mind. */
export const quick: Changes = {
  ...disk,
  write: (path, data) => writeFileSync(path, data, { flag: 'wx' }),
  flush: () => undefined,
};

type Step = Exclude<keyof Changes, 'flush'>;
const STEPS: readonly Step[] = ['makeFolder', 'write', 'link', 'rename', 'removeFile', 'removeFolder'];

/** A disk that asks `before` each change with its number from 0, its kind and its paths; `before` may throw. */
export function watched(before: (count: number, step: Step, paths: readonly string[]) => void): Changes {
  let count = 0;
  const watchedStep =
    (step: Step) =>
    (...args: unknown[]) => {
      count += 1;
      before(
        count - 1,
        step,
        args.filter((each) => typeof each === 'string'),
      );
      (quick[step] as (...all: unknown[]) => void)(...args);
    };
  return { ...quick, ...Object.fromEntries(STEPS.map((step) => [step, watchedStep(step)])) };
}

/** A disk whose power fails at one change; a file being written then is left half done. */
export const cutAt = (last: number): Changes =>
  watched((count, step, [path, data]) => {
    if (count < last) return;
    if (count === last && step === 'write' && path) writeFileSync(path, (data ?? 'bytes').slice(0, 2));
    throw new PowerCut(`power cut at change ${count}`);
  });

/** What the system throws. */
export const systemError = (code: string): Error =>
  Object.assign(new Error(code), { code, syscall: 'test', errno: -1 });

/** A disk that answers one change with a system error and works before and after. */
export const failAt = (which: number, code: string): Changes =>
  watched((count) => {
    if (count === which) throw systemError(code);
  });

/** A mount point: the folder itself cannot be renamed. */
export const unmovable = (folder: string, code: string, inner: Changes = quick): Changes => ({
  ...inner,
  rename(from, to) {
    if (from === folder || to === folder) throw systemError(code);
    inner.rename(from, to);
  },
});
