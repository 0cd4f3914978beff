import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Eleventy from '@11ty/eleventy';
import type nunjucks from 'nunjucks';

/** A page to render: where it goes, which template, and all that template reads. */
export interface Leaf {
  /** File below the site, for instance `yield/index.html`. */
  readonly file: string;
  /** Template below the template folders. */
  readonly template: string;
  readonly context: Readonly<Record<string, unknown>>;
}

interface EleventyConfig {
  setUseGitIgnore(use: boolean): void;
  setTemplateFormats(formats: string): void;
  setLibrary(engine: string, library: nunjucks.Environment): void;
  disableLogger?(): void;
  addTemplate(path: string, content: string, data: Readonly<Record<string, unknown>>): void;
}

/** The generator holds all it has rendered several times over until it is done: memory goes with the batch, not the book. */
const BATCH = 500;

/**
 * Renders every leaf to HTML, in memory. The only file that knows the site generator: it is run on an empty
 * folder with virtual templates, since it passes over content folders that lie inside node_modules.
 * Throws the template's own error, which names its file, line and column.
 */
export async function renderLeaves(
  leaves: readonly Leaf[],
  templates: nunjucks.Environment,
): Promise<Map<string, string>> {
  const rendered = new Map<string, string>();
  for (let from = 0; from < leaves.length; from += BATCH) {
    for (const [file, html] of await renderBatch(leaves.slice(from, from + BATCH), templates)) rendered.set(file, html);
  }
  return rendered;
}

async function renderBatch(leaves: readonly Leaf[], templates: nunjucks.Environment): Promise<Map<string, string>> {
  const empty = mkdtempSync(join(tmpdir(), 'groundspot-'));
  const before = process.cwd();
  try {
    process.chdir(empty);
    const eleventy = new Eleventy('.', './out', {
      configPath: false,
      quietMode: true,
      source: 'script',
      config: (config: EleventyConfig) => {
        config.setUseGitIgnore(false);
        config.setTemplateFormats('njk');
        config.setLibrary('njk', templates);
        config.disableLogger?.();
        for (const [index, { file, template, context }] of leaves.entries()) {
          config.addTemplate(`leaf-${index}.njk`, `{% extends "${template}" %}`, { permalink: file, ...context });
        }
      },
    });
    eleventy.disableLogger?.();
    const rendered: readonly { outputPath: string | false; url: string; content: string }[] = await eleventy.toJSON();
    return byFile(leaves, rendered);
  } catch (error) {
    throw originalError(error);
  } finally {
    process.chdir(before);
    rmSync(empty, { recursive: true, force: true });
  }
}

function byFile(leaves: readonly Leaf[], rendered: readonly { url: string; content: string }[]): Map<string, string> {
  const byUrl = new Map(rendered.map(({ url, content }) => [url, content]));
  return new Map(
    leaves.map(({ file }) => {
      const html = byUrl.get(`/${file.replace(/index\.html$/, '')}`);
      if (html === undefined) throw new Error(`invalid page: nothing was rendered for ${file}`);
      return [file, html];
    }),
  );
}

function originalError(error: unknown): unknown {
  const inner = (error as { originalError?: unknown }).originalError;
  return inner ? originalError(inner) : error;
}
