import type { MatterChapter } from '../../src/book/chapter.ts';

/** How the figures were computed, in words, and every source the book leans on. */
export const methods: MatterChapter = {
  kind: 'matter',
  id: 'methods',
  write: ({ reference, garden }, questions) => {
    const used = new Set(questions.flatMap(({ figures }) => figures.map(({ method }) => method)));
    const told = reference.methods.filter(({ id }) => used.has(id));
    const cited = new Set([...told, ...reference.cautions].flatMap(({ sources }) => sources));
    const boundSources = [...garden.crops.values()].flatMap(({ bounds }) => bounds?.source ?? []);
    return [
      {
        path: 'methods/',
        chapter: 'methods',
        template: 'methods/index.njk',
        title: 'How the figures were made',
        finding: null,
        level: null,
        model: {
          methods: told,
          sources: reference.sources.filter(({ id }) => cited.has(id) || boundSources.includes(id)),
          comparisons: questions
            .flatMap(({ figures }) => figures)
            .filter(({ method, value }) => method === 'difference' && value !== null).length,
          read: garden.about.weather?.read ?? null,
        },
        charts: [],
        tables: [],
        figures: [],
        cautions: [],
        listed: true,
      },
    ];
  },
};
