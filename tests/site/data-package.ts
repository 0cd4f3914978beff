import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import datapackage from 'datapackage';
import type { Site } from './built.ts';

/** A field of a table's schema, as far as tests look at it. */
export interface Field {
  readonly name: string;
  readonly title: string;
  readonly type: string;
  readonly unit?: string;
  readonly description?: string;
  readonly constraints?: Readonly<Record<string, unknown>>;
}

export interface Descriptor {
  readonly name: string;
  readonly title: string;
  readonly description: string;
  readonly created?: string;
  readonly contributors?: readonly { readonly title: string; readonly role: string }[];
  readonly resources: readonly {
    readonly name: string;
    readonly path: string;
    readonly bytes: number;
    readonly hash: string;
    readonly schema: {
      readonly fields: readonly Field[];
      readonly primaryKey?: readonly string[];
      readonly foreignKeys?: readonly {
        readonly fields: readonly string[];
        readonly reference: { readonly resource: string; readonly fields: readonly string[] };
      }[];
    };
  }[];
}

export const descriptorOf = (site: Site): Descriptor => JSON.parse(String(site.get('data/datapackage.json')));

/** Rows by the name of their table, cast, or everything that is wrong with the package. */
export interface Reading {
  readonly rows: ReadonlyMap<string, readonly Readonly<Record<string, unknown>>[]>;
  readonly faults: readonly string[];
}

/** Reads a site's data as a stranger would: from the disk, by a reader of the standard, every row and every key. */
export async function readPackage(site: Site): Promise<Reading> {
  const folder = mkdtempSync(join(tmpdir(), 'groundspot-data-'));
  try {
    for (const [path, content] of site) {
      if (!path.startsWith('data/')) continue;
      mkdirSync(join(folder, 'data'), { recursive: true });
      writeFileSync(join(folder, path), content);
    }
    return await readFrom(join(folder, 'data', 'datapackage.json'));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function readFrom(path: string): Promise<Reading> {
  const read = await datapackage.Package.load(path);
  const faults = [...read.errors, ...read.resources.flatMap(({ errors }) => errors)].map(({ message }) => message);
  const rows = new Map<string, Record<string, unknown>[]>();
  for (const resource of read.resources) {
    try {
      rows.set(resource.name, await resource.read({ keyed: true }));
      await resource.read({ keyed: true, relations: true });
    } catch (error) {
      faults.push(`${resource.name}: ${told(error)}`);
    }
  }
  return { rows, faults };
}

/** The error and the ones inside it: the reader gathers those of a row. */
function told(error: unknown): string {
  const { message, errors = [] } = error as { message: string; errors?: readonly Error[] };
  return [message, ...errors.map((inner) => inner.message)].join(': ');
}
