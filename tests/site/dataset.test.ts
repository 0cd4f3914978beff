import { describe, expect, test } from 'vitest';
import { htmlPages, type Site, siteOfFolder, siteOfTexts } from './built.ts';
import { descriptorOf } from './data-package.ts';
import { LITTLE_GARDENS } from './little-gardens.ts';

interface Download {
  readonly contentUrl: string;
  readonly encodingFormat: string;
}

interface Dataset {
  readonly description: string;
  readonly temporalCoverage?: string;
  readonly spatialCoverage?: unknown;
  readonly dateModified?: string;
  readonly creator?: readonly { readonly name: string }[];
  readonly variableMeasured?: readonly { readonly name: string; readonly unitText: string }[];
  readonly distribution: readonly Download[];
}

const BLOCK = /<script type="application\/ld\+json">(.*?)<\/script>/gs;

/** The data block of the page of records, as a crawler cuts it out. */
const inPage = (site: Site): Dataset => {
  const blocks = [...String(site.get('records/index.html')).matchAll(BLOCK)].map(([, text = '']) => text);
  expect(blocks).toHaveLength(1);
  return JSON.parse(blocks[0] ?? '');
};
const inFile = (site: Site): Dataset => JSON.parse(String(site.get('data/dataset.jsonld')));

/** Addresses of a data set that lead to no file of the site, read from where it stands. */
const lost = (site: Site, { distribution }: Dataset, from: string): string[] =>
  distribution
    .map(({ contentUrl }) => new URL(contentUrl, `site:///${from}`).pathname.slice(1))
    .filter((path) => !site.has(path));

const texts = LITTLE_GARDENS['pounds and Letter'] ?? {};
const gardenWith = (from: string, to: string) => ({
  ...texts,
  'garden.yaml': String(texts['garden.yaml']).replace(from, to),
});

describe('the records as a data set of schema.org', () => {
  test('of the demo garden', async () => {
    const site = await siteOfFolder('data/garden');
    const found = inPage(site);
    // Kinds and properties of schema.org/Dataset, schema.org/DataDownload and schema.org/PropertyValue.
    expect(found).toMatchObject({
      '@context': 'https://schema.org',
      '@type': 'Dataset',
      name: 'Ferrowby Lane Garden: records',
      isAccessibleForFree: true,
      inLanguage: 'en-GB',
      dateModified: JSON.parse(String(site.get('data/figures.json'))).as_of,
      creator: [
        { '@type': 'Person', name: 'Jossamy Kettlewick' },
        { '@type': 'Person', name: 'Marrit Ravensby' },
      ],
    });
    // ISO 8601: two days parted by "/" are an interval.
    expect(found.temporalCoverage).toMatch(/^20\d\d-\d\d-\d\d\/2025-\d\d-\d\d$/);
    expect(found.spatialCoverage).toMatchObject({ '@type': 'Place', geo: { '@type': 'GeoCoordinates' } });
    // Search engines ask for 50 to 5,000 letters (from memory).
    expect(found.description.length).toBeGreaterThan(50);
    expect(found.description.length).toBeLessThan(5000);
    expect(found.variableMeasured).toContainEqual({ '@type': 'PropertyValue', name: 'Rain, mm', unitText: 'mm' });
  });

  test('leads to every table, from the page and from its own file', async () => {
    const site = await siteOfFolder('data/garden');
    const tables = descriptorOf(site).resources.map(({ path }) => path);
    expect(inFile(site).distribution.map(({ contentUrl }) => contentUrl)).toEqual(['datapackage.json', ...tables]);
    expect(lost(site, inFile(site), 'data/dataset.jsonld')).toEqual([]);
    expect(lost(site, inPage(site), 'records/index.html')).toEqual([]);
    expect(lost(site, inFile(site), 'records/index.html')).toHaveLength(tables.length + 1);
    expect(inPage(site).distribution.map(({ encodingFormat }) => encodingFormat)).toContain('text/csv');
  });

  test('says nothing of what is not known', async () => {
    const bare = inPage(await siteOfTexts(LITTLE_GARDENS['no season yet'] ?? {}));
    expect(Object.keys(bare).sort()).toEqual(
      ['@context', '@type', 'description', 'distribution', 'inLanguage', 'isAccessibleForFree', 'name'].sort(),
    );
    expect(descriptorOf(await siteOfTexts(LITTLE_GARDENS['no season yet'] ?? {})).created).toBeUndefined();
  });

  test('measures are SI, whatever was written', async () => {
    const names = (inPage(await siteOfTexts(texts)).variableMeasured ?? []).map(({ name }) => name);
    expect(names).toEqual(['Highest, °C', 'Lowest, °C', 'Mass, kg', 'Rain, mm']);
  });

  test('stands on one page only, and no name ends its block', async () => {
    const site = await siteOfTexts(gardenWith('Corner by the wall', '"</script><!--<script> & \\"x\\""'));
    const pages = htmlPages(site).filter(([, html]) => html.match(BLOCK));
    expect(pages.map(([path]) => path)).toEqual(['records/index.html']);
    expect(inPage(site)).toMatchObject({ name: '</script><!--<script> & "x": records' });
    expect(String(site.get('data/dataset.jsonld'))).not.toContain('<');
  });
});

describe('the place', () => {
  const place = 'place: {latitude: -46.4372, longitude: 0.0318, elevation_m: 1234.5}\nspots:';

  test('is told to a tenth of a degree, and nowhere more nearly', async () => {
    const site = await siteOfTexts(gardenWith('spots:', place));
    expect(inPage(site).spatialCoverage).toEqual({
      '@type': 'Place',
      geo: { '@type': 'GeoCoordinates', latitude: -46.4, longitude: 0 },
    });
    expect(String(site.get('data/garden.csv'))).toContain(',-46.4,0,');
    expect(String(site.get('data/garden.csv'))).not.toContain('elevation');
    for (const [path, content] of site)
      for (const near of ['46.43', '46.44', '0.0318', '1234.5', '4050.2'])
        expect(String(content).includes(near), `${path}: ${near}`).toBe(false);
  });
});
