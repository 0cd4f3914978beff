import type { Book } from '../book/book.ts';
import { publishedPlace } from '../book/published-place.ts';
import type { Table } from '../book/table.ts';
import { keepersOf } from '../garden/consent.ts';
import { DIMENSIONS } from '../units.ts';
import { describeData } from './description.ts';
import { json } from './json.ts';
import type { Messages } from './messages.ts';
import { unitName } from './table-schema.ts';

/**
 * The records as a schema.org Dataset in JSON-LD. `root` leads from where the text stands to the folder of the data,
 * since its addresses are read from there. No "<" is left in it, so that it may stand inside a page.
 */
export function datasetText({ facts, tables }: Book, root: string, messages: Messages): string {
  const { garden, today } = facts;
  const { named } = keepersOf(garden.people);
  const [first, last] = [garden.seasons[0], garden.seasons.at(-1)];
  const place = publishedPlace(garden.about);
  const measured = measuredIn(tables);
  return json({
    '@context': 'https://schema.org',
    '@type': 'Dataset',
    name: messages('sharing.title', { garden: garden.about.name }),
    description: describeData(facts, messages),
    inLanguage: garden.about.locale,
    isAccessibleForFree: true,
    ...(today !== null && { dateModified: today }),
    ...(first && last && { temporalCoverage: `${first.starts_on}/${last.ends_on}` }),
    ...(place && { spatialCoverage: { '@type': 'Place', geo: { '@type': 'GeoCoordinates', ...place } } }),
    ...(named.length > 0 && { creator: named.map((name) => ({ '@type': 'Person', name })) }),
    ...(measured.length > 0 && { variableMeasured: measured }),
    distribution: [
      download(root, 'datapackage.json', messages('sharing.package'), 'application/json'),
      ...tables.map(({ id, title }) => download(root, `${id}.csv`, title, 'text/csv')),
    ],
  }).replaceAll('<', '\\u003c');
}

const download = (root: string, file: string, name: string, encodingFormat: string): object => ({
  '@type': 'DataDownload',
  name,
  encodingFormat,
  contentUrl: `${root}${file}`,
});

const SI: readonly string[] = Object.values(DIMENSIONS).map(({ si }) => si);
const isByTime = ({ columns }: Table): boolean => columns.some(({ key }) => key === 'season' || key === 'date');

/** Headings of what was measured through the seasons in an SI unit, each once. */
function measuredIn(tables: readonly Table[]): object[] {
  const units = new Map<string, string>();
  for (const { columns, rows } of tables.filter(isByTime)) {
    for (const [index, { title, holds }] of columns.entries()) {
      if (!holds?.unit || !SI.includes(holds.unit)) continue;
      if (rows.some((row) => row[index] !== null)) units.set(title, unitName(holds.unit));
    }
  }
  return [...units]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, unitText]) => ({ '@type': 'PropertyValue', name, unitText }));
}
