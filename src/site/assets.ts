import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

interface Face {
  readonly family: string;
  readonly packageName: string;
  readonly file: string;
  readonly weight: number;
  readonly style: 'normal' | 'italic';
}

const FACES: readonly Face[] = [
  {
    family: 'Young Serif',
    packageName: 'young-serif',
    file: 'young-serif-latin-400-normal',
    weight: 400,
    style: 'normal',
  },
  {
    family: 'Source Serif 4',
    packageName: 'source-serif-4',
    file: 'source-serif-4-latin-400-normal',
    weight: 400,
    style: 'normal',
  },
  {
    family: 'Source Serif 4',
    packageName: 'source-serif-4',
    file: 'source-serif-4-latin-400-italic',
    weight: 400,
    style: 'italic',
  },
  {
    family: 'Source Sans 3',
    packageName: 'source-sans-3',
    file: 'source-sans-3-latin-400-normal',
    weight: 400,
    style: 'normal',
  },
  {
    family: 'Source Sans 3',
    packageName: 'source-sans-3',
    file: 'source-sans-3-latin-600-normal',
    weight: 600,
    style: 'normal',
  },
];

/** Parts of the book's one stylesheet, in the order in which a later one may overrule an earlier. */
const STYLES = [
  'ground',
  'head-and-foot',
  'cover',
  'type',
  'spread',
  'seeds',
  'tables',
  'charts',
  'year',
  'cautions',
  'matter',
  'sheets',
  'papers',
  'cards',
  'narrow',
  'paper',
] as const;

/** The stylesheet and the faces it names, as files below the site. */
export function readAssets(layouts: string): Map<string, Uint8Array | string> {
  const require = createRequire(import.meta.url);
  const fonts = FACES.map(
    ({ packageName, file }) =>
      [
        `assets/fonts/${file}.woff2`,
        readFileSync(require.resolve(`@fontsource/${packageName}/files/${file}.woff2`)),
      ] as const,
  );
  const styles = STYLES.map((name) => readFileSync(join(layouts, 'styles', `${name}.css`), 'utf8'));
  const css = `${FACES.map(fontFace).join('\n')}\n${styles.join('\n')}`;
  return new Map<string, Uint8Array | string>([['assets/book.css', css], ...fonts]);
}

const fontFace = ({ family, file, weight, style }: Face): string =>
  `@font-face{font-family:'${family}';font-style:${style};font-weight:${weight};font-display:swap;src:url(fonts/${file}.woff2) format('woff2')}`;
