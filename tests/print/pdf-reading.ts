import { PDFArray, PDFDict, PDFDocument, PDFName, PDFRawStream } from 'pdf-lib';
import { getDocument, type PDFDocumentProxy, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A run of text as set: its place in points from the lower left corner of the page, its size in points. */
export interface SetText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly size: number;
  /** Name of the face without the mark of its subset; empty where the font has none. */
  readonly font: string;
}

/** Width and height in points. */
export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly SetText[];
  /** How many elements the page has in the tree of tags. */
  readonly tags: number;
}

export interface ReadFont {
  readonly name: string;
  readonly kind: string;
  readonly embedded: boolean;
}

export interface ReadOutline {
  readonly title: string;
  /** Page from 1. */
  readonly page: number;
  readonly below: readonly ReadOutline[];
}

export interface ReadPdf {
  readonly pages: readonly ReadPage[];
  readonly fonts: readonly ReadFont[];
  readonly outline: readonly ReadOutline[];
  readonly tagged: boolean;
  readonly info: { readonly title: string; readonly author: string; readonly lang: string; readonly created: string };
  /** Web addresses that links lead to. */
  readonly addresses: readonly string[];
}

/** Reads a PDF with a reader that had no part in making it; the fonts come from the file's own objects. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const document = await getDocument({ data: new Uint8Array(bytes), useSystemFonts: false, verbosity: 0 }).promise;
  const numbers = Array.from({ length: document.numPages }, (_, index) => index + 1);
  const pages: ReadPage[] = [];
  const addresses: string[] = [];
  for (const number of numbers) {
    const page = await document.getPage(number);
    pages.push(await readPage(page));
    for (const { url } of await page.getAnnotations()) if (url) addresses.push(url);
  }
  const { info } = (await document.getMetadata()) as unknown as { info: Record<string, string | undefined> };
  const read = {
    pages,
    fonts: await fontsOf(bytes),
    outline: await outlineOf(document, await document.getOutline()),
    tagged: (await document.getMarkInfo())?.Marked === true && pages.some(({ tags }) => tags > 0),
    info: {
      title: info.Title ?? '',
      author: info.Author ?? '',
      lang: info.Language ?? '',
      created: info.CreationDate ?? '',
    },
    addresses,
  };
  await document.destroy();
  return read;
}

async function readPage(page: PDFPageProxy): Promise<ReadPage> {
  const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
  // Fonts are known by name once the page's drawing has been read.
  await page.getOperatorList();
  const { items } = await page.getTextContent({ disableNormalization: true });
  const texts = items.flatMap((item): SetText[] => {
    if (!('str' in item) || item.str.trim() === '') return [];
    const [a = 0, b = 0, , , x = 0, y = 0] = item.transform as number[];
    return [{ text: item.str, x, y, width: item.width, size: Math.hypot(a, b), font: fontName(page, item.fontName) }];
  });
  return { width: right - left, height: top - bottom, texts, tags: countTags(await page.getStructTree()) };
}

function fontName(page: PDFPageProxy, id: string): string {
  const font: { name?: string } = page.commonObjs.get(id);
  return (font.name ?? '').replace(/^[A-Z]{6}\+/, '');
}

interface TagNode {
  readonly children?: readonly object[];
}

const countTags = (node: TagNode | null): number =>
  (node?.children ?? []).reduce((sum: number, child) => sum + 1 + countTags(child as TagNode), 0);

type RawOutline = Awaited<ReturnType<PDFDocumentProxy['getOutline']>> | undefined;

async function outlineOf(document: PDFDocumentProxy, raw: RawOutline): Promise<ReadOutline[]> {
  const entries: ReadOutline[] = [];
  for (const { title, dest, items } of raw ?? []) {
    const goal = typeof dest === 'string' ? await document.getDestination(dest) : dest;
    if (!goal) throw new Error(`invalid outline: "${title}" leads nowhere`);
    entries.push({
      title,
      page: (await document.getPageIndex(goal[0])) + 1,
      below: await outlineOf(document, items as RawOutline),
    });
  }
  return entries;
}

/** All fonts of a PDF (ISO 32000-1, 9.6 to 9.9): a Type 3 font carries its own shapes, others want a font file. */
async function fontsOf(bytes: Uint8Array): Promise<ReadFont[]> {
  const document = await PDFDocument.load(bytes, { updateMetadata: false });
  const dicts = document.context.enumerateIndirectObjects().flatMap(([, object]) => {
    const dict = object instanceof PDFRawStream ? object.dict : object;
    return dict instanceof PDFDict ? [dict] : [];
  });
  return dicts
    .filter((dict) => nameIn(dict, 'Type') === 'Font' && !nameIn(dict, 'Subtype').startsWith('CIDFont'))
    .map((dict) => {
      const kind = nameIn(dict, 'Subtype');
      const below = dict.lookupMaybe(PDFName.of('DescendantFonts'), PDFArray)?.lookup(0, PDFDict) ?? dict;
      const descriptor = below.lookupMaybe(PDFName.of('FontDescriptor'), PDFDict);
      const hasFile = ['FontFile', 'FontFile2', 'FontFile3'].some((key) => descriptor?.has(PDFName.of(key)));
      const name = nameIn(dict, 'BaseFont').replace(/^[A-Z]{6}\+/, '');
      return { name, kind, embedded: kind === 'Type3' ? dict.has(PDFName.of('CharProcs')) : hasFile };
    });
}

const nameIn = (dict: PDFDict, key: string): string => dict.lookupMaybe(PDFName.of(key), PDFName)?.decodeText() ?? '';
