import type { MatterChapter } from '../../src/book/chapter.ts';
import { citedCaution } from '../../src/book/cited-caution.ts';

/** Every caution of the book in one place, with its source and whom to ask. */
export const cautions: MatterChapter = {
  kind: 'matter',
  id: 'cautions',
  write: ({ reference, format }) => [
    {
      path: 'cautions/',
      chapter: 'cautions',
      template: 'cautions/index.njk',
      title: 'Cautions',
      finding: null,
      level: null,
      model: {
        cautions: reference.cautions.map((caution) => citedCaution(caution, reference, format)),
        unchecked: reference.cautions.filter(({ checked_by }) => checked_by === null).length,
      },
      charts: [],
      tables: [],
      figures: [],
      cautions: reference.cautions.map(({ id }) => id),
      listed: true,
    },
  ],
};
