import { expect, test } from 'vitest';
import { severityKey } from '../../../src/records/severity.ts';
import { readPage } from '../../books/reading.ts';
import { siteOfTexts } from '../../site/built.ts';
import { lookedGarden, MILDEW } from './looked-garden.ts';

const TROUBLES = `troubles:
  - {id: grey-dust, names: {en: Grey dust}, looks: {en: a grey bloom under the leaf}, does: {en: give it air}, sources: [trade-practice]}
`;

async function textOf(...of: Parameters<typeof lookedGarden>): Promise<string> {
  const html = (await siteOfTexts(lookedGarden(...of))).get('scouting/index.html');
  return readPage(String(html)).uncautioned;
}

test('the steps of the scale are those of the field screen', () => {
  // Ma and Wehner 2015, North Carolina State University, field screen of watermelons for bacterial fruit blotch.
  expect(severityKey().replaceAll('\u00a0', ' ')).toBe(
    '0 none, 1 or 2 trace, 3 or 4 slight, 5 or 6 moderate, 7 or 8 severe, 9 dead',
  );
});

test('says what the looks found, how it went, and each look', async () => {
  const text = await textOf(MILDEW);
  expect(text).toContain('In 2025 we looked on 5 days, in 5 of 17 weeks, and found mildew (at worst 5 of 9).');
  expect(text).toContain('Mildew, E: rose from 0 to 5 between 1 Jul and 5 Sept; in all as bad as 11 days at 9.');
  expect(text).toContain('Mildew, S3: rose from 0 to 5 between 1 Jul and 5 Sept, then 0 on 15 Sept');
  expect(text).toContain('10 Aug E mildew 1 of 5 1');
  expect(text).toContain('5 Sept all spots mildew not counted 5');
  expect(text).toContain('15 Sept S3 nothing not counted 0');
});

test('looked and found none is a finding', async () => {
  expect(await textOf('- {looked_on: 2025-07-01, found: none}\n')).toContain(
    'In 2025 we looked on one day, in 1 of 7 weeks, and found nothing.',
  );
});

test('tells the troubles of the crop in a community book, and their names at home', async () => {
  const all = await textOf('', { crop: TROUBLES });
  const home = await textOf('', { crop: TROUBLES, edition: 'home' });
  expect(all).toContain('Grey dust A grey bloom under the leaf. Give it air.');
  expect(home).toContain('Known troubles: Grey dust.');
  expect(home).not.toContain('grey bloom');
});

test('says so where the crop’s file tells of no trouble', async () => {
  expect(await textOf('')).toContain('Of globes no trouble is described here');
});

test('a drawing of the course stands in a community book alone', async () => {
  const drawn = async (edition: string): Promise<boolean> =>
    String((await siteOfTexts(lookedGarden(MILDEW, { edition }))).get('scouting/index.html')).includes(
      'chart-scouting-2025',
    );
  expect([await drawn('community'), await drawn('home')]).toEqual([true, false]);
});
