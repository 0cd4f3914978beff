import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { packageRoot } from '../../src/disk/package-root.ts';
import { plant, scratch } from './scratch.ts';

test('from the sources it is the folder of our package.json', () => {
  expect(JSON.parse(readFileSync(join(packageRoot(), 'package.json'), 'utf8')).name).toBe('groundspot');
  expect(existsSync(join(packageRoot(), 'src/disk/package-root.ts'))).toBe(true);
});

test('from a compiled copy it is the folder of the package that holds it, from any working folder', () => {
  const folder = scratch();
  const source = readFileSync(new URL('../../src/disk/package-root.ts', import.meta.url), 'utf8');
  const { outputText } = ts.transpileModule(source, {
    compilerOptions: { module: ts.ModuleKind.ESNext, target: ts.ScriptTarget.ES2022 },
  });
  plant(folder, {
    'app/package.json': '{"name":"app"}',
    'app/node_modules/pack/package.json': '{"type":"module","imports":{"#package.json":"./package.json"}}',
    'app/node_modules/pack/.build/src/disk/package-root.js': `${outputText}\nconsole.log(packageRoot());`,
  });
  const compiled = join(folder, 'app/node_modules/pack/.build/src/disk/package-root.js');
  const run = spawnSync(process.execPath, [compiled], { cwd: folder, encoding: 'utf8' });
  expect(run.stdout.trim()).toBe(join(folder, 'app/node_modules/pack'));
});
