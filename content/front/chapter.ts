import type { MatterChapter } from '../../src/book/chapter.ts';

/** The first page: the garden, the season, and every question with its finding. */
export const front: MatterChapter = {
  kind: 'matter',
  id: 'front',
  write: ({ garden, ledger }, questions) => [
    {
      path: '',
      chapter: 'front',
      template: 'front/index.njk',
      title: garden.about.name,
      finding: null,
      model: {
        season: ledger.yields.at(-1)?.season.label ?? null,
        questions: questions
          .filter(({ listed }) => listed)
          .map(({ path, title, finding, model }) => ({ path, title, finding, model })),
      },
      charts: [],
      tables: [],
      figures: [],
      cautions: [],
      listed: false,
    },
  ],
};
