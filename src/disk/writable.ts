import { accessSync, constants } from 'node:fs';
import { dirname } from 'node:path';
import { entryAt } from './presence.ts';
import { systemCode } from './system-error.ts';

/** Whether files can be made in a folder, or the folder be made where it is not there yet. */
export function isWritable(folder: string): boolean {
  try {
    accessSync(entryAt(folder) ? folder : dirname(folder), constants.W_OK);
    return true;
  } catch (error) {
    if (systemCode(error) === null) throw error;
    return false;
  }
}
