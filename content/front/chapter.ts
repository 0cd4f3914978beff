import type { MatterChapter } from '../../src/book/chapter.ts';
import { coverOf } from './cover.ts';
import { glanceFigures, glanceOf } from './glance.ts';

/** The first page: the season at a glance, and every question with its finding. */
export const front: MatterChapter = {
  kind: 'matter',
  id: 'front',
  write: (facts, questions) => {
    const glance = glanceOf(facts);
    return [
      {
        path: '',
        chapter: 'front',
        template: 'front/index.njk',
        title: facts.garden.about.name,
        finding: null,
        level: null,
        model: {
          glance,
          cover: coverOf(facts),
          questions: questions
            .filter(({ listed }) => listed)
            .map(({ path, title, finding, model }) => ({ path, title, finding, model })),
        },
        charts: [],
        tables: [],
        figures: glance ? glanceFigures(glance) : [],
        cautions: [],
        listed: false,
      },
    ];
  },
};
