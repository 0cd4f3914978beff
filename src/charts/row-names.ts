import { INK } from './theme.ts';

/** Longest line of a name at the caption's size in the width left for it. */
const LABEL_LETTERS = 20;
const LINE_PX = 14;

/** Names to the left of their rows, folded where they are long; `y` is the rows' encoding, `lift_px` what moves them up. */
export const rowNames = (names: readonly string[], y: object, lift_px: number): object[] =>
  nameLayers(names).map(({ lines, values }) => ({
    data: { values },
    mark: {
      type: 'text',
      align: 'right',
      color: INK,
      x: -10,
      yOffset: -lift_px - ((lines - 1) * LINE_PX) / 2,
      lineBreak: '\n',
      lineHeight: LINE_PX,
    },
    encoding: { y, text: { field: 'text' } },
  }));

/** Of every row alike: what the longest of the names takes and a gap, and never less than so much. */
export const rowHeight = (names: readonly string[], least_px: number, gap_px: number): number =>
  Math.max(least_px, LINE_PX * Math.max(0, ...nameLayers(names).map(({ lines }) => lines)) + gap_px);

/** Names by how many lines they take: each number of lines is centred on its row in its own way. */
function nameLayers(names: readonly string[]): { lines: number; values: { name: string; text: string }[] }[] {
  const texts = names.map((name) => ({ name, text: folded(name) }));
  const count = (text: string): number => text.split('\n').length;
  const counts = [...new Set(texts.map(({ text }) => count(text)))].sort();
  return counts.map((lines) => ({ lines, values: texts.filter(({ text }) => count(text) === lines) }));
}

/** A name in lines short enough for the label's width: text widths are only estimated when a chart is drawn. */
function folded(name: string): string {
  return name.split(' ').reduce((lines, word) => {
    const last = lines.slice(lines.lastIndexOf('\n') + 1);
    return `${lines}${lines === '' ? '' : last.length + word.length < LABEL_LETTERS ? ' ' : '\n'}${word}`;
  }, '');
}
