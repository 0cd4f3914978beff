import { resolve } from 'node:path';
import nunjucks from 'nunjucks';
import { CompiledTemplates } from './compiled-templates.ts';
import type { Drawings } from './drawings.ts';
import type { Filters } from './filters.ts';
import type { Messages } from './messages.ts';

const SETTINGS = { autoescape: true, throwOnUndefined: true };

/** The template environment: our folders only, everything escaped, an undefined value an error. */
export function createTemplates(
  folders: readonly string[],
  filters: Filters,
  messages: Messages,
  drawings: Drawings,
): nunjucks.Environment {
  const paths = folders.map((folder) => resolve(folder));
  const environment = new nunjucks.Environment(new CompiledTemplates(paths, SETTINGS), SETTINGS);
  for (const [name, filter] of Object.entries(filters)) {
    environment.addFilter(name, filter as (...inputs: unknown[]) => unknown);
  }
  // Markdown without raw HTML, and text escaped for a stylesheet, are not escaped once more.
  for (const name of ['prose', 'css_text']) {
    const filter = filters[name] as unknown as (text: string) => string;
    environment.addFilter(name, (text: string) => new nunjucks.runtime.SafeString(filter(text)));
  }
  environment.addGlobal('m', messages);
  environment.addGlobal('drawing', (name: string) => new nunjucks.runtime.SafeString(drawings(name)));
  return environment;
}
