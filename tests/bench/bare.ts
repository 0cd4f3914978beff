/**
 * What a handbook would cost if nothing but the libraries worked: every record file parsed, every chart drawn, every
 * page rendered and written. A process of its own: `node bare.js <job.json>`.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Eleventy from '@11ty/eleventy';
import { parse as parseCsv } from 'csv-parse/sync';
import * as vega from 'vega';
import { compile } from 'vega-lite';
import { parse } from 'yaml';
import type { BareJob } from './bare-job.ts';

interface Config {
  setTemplateFormats(formats: string): void;
  setUseGitIgnore(use: boolean): void;
  addTemplate(path: string, content: string, data: object): void;
}

const PAGE =
  '<!doctype html><html><head><title>{{ title }}</title></head><body>{% for line in lines %}<p>{{ line }}</p>{% endfor %}{% for svg in drawn %}<figure>{{ svg | safe }}</figure>{% endfor %}</body></html>';
const LINE = 'What a line of a page says is of no matter here as long as there is as much of it as in the handbook. ';

const job = JSON.parse(readFileSync(process.argv[2] ?? '', 'utf8')) as BareJob;
if (job.garden !== null) readRecords(job.garden);
const pages: { title: string; lines: string[]; drawn: string[] }[] = [];
for (const { characters, charts } of job.pages) {
  const drawn: string[] = [];
  for (const spec of charts) drawn.push(await svgOf(spec));
  const lines = new Array<string>(Math.ceil(characters / (LINE.length + 7))).fill(LINE);
  pages.push({ title: `Page ${pages.length + 1}`, lines, drawn });
}
process.chdir(job.empty);
const eleventy: unknown = new Eleventy('.', job.out, {
  configPath: false,
  quietMode: true,
  config: (config: Config) => {
    config.setUseGitIgnore(false);
    config.setTemplateFormats('njk');
    for (const [index, page] of pages.entries())
      config.addTemplate(`page-${index}.njk`, PAGE, { permalink: `page-${index}/index.html`, ...page });
  },
});
await (eleventy as { write(): Promise<void> }).write();

function readRecords(garden: string): void {
  for (const path of readdirSync(garden, { recursive: true, encoding: 'utf8' })) {
    if (path.endsWith('.yaml')) parse(readFileSync(join(garden, path), 'utf8'));
    if (path.endsWith('.csv')) parseCsv(readFileSync(join(garden, path), 'utf8'));
  }
}

async function svgOf(spec: BareJob['pages'][number]['charts'][number]): Promise<string> {
  const view = new vega.View(vega.parse(compile(spec).spec), { renderer: 'none' });
  const svg = await view.toSVG();
  view.finalize();
  return svg;
}
