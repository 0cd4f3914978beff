import { createHash } from 'node:crypto';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { KINDS } from '../../src/reading/kinds.ts';
import { type Site, siteOfFolder, siteOfTexts } from './built.ts';
import { type Descriptor, descriptorOf, readPackage } from './data-package.ts';
import { LITTLE_GARDENS } from './little-gardens.ts';
import { TRIAL_GARDENS } from './trial-gardens.ts';

const little = (name: string): Readonly<Record<string, string>> => LITTLE_GARDENS[name] ?? TRIAL_GARDENS[name] ?? {};
const csvFiles = (site: Site): string[] =>
  [...site.keys()].filter((path) => path.endsWith('.csv')).map((path) => path.replace('data/', ''));
const rowsIn = (site: Site, file: string): number =>
  parse(String(site.get(`data/${file}`)), { columns: true, record_delimiter: '\r\n' }).length;

/** The package as written, and every row of it as a reader of the standard takes it. */
async function checkPackage(site: Site): Promise<void> {
  const { resources } = descriptorOf(site);
  expect(resources.map(({ path }) => path).sort()).toEqual(csvFiles(site).sort());
  for (const { path, bytes, hash } of resources) {
    const text = Buffer.from(String(site.get(`data/${path}`)));
    expect(bytes, path).toBe(text.length);
    expect(hash, path).toBe(`sha256:${createHash('sha256').update(text).digest('hex')}`);
  }
  const { rows, faults } = await readPackage(site);
  expect(faults).toEqual([]);
  for (const { name, path } of resources) expect(rows.get(name)?.length, name).toBe(rowsIn(site, path));
}

describe('a reader of the standard takes every table, row and key', () => {
  test('of the demo garden', async () => checkPackage(await siteOfFolder('data/garden')));
  test('of the starter', async () => checkPackage(await siteOfFolder('data/starter')));
  for (const name of [
    'no season yet',
    'pickings only',
    'pounds and Letter',
    'no variety known',
    'a label with a stroke',
    'two seasons, the later one empty',
  ])
    test(`of a garden with ${name}`, async () => checkPackage(await siteOfTexts(little(name))));
  test('of a garden with the most a field takes', async () => {
    const most = little('pounds and Letter');
    const fruits = String(most['seasons/2025/fruits.yaml']).replace('mass_lb: 9.5', 'mass_lb: 881.85, girth_in: 0.39');
    const weather = 'date,rain_in,tmax_f,tmin_c\n2025-06-01,78.74,140,-60\n2025-06-02,trace,-0.4,-18\n';
    const site = await siteOfTexts({ ...most, 'seasons/2025/fruits.yaml': fruits, 'weather/porch.csv': weather });
    await checkPackage(site);
    const { rows } = await readPackage(site);
    expect(rows.get('weather-porch')).toMatchObject([
      { tmin_c: -60, tmax_f: 140 },
      { tmin_c: -18, tmax_f: -0.4, rain_in: 0, entered: 'rain_mm trace' },
    ]);
  });
  test('of a garden whose names a spreadsheet would run', async () => {
    const odd = little('pickings only');
    const site = await siteOfTexts({
      ...odd,
      'varieties.yaml': String(odd['varieties.yaml']).replace('Dapple Gate', '"=Dapple, \\"Gate\\""'),
    });
    await checkPackage(site);
    const { rows } = await readPackage(site);
    expect(rows.get('varieties')?.map(({ name }) => name)).toContain('\'=Dapple, "Gate"');
  });
});

