import type { QuestionChapter } from '../../src/book/chapter.ts';
import type { Page } from '../../src/book/page.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import type { Figure } from '../../src/figure.ts';
import type { CropRipeness } from '../../src/ledger/ripeness/crop-ripeness.ts';
import { SIGN_KEYS } from '../../src/records/sign.ts';
import { type CropModel, cropModel } from './crop-model.ts';
import { signsTable } from './tables.ts';

/** Is it ripe? The outside signs, held against what the knife found in this garden, and a pocket card for each crop. */
export const ripe: QuestionChapter = {
  kind: 'question',
  id: 'ripe',
  write(facts) {
    const { ripeness } = facts.ledger;
    const crops = ripeness.map((found) => cropModel(facts, found)).sort(saysMore);
    const table = signsTable(ripeness);
    return [
      {
        ...FRAME,
        path: 'ripe/',
        template: 'ripe/index.njk',
        title: TITLE,
        finding: 'ripe/finding.njk',
        level: levelOf(ripeness),
        model: { crops },
        tables: table.rows.length > 0 ? [table] : [],
        figures: ripeness.flatMap(figuresOf),
        cautions: ['wasps', 'stings', 'knife', 'cut-fruit', 'bitter-fruit', 'bitter-seed'],
        listed: true,
      },
      ...crops.map(cardPage),
    ];
  },
};

/** A crop whose signs can be told stands first, then the one that was cut more often. */
const saysMore = (a: CropModel, b: CropModel): number => Number(b.told) - Number(a.told) || b.base.n - a.base.n;

const TITLE = 'Is it ripe?';
const FRAME = { chapter: 'ripe', charts: [] };

const cardPage = (crop: CropModel): Page => ({
  ...FRAME,
  path: crop.card_path,
  template: 'ripe/card.njk',
  title: `${TITLE} A card for ${crop.names.many}`,
  finding: null,
  level: null,
  model: { crop },
  tables: [],
  figures: [],
  cautions: [],
  listed: false,
  form: 'card',
});

/** A word of what the knife found, then what was seen from outside before, then enough of both to judge a sign. */
function levelOf(crops: readonly CropRipeness[]): RecordLevel {
  const judged = crops.flatMap((crop) => crop.judged);
  return recordLevel('some', {
    little: judged.length > 0,
    some: judged.some(({ signs }) => SIGN_KEYS.some((key) => signs[key] !== null)),
    full: crops.some(({ signs }) => signs.some(({ ripe }) => ripe.value !== null)),
  });
}

const figuresOf = ({ base, days, signs, ticks }: CropRipeness): Figure[] => [
  base,
  ...(days ? [days.ripe, days.unripe] : []),
  ...signs.flatMap((one) => [one.ripe, one.unripe]),
  ticks.ripe,
];
