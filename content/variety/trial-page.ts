import type { Facts } from '../../src/book/chapter.ts';
import type { Page } from '../../src/book/page.ts';
import { recordLevel } from '../../src/book/record-level.ts';
import type { Figure } from '../../src/figure.ts';
import { sentence } from '../../src/format.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { CropTrial } from '../../src/ledger/trial/crop-trial.ts';
import { isCompared } from './answer.ts';
import { trialPath } from './paths.ts';
import { againstChart, panelsChart } from './trial-charts.ts';
import { trialModel } from './trial-model.ts';

/** The report on the varieties of each crop that are compared; a home book has none. */
export const trialPages = (facts: Facts): Page[] =>
  facts.garden.about.edition === 'home'
    ? []
    : facts.ledger.trials.filter(isCompared).flatMap((one) => trialPage(facts, one) ?? []);

function trialPage(facts: Facts, trial: CropTrial): Page | null {
  const panels = panelsChart(facts, trial);
  const model = trialModel(facts, trial, panels?.id ?? null);
  if (!model) return null;
  const charts = model.against.flatMap(({ trait: id }) => {
    const trait = trial.traits.find((one) => one.trait.id === id);
    return (trait && againstChart(facts, trial, trait)) ?? [];
  });
  return {
    chapter: 'variety',
    path: trialPath(trial.crop),
    template: 'variety/trial.njk',
    title: `${sentence(cropNames(trial.crop, facts.garden.about.locale).many)}, variety against variety`,
    finding: 'variety/trial-finding.njk',
    level: recordLevel('some', {
      little: true,
      some: trial.traits.some(({ trait }) => trait.of === 'fruit'),
      full: trial.traits.some(({ trait }) => trait.id === 'brix'),
    }),
    model,
    charts: panels ? [panels, ...charts] : charts,
    tables: [],
    figures: figuresOf(trial),
    cautions: [],
    listed: false,
  };
}

export const figuresOf = (trial: CropTrial): Figure[] => [
  ...trial.traits.flatMap(({ rows, summers }) => [
    ...rows.flatMap(({ level, difference, better, best }) => [level, difference, better, best]),
    ...summers.map(({ share }) => share),
  ]),
  ...trial.list.flatMap(({ better, best }) => [better, best]),
  ...trial.sound.map(({ of_ten }) => of_ten),
  ...trial.tastes.flatMap(({ rows }) => rows.map(({ better }) => better)),
  ...trial.held_out.map(({ said }) => said),
];
