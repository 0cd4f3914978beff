import { type BlankSheet, sharesOf, sidesOf } from '../../src/book/blank-sheet.ts';
import type { Facts, MatterChapter } from '../../src/book/chapter.ts';
import type { Page } from '../../src/book/page.ts';
import { feedingLog } from './feeding-log.ts';
import { flowerTally } from './flower-tally.ts';
import { fruitRegister } from './fruit-register.ts';
import { pickingAndCut } from './picking-and-cut.ts';
import { plantingList } from './planting-list.ts';
import { seasonOf } from './plot.ts';
import { scoutingSheet } from './scouting.ts';
import { tankLog } from './tank-log.ts';
import { tastingSheet } from './tasting.ts';
import { visits } from './visits.ts';
import { wateringLog } from './watering-log.ts';
import { weatherLog } from './weather-log.ts';

/** In the order of the year. */
const SHEETS: readonly ((facts: Facts) => BlankSheet | null)[] = [
  plantingList,
  weatherLog,
  feedingLog,
  wateringLog,
  tankLog,
  flowerTally,
  scoutingSheet,
  fruitRegister,
  visits,
  pickingAndCut,
];

/** Sheets to carry into the plot, with what is known already filled in. */
export const sheets: MatterChapter = {
  kind: 'matter',
  id: 'sheets',
  write: (facts, questions) => {
    const all = SHEETS.flatMap((sheetOf) => {
      const sheet = sheetOf(facts);
      return sheet ? [{ sheet, sides: sidesOf(sheet) }] : [];
    });
    const tasting = tastingSheet(facts);
    const season = seasonOf(facts)?.label ?? null;
    return [
      {
        ...BARE,
        path: 'sheets/',
        template: 'sheets/index.njk',
        title: 'Sheets to write on',
        model: {
          sheets: [...all.map(({ sheet, sides }) => ({ ...sheet, sides: sides.length })), { ...tasting, sides: 1 }],
          papers: questions
            .filter((page) => page.form === 'sheet' && !page.private)
            .map(({ path, title }) => ({ path, title })),
        },
        listed: true,
      },
      ...all.map(({ sheet, sides }) =>
        sheetPage(sheet, 'sheets/sheet.njk', { sheet, shares: sharesOf(sheet.columns), sides, season }),
      ),
      sheetPage(tasting, 'sheets/tasting.njk', { sheet: tasting, season }),
    ];
  },
};

const sheetPage = (
  { id, title, cautions }: Pick<BlankSheet, 'id' | 'title' | 'cautions'>,
  template: string,
  model: object,
): Page => ({ ...BARE, path: `sheets/${id}/`, template, title, model, cautions, listed: false, form: 'sheet' });

const BARE = { chapter: 'sheets', finding: null, level: null, charts: [], tables: [], figures: [], cautions: [] };
