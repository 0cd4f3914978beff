import type { ReadPage, SetText } from './pdf-reading.ts';

/** Letters of one line may differ in height by so many points when faces change. */
const SAME_LINE_PT = 1.5;

/** The words that stand on one line of a page, from the left, between two places in points. */
export function lineAt(page: ReadPage, y: number, [left, right]: readonly [number, number]): string {
  return page.texts
    .filter((one) => Math.abs(one.y - y) <= SAME_LINE_PT && one.x >= left && one.x < right)
    .sort((a, b) => a.x - b.x)
    .map(({ text }) => text.trim())
    .join(' ');
}

/** The text of a page that reads so. */
export const findText = (page: ReadPage, words: string): SetText | undefined =>
  page.texts.find(({ text }) => text.trim() === words);