describe('the reader can fail', () => {
  const broken = async (change: (text: string) => string, file = 'datapackage.json'): Promise<readonly string[]> => {
    const site = new Map(await siteOfTexts(little('pounds and Letter')));
    const before = String(site.get(`data/${file}`));
    const after = change(before);
    expect(after).not.toBe(before);
    return (await readPackage(site.set(`data/${file}`, after))).faults;
  };
  const changed =
    (name: string, change: (resource: Descriptor['resources'][number]) => object) =>
    (text: string): string => {
      const whole = JSON.parse(text) as Descriptor;
      const resources = whole.resources.map((one) => (one.name === name ? { ...one, ...change(one) } : one));
      return JSON.stringify({ ...whole, resources });
    };
  const typed = (table: string, column: string, type: string) =>
    changed(table, ({ schema }) => ({
      schema: { ...schema, fields: schema.fields.map((one) => (one.name === column ? { ...one, type } : one)) },
    }));

  test('at a type', async () => {
    expect((await broken(typed('varieties', 'name', 'number'))).join()).toMatch(/varieties.*number/);
    expect((await broken(typed('fruits', 'pick.mass_kg', 'integer'))).join()).toMatch(/fruits.*integer/);
  });
  test('at a word, a bound, a blank and a number that is none', async () => {
    const [picked, mass] = [/,picked,/, /,9\.5,/];
    expect((await broken((text) => text.replace(picked, ',eaten,'), 'fruits.csv')).join()).toMatch(/enum/);
    expect((await broken((text) => text.replace(picked, ',,'), 'fruits.csv')).join()).toMatch(/required/);
    expect((await broken((text) => text.replace(mass, ',-9.5,'), 'fruits.csv')).join()).toMatch(/minimum/);
    expect((await broken((text) => text.replace(mass, ',about 9.5,'), 'fruits.csv')).join()).toMatch(/number/);
  });
  test('at a row that stands twice and one that names nothing', async () => {
    expect((await broken((text) => text.replace('F2,P1', 'F1,P1'), 'fruits.csv')).join()).toMatch(/unique/);
    expect((await broken((text) => text.replace('F2,P1', 'F2,P7'), 'fruits.csv')).join()).toMatch(/Foreign key/);
  });
  test('at a key the standard needs', async () => {
    expect(await broken((text) => text.replace('"name": "corner', '"name": "Corner'))).not.toEqual([]);
    expect(await broken(changed('spots', () => ({ schema: { fields: [] } })))).not.toEqual([]);
  });
});

describe('the demo garden', () => {
  test('gives away every kind of record it holds, and nothing of its people but code and name', async () => {
    const { resources } = descriptorOf(await siteOfFolder('data/garden'));
    const names = resources.map(({ name }) => name);
    const shared: readonly string[] = ['sources', 'cautions', 'materials', 'methods', 'roofs', 'soils'];
    for (const kind of Object.keys(KINDS).filter((one) => !shared.includes(one) && one !== 'weather'))
      expect(names).toContain(kind);
    expect(names).toContain('weather-pump-house');
    expect(resources.find(({ name }) => name === 'people')?.schema.fields.map(({ name }) => name)).toEqual([
      'code',
      'name',
    ]);
  });

  test('is described by its own day, its people who agreed, and its keys', async () => {
    const site = await siteOfFolder('data/garden');
    const { name, created, contributors, description, resources } = descriptorOf(site);
    expect(name).toBe('ferrowby-lane-garden');
    expect(created).toBe(`${JSON.parse(String(site.get('data/figures.json'))).as_of}T00:00:00Z`);
    expect(contributors).toEqual([
      { title: 'Jossamy Kettlewick', role: 'contributor' },
      { title: 'Marrit Ravensby', role: 'contributor' },
    ]);
    expect(description).toContain('2 people who kept them are not named');
    const schema = (table: string) => resources.find((one) => one.name === table)?.schema;
    expect(schema('plantings')).toMatchObject({
      primaryKey: ['season', 'id'],
      foreignKeys: [
        { fields: ['season'], reference: { resource: 'season', fields: ['label'] } },
        { fields: ['spot'], reference: { resource: 'spots', fields: ['id'] } },
      ],
    });
    expect(schema('fruits')?.foreignKeys).toEqual([
      { fields: ['season', 'planting'], reference: { resource: 'plantings', fields: ['season', 'id'] } },
    ]);
  });

  test('has numbers for numbers in computed tables, whose types are read off their cells', async () => {
    const { resources } = descriptorOf(await siteOfFolder('data/garden'));
    const fields = resources.find(({ name }) => name === 'yield-seasons')?.schema.fields;
    const type = (key: string) => fields?.find(({ name }) => name === key)?.type;
    expect([type('season'), type('crop'), type('plants_set'), type('kg_per_plant')]).toEqual([
      'string',
      'string',
      'number',
      'number',
    ]);
    expect(fields?.find(({ name }) => name === 'kg_per_m2')?.unit).toBe('kg/m²');
  });

  test('names no table that is not there', async () => {
    const { resources } = descriptorOf(await siteOfTexts(little('pickings only')));
    const named = resources.flatMap(({ schema }) =>
      (schema.foreignKeys ?? []).map(({ reference }) => reference.resource),
    );
    expect(named.length).toBeGreaterThan(2);
    expect(resources.map(({ name }) => name)).not.toContain('beds');
    expect(named.filter((name) => !resources.some((one) => one.name === name))).toEqual([]);
  });
});
