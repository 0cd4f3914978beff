#!/usr/bin/env node
import { createRequire } from 'node:module';
import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import { type Day, parseDay } from '../day.ts';
import { Refusal } from '../disk/refusal.ts';

const WRONG_USE = 2;
const HIGHEST_PORT = 65_535;

const day = (text: string): Day => {
  const found = parseDay(text);
  if (!found) throw new InvalidArgumentError('Write one day as year-month-day, like 2025-08-12.');
  return found;
};

const port = (text: string): number => {
  if (/^\d{1,5}$/.test(text) && Number(text) <= HIGHEST_PORT) return Number(text);
  throw new InvalidArgumentError(`Write a whole number from 0 to ${HIGHEST_PORT}.`);
};

function program(version: string): Command {
  const groundspot = new Command('groundspot')
    .description("Turns a garden's season records into a printable grower's handbook.")
    .version(version)
    .exitOverride()
    .showHelpAfterError('See groundspot --help.');

  groundspot
    .command('new')
    .description('begin a garden: a small one with every file explained')
    .argument('<folder>', 'a folder that does not exist yet, or is empty')
    .action(async (folder: string) => (await import('./new.ts')).newGarden(folder));

  groundspot
    .command('check')
    .description('read all records and say what is wrong, and where')
    .argument('[garden]', 'the folder of the garden', '.')
    .option('--json', 'as JSON, for other programs')
    .action(async (garden: string, options: { json?: boolean }) =>
      (await import('./check.ts')).check(garden, options.json === true),
    );

  groundspot
    .command('build')
    .description('make the handbook')
    .argument('[garden]', 'the folder of the garden', '.')
    .option('--out <folder>', 'where the handbook goes (default: site, in the garden)')
    .option('--today <day>', 'the garden as known on this day (default: its last record)', day)
    .option('--quiet', 'say nothing but what is wrong')
    .action(async (garden: string, options: { out?: string; today?: Day; quiet?: boolean }) =>
      (await import('./build.ts')).build(garden, {
        out: options.out ?? null,
        today: options.today ?? null,
        quiet: options.quiet === true,
        version,
      }),
    );

  groundspot
    .command('print')
    .description('print the handbook, its sheets and its cards to PDF')
    .argument('[garden]', 'the folder of the garden', '.')
    .option('--out <folder>', 'where the papers go (default: print, in the garden)')
    .addOption(new Option('--paper <size>', "instead of the garden's own paper").choices(['A4', 'Letter']))
    .option('--today <day>', 'the garden as known on this day (default: its last record)', day)
    .option('--quiet', 'say nothing but what is wrong')
    .action(async (garden: string, options: { out?: string; paper?: 'A4' | 'Letter'; today?: Day; quiet?: boolean }) =>
      (await import('./print.ts')).print(garden, {
        out: options.out ?? null,
        paper: options.paper ?? null,
        today: options.today ?? null,
        quiet: options.quiet === true,
        version,
      }),
    );

  groundspot
    .command('preview')
    .description('show the handbook in a browser, anew after every save')
    .argument('[garden]', 'the folder of the garden', '.')
    .option('--port <number>', 'the port on this machine, 0 for any free one (default: 7417 or the next)', port)
    .option('--today <day>', 'the garden as known on this day (default: its last record)', day)
    .action(async (garden: string, options: { port?: number; today?: Day }) =>
      (await import('./preview.ts')).preview(garden, {
        port: options.port ?? null,
        today: options.today ?? null,
        version,
      }),
    );

  for (const command of groundspot.commands)
    command.exitOverride().showHelpAfterError(`See groundspot ${command.name()} --help.`);
  return groundspot;
}

/** Runs one verb. Exit codes: 0 done, 1 the records or the disk forbid it, 2 the command was not understood. */
async function run(): Promise<void> {
  const { version } = createRequire(import.meta.url)('#package.json') as { version: string };
  try {
    await program(version).parseAsync();
  } catch (error) {
    if (error instanceof CommanderError) process.exitCode = error.exitCode === 0 ? 0 : WRONG_USE;
    else if (error instanceof Refusal) {
      process.stderr.write(`${error.message} [${error.code}]\n${error.hint ? `  ${error.hint}\n` : ''}`);
      process.exitCode = 1;
    } else throw error;
  }
}

await run();
