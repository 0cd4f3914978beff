import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

/** Compiles a script of its own process beside the compiled program, which `npm run compile` has made; gives its path. */
export function compiled(root: string, script: URL): string {
  const { outputText } = ts.transpileModule(readFileSync(script, 'utf8'), {
    compilerOptions: {
      module: ts.ModuleKind.ESNext,
      target: ts.ScriptTarget.ES2022,
      verbatimModuleSyntax: true,
      rewriteRelativeImportExtensions: true,
    },
  });
  const folder = join(root, '.build', 'tests', 'bench');
  const path = join(folder, `${basename(fileURLToPath(script), '.ts')}.js`);
  mkdirSync(folder, { recursive: true });
  writeFileSync(path, outputText);
  return path;
}
