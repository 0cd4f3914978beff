import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { QuestionChapter } from '../../src/book/chapter.ts';
import type { Page } from '../../src/book/page.ts';
import { awayModel } from './away.ts';
import { girthStripModel } from './girth-strip.ts';
import { shareLabelModel } from './share-label.ts';

/** Papers to hand over, tie on or cut out: for a neighbour, for whoever is given a fruit, for passers-by, for a child. */
export const papers: QuestionChapter = {
  kind: 'question',
  id: 'papers',
  write: (facts) => [
    paper(
      'away',
      'While we are away',
      'For the neighbour who waters: fill it in together, standing in the plot.',
      awayModel(facts),
      cautionsAt(facts.reference, 'away'),
    ),
    paper(
      'share-label',
      'Labels for fruit given away',
      'Cut out, write the picking day, tie it to the stalk.',
      shareLabelModel(facts),
      cautionsAt(facts.reference, 'sharing'),
    ),
    paper('leave-tag', 'Tags for fruit that has to stay', 'Cut out, fold over a string, hang it at the fruit.', {}, []),
    paper(
      'girth-strip',
      'A strip to measure a fruit with',
      'Print at full size, cut out the pieces, glue each onto the grey end of the one before. The line at the top must measure what it says.',
      girthStripModel(facts),
      [],
    ),
  ],
};

const paper = (id: string, title: string, rule: string, model: object, cautions: readonly string[]): Page => ({
  path: `sheets/${id}/`,
  chapter: 'papers',
  template: `papers/${id}.njk`,
  title,
  finding: null,
  level: null,
  model: { ...model, sheet: { title, rule, landscape: false } },
  charts: [],
  tables: [],
  figures: [],
  cautions,
  listed: false,
  form: 'sheet',
});
