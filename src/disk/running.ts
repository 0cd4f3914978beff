import { systemCode } from './system-error.ts';

/** Whether a process of this number runs on this machine, whoever owns it. */
export function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // EPERM: it is there, but belongs to another user.
    return systemCode(error) === 'EPERM';
  }
}
