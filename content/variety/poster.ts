import type { Facts } from '../../src/book/chapter.ts';
import type { Page } from '../../src/book/page.ts';
import type { CropTrial } from '../../src/ledger/trial/crop-trial.ts';
import { isCompared } from './answer.ts';
import { trialModel } from './trial-model.ts';

/** Facts that can be read from across a path. */
const MOST_BETS = 3;

/** What the plots learned, for the wall: one sheet a crop, made to be enlarged. A home book has none. */
export const posters = (facts: Facts): Page[] =>
  facts.garden.about.edition === 'home'
    ? []
    : facts.ledger.trials.filter(isCompared).flatMap((trial) => poster(facts, trial) ?? []);

function poster(facts: Facts, trial: CropTrial): Page | null {
  const model = trialModel(facts, trial, null);
  if (!model) return null;
  const title = `Which ${model.names.one}?`;
  return {
    chapter: 'variety',
    path: `sheets/results-${trial.crop.id.toLowerCase()}/`,
    template: 'variety/poster.njk',
    title: `${title} For the wall`,
    finding: null,
    level: null,
    model: {
      ...model,
      bets: model.bets.slice(0, MOST_BETS),
      fruits: new Set(trial.values.filter(({ trait }) => trait === 'mass_kg' || trait === 'brix').map(({ key }) => key))
        .size,
      mounds: new Set(trial.values.map(({ season, spot }) => `${season} ${spot}`)).size,
      sheet: { title, rule: '', landscape: false },
    },
    charts: [],
    tables: [],
    figures: [],
    cautions: [],
    listed: false,
    form: 'sheet',
  };
}
