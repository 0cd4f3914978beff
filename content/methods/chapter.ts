import type { MatterChapter } from '../../src/book/chapter.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { cropSources } from '../../src/garden/crop-sources.ts';
import { cropsOf } from '../../src/garden/crops-of.ts';
import { TOGETHER } from '../../src/ledger/rain-sugar/companion.ts';

/** How the figures were computed, in words, and every source the book leans on. */
export const methods: MatterChapter = {
  kind: 'matter',
  id: 'methods',
  write: ({ reference, garden, ledger }, questions) => {
    const told = questions.flatMap(({ figures }) => figures).filter(({ value }) => value !== null);
    const used = new Set(told.map(({ method }) => method));
    const methodsUsed = reference.methods.filter(({ id }) => used.has(id));
    const cited = new Set([...methodsUsed, ...reference.cautions].flatMap(({ sources }) => sources));
    const ofCrops = new Set(cropsOf(garden.varieties).flatMap(cropSources));
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
          sources: reference.sources
            .filter(({ id }) => cited.has(id) || ofCrops.has(id))
            .map((source) => ({ ...source, of_crop: !cited.has(source.id) })),
          comparisons: questions
            .flatMap(({ figures }) => figures)
            .filter(({ method, value }) => method === 'difference' && value !== null).length,
          read: garden.about.weather?.read ?? null,
          shuffled: ledger.rain.flatMap(({ crop, permutation }) =>
            permutation
              ? [
                  {
                    crop: cropNames(crop, garden.about.locale).many,
                    at_least: permutation.at_least,
                    arrangements: permutation.arrangements,
                    all: permutation.method === 'all',
                    p: permutation.p,
                  },
                ]
              : [],
          ),
          slopes: ledger.rain.flatMap(({ crop, fit, companions }) =>
            fit
              ? [
                  {
                    crop: cropNames(crop, garden.about.locale).many,
                    df: fit.df,
                    plain_df: fit.plain_df,
                    low: -10 * fit.plain_interval.high,
                    high: -10 * fit.plain_interval.low,
                    day: fit.day_sd_brix,
                    mound: fit.mound_sd_brix,
                    fruit: fit.fruit_sd_brix,
                    companions,
                    together: TOGETHER,
                  },
                ]
              : [],
          ),
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
