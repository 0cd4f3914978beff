import { relative } from 'node:path';

/** Tells the person at the terminal one line. */
export type Say = (line: string) => void;

export const createSay = (quiet: boolean): Say => (quiet ? () => {} : (line) => void process.stderr.write(`${line}\n`));

/** A path as it is typed from here. */
export const place = (path: string): string => relative(process.cwd(), path) || '.';
