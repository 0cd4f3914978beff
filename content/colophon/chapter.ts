import type { MatterChapter } from '../../src/book/chapter.ts';
import { keepersOf } from '../../src/garden/consent.ts';

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
      level: null,
      model: {
        edition: garden.about.edition,
        units: garden.about.units,
        paper: garden.about.paper,
        seasons: garden.seasons.map(({ label }) => label),
        keepers: keepersOf(garden.people),
      },
      charts: [],
      tables: [],
      figures: [],
      cautions: [],
      listed: true,
    },
  ],
};
