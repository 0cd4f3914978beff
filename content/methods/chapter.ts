import type { MatterChapter } from '../../src/book/chapter.ts';

/** How the figures were computed, in words, and every source the book leans on. */
export const methods: MatterChapter = {
  kind: 'matter',
  id: 'methods',
  write: ({ reference, garden }, questions) => {
    const told = questions.flatMap(({ figures }) => figures).filter(({ value }) => value !== null);
    const used = new Set(told.map(({ method }) => method));
    const methodsUsed = reference.methods.filter(({ id }) => used.has(id));
    const cited = new Set([...methodsUsed, ...reference.cautions].flatMap(({ sources }) => sources));
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
          methods: methodsUsed,
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
