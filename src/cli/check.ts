import { loadGarden } from './load-garden.ts';
import { countLine, countProblems, problemReport } from './report.ts';

/** Says everything that is wrong with a garden's records. Errors exit 1, warnings 0. */
export function check(folder: string, json: boolean): void {
  const { problems, textOf, files } = loadGarden(folder);
  const count = countProblems(problems);
  if (json) process.stdout.write(`${JSON.stringify({ problems, ...count }, null, 2)}\n`);
  else process.stdout.write(`${problemReport(problems, folder, textOf)}${countLine(count, files)}`);
  if (count.errors > 0) process.exitCode = 1;
}
