import { expect, test } from 'vitest';
import { readPage } from '../../books/reading.ts';
import { siteOfTexts } from '../../site/built.ts';
import { keptGarden, SEVEN } from './kept-garden.ts';

const KEEPING = `keeping:
  taking_off: {en: twist it off}
  store_low_c: 10
  store_high_c: 15
  keeps_days_low: 14
  keeps_days_high: 21
  sources: [trade-practice]
`;

const textOf = async (texts: Readonly<Record<string, string>>): Promise<string> =>
  readPage(String((await siteOfTexts(texts)).get('picking/index.html'))).uncautioned;

test('says what others keep, and what was kept here', async () => {
  const text = await textOf(keptGarden(SEVEN, { crop: KEEPING }));
  expect(text).toContain('Globes: twist it off.');
  expect(text).toContain('Others keep globes 14 to 21 days at 10 to 15 °C.');
  expect(text).toContain('Of our 7 fruits laid by, 4 were sound to the end.');
  expect(text).toContain('Sound, of those still known 6 of 6 3 of 5 2 of 4');
  expect(text).not.toMatch(/of ten/);
});

test('tells degrees and pounds to a garden that reads them', async () => {
  const shares = '- {shared_on: 2025-08-10, to: food-bank, fruits: 2, mass_lb: 9.5}\n';
  const text = await textOf(keptGarden([], { crop: KEEPING, units: 'us', shares }));
  // 10 and 15 °C are 50 and 59 °F.
  expect(text).toContain('at 50 to 59 °F');
  expect(text).toContain('mass, lb food bank 2 9.5');
});

test('of two crops the one without figures is named as such', async () => {
  const one = keptGarden([], { crop: KEEPING });
  const text = await textOf({
    ...one,
    'crops/bell.yaml': 'id: bell\nnames: {en: bell}\nplurals: {en: bells}\nslip: none\nfruit_on_ground: yes\n',
    'varieties.yaml': `${one['varieties.yaml']}- {id: birch, name: Birch, crop: bell, seed: unknown}\n`,
  });
  expect(text).toContain('Others keep globes 14 to 21 days at 10 to 15 °C. Of bells nobody’s figures are here.');
  expect(text).toContain('Bells: cut the stalk');
});

test('before the first season it tells the work and says that no figure is known', async () => {
  const {
    'garden.yaml': garden = '',
    'varieties.yaml': varieties = '',
    'crops/globe.yaml': crop = '',
  } = keptGarden([]);
  const text = await textOf({ 'garden.yaml': garden, 'varieties.yaml': varieties, 'crops/globe.yaml': crop });
  expect(text).toContain('Split and gnawed fruit goes first');
  expect(text).toContain('Nobody’s figures in this book say how long it keeps');
});
