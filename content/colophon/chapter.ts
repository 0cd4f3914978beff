import type { MatterChapter } from '../../src/book/chapter.ts';

/** What the book is, when its records end, and how it was set. */
export const colophon: MatterChapter = {
  kind: 'matter',
  id: 'colophon',
  write: ({ garden }) => [
    {
      path: 'colophon/',
      chapter: 'colophon',
      template: 'colophon/index.njk',
      title: 'Colophon',
      finding: null,
      model: {
        edition: garden.about.edition,
        units: garden.about.units,
        paper: garden.about.paper,
        seasons: garden.seasons.map(({ label }) => label),
      },
      charts: [],
      tables: [],
      figures: [],
      cautions: [],
      listed: true,
    },
  ],
};
