import type { QuestionChapter } from '../../src/book/chapter.ts';
import type { Page } from '../../src/book/page.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import type { Figure } from '../../src/figure.ts';
import type { CropRipeness } from '../../src/ledger/ripeness/crop-ripeness.ts';
import type { SignWorth } from '../../src/ledger/ripeness/sign-worth.ts';
import { SIGN_KEYS } from '../../src/records/sign.ts';
import { aheadOf } from './ahead.ts';
import { type CropModel, cropModel } from './crop-model.ts';
import { observersModel } from './observers.ts';
import { replayPage } from './replay.ts';
import { claimsTable, looksTable, scoresTable, signsTable, worthTable } from './tables.ts';

/** Is it ripe? The outside signs, held against what the knife found in this garden, and a pocket card for each crop. */
export const ripe: QuestionChapter = {
  kind: 'question',
  id: 'ripe',
  write(facts) {
    const { ripeness } = facts.ledger;
    const crops = ripeness.map((found) => cropModel(facts, found)).sort(saysMore);
    const isHome = facts.garden.about.edition === 'home';
    const tables = [
      signsTable(ripeness),
      worthTable(ripeness),
      ...(isHome ? [] : [looksTable(ripeness), claimsTable(ripeness), scoresTable(ripeness)]),
    ];
    const observers = observersModel(facts);
    const replay = replayPage(facts, levelOf(ripeness));
    const ahead = aheadOf(facts);
    return [
      {
        ...FRAME,
        path: 'ripe/',
        template: 'ripe/index.njk',
        title: TITLE,
        finding: 'ripe/finding.njk',
        level: levelOf(ripeness),
        model: { crops, ahead: ahead.model },
        charts: ahead.charts,
        tables: [...tables, ...ahead.tables].filter(({ rows }) => rows.length > 0),
        figures: [
          ...ripeness.flatMap((crop) => [...figuresOf(crop), ...(isHome ? homeFigures(crop) : fullFigures(crop))]),
          ...ahead.figures,
        ],
        cautions: ['wasps', 'stings', 'knife', 'cut-fruit', 'bitter-fruit', 'bitter-seed'],
        listed: true,
      },
      ...crops.map(cardPage),
      ...ahead.pages,
      ...(replay ? [replay] : []),
      ...(observers ? [observersPage(observers)] : []),
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

/** Handed to each keeper and to nobody else: how well somebody calls is theirs, so it is printed and never published. */
const observersPage = (model: object): Page => ({
  ...FRAME,
  path: 'sheets/observers/',
  template: 'ripe/observers.njk',
  title: OBSERVERS.title,
  finding: null,
  level: null,
  model: { ...model, sheet: OBSERVERS },
  tables: [],
  figures: [],
  cautions: [],
  listed: false,
  form: 'sheet',
  private: true,
});

const OBSERVERS = { title: 'How your calls came out', landscape: false };

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

const worthsOf = ({ days, signs }: CropRipeness): readonly SignWorth[] => [
  ...(days?.worth ?? []),
  ...signs.flatMap(({ worth }) => worth),
];

/** A home book says the best sign in a sentence, and no more. */
const homeFigures = (crop: CropRipeness): Figure[] =>
  worthsOf(crop).flatMap(({ question, ratio }) => (question === 'ripe-yet' ? [ratio] : []));

const fullFigures = (crop: CropRipeness): Figure[] => [
  ...worthsOf(crop).map(({ ratio }) => ratio),
  crop.together.usual.all,
  crop.together.usual.none,
];
