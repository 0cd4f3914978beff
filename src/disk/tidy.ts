import { systemCode } from './system-error.ts';

/** Runs a clean-up whose failure must neither undo what is done nor hide why something failed; the next start repeats it. */
export function tidy(work: () => void): void {
  try {
    work();
  } catch (error) {
    if (systemCode(error) === null) throw error;
  }
}
