import type { Facts, QuestionChapter } from '../../src/book/chapter.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import type { CropRain } from '../../src/ledger/rain-sugar/crop-rain.ts';
import { type CropModel, cropModel } from './crop-model.ts';
import { slopesTable } from './tables.ts';

/** Did rain before picking thin the sugar? Over all seasons, crop by crop. */
export const rain: QuestionChapter = {
  kind: 'question',
  id: 'rain',
  write(facts) {
    const { rain: crops } = facts.ledger;
    const models = crops.map((crop) => cropModel(facts, crop)).sort((a, b) => saysLess(a) - saysLess(b));
    const table = slopesTable(crops);
    return [
      {
        path: 'rain/',
        chapter: 'rain',
        template: 'rain/index.njk',
        title: 'Did rain thin the sugar?',
        finding: 'rain/finding.njk',
        level: levelOf(facts, crops),
        model: {
          crops: models,
          station: facts.garden.about.weather?.station ?? null,
        },
        charts: models.flatMap(({ chart }) => chart ?? []),
        tables: table.rows.length > 0 ? [table] : [],
        figures: crops.flatMap(({ slope, windows }) => [slope, ...windows.map((one) => one.slope)]),
        cautions: [],
        listed: true,
      },
    ];
  },
};

/** A crop with something to say stands before one without; otherwise in the alphabet's order. */
const saysLess = ({ verdict, pairs_tell }: CropModel): number => (verdict ? 0 : pairs_tell ? 1 : 2);

/** A word against the last fruit and rain in words, then a sugar meter and a gauge, then enough rains to fit. */
const levelOf = ({ ledger }: Facts, crops: readonly CropRain[]): RecordLevel =>
  recordLevel('little', {
    little: crops.some(({ pairs, readings }) => pairs.fruits > 0 || readings.length > 0) && ledger.weather.size > 0,
    some: crops.some(({ readings }) => readings.length > 0),
    full: crops.some(({ slope }) => slope.value !== null),
  });
