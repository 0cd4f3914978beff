import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';

const HERE = import.meta.dirname;

test('the simulator knows none of the code it judges', () => {
  const files = readdirSync(HERE, { recursive: true, encoding: 'utf8' }).filter((file) =>
    /(?<!\.test)\.ts$/.test(file),
  );
  const imported = files.flatMap((file) =>
    ts.preProcessFile(readFileSync(join(HERE, file), 'utf8')).importedFiles.map(({ fileName }) => ({
      file,
      to: fileName.startsWith('.') ? join(HERE, file, '..', fileName) : fileName,
    })),
  );
  const outside = imported.filter(({ to }) => !to.startsWith(HERE) && !to.startsWith('pure-rand/'));
  expect(outside).toEqual([]);
  expect(files.length).toBeGreaterThan(10);
  expect(imported.length).toBeGreaterThan(20);
});
