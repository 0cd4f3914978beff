import type { Facts } from '../../src/book/chapter.ts';
import type { Chart } from '../../src/book/chart.ts';
import { differenceRows } from '../../src/charts/difference-rows.ts';
import { seasonPanels } from '../../src/charts/season-panels.ts';
import type { CropTrial, TrialTrait } from '../../src/ledger/trial/crop-trial.ts';
import { againstChartId } from './against-model.ts';
import { panelCells } from './panel-cells.ts';
import { TRAIT_WORDS } from './trait-words.ts';
import { againstTable, panelsTable } from './trial-tables.ts';

/** Every variety against the yardstick in one trait. Null for ratios and where nothing is compared. */
export function againstChart({ format }: Facts, trial: CropTrial, one: TrialTrait): Chart | null {
  const { trait, rows } = one;
  const yardstick = trial.yardstick?.variety.name ?? '';
  const others = rows.filter(({ difference }) => difference.value !== null);
  if (trait.scale === 'ratio' || others.length === 0) return null;
  const { name, more } = TRAIT_WORDS[trait.id];
  return {
    id: againstChartId(trial, one),
    title: `${name}, against ${yardstick}`,
    description: `${others
      .map(
        ({ variety, difference, better }) =>
          `${variety.name}: ${format.difference(difference.value ?? 0, difference.unit)}, range ${format.difference(difference.interval?.low ?? 0, difference.unit)} to ${format.difference(difference.interval?.high ?? 0, difference.unit)}; ${format.count(better.value ?? 0)} in 20 that it ${more}`,
      )
      .join('. ')}.`,
    spec: differenceRows(
      {
        rows: others.map(({ variety, difference, better }) => ({
          name: variety.name,
          estimate:
            difference.value === null || !difference.interval
              ? null
              : { value: difference.value, low: difference.interval.low, high: difference.interval.high },
          words: `${format.count(better.value ?? 0)} in 20`,
        })),
        unit: trait.unit,
        axisTitle: `difference, ${format.unitLabel(trait.unit)}`,
        against: yardstick,
      },
      format,
    ),
    table: againstTable(trial, one),
  };
}

/** Single values of the trait that weighs most, a panel a season. Null with one season. */
export function panelsChart({ format }: Facts, trial: CropTrial): Chart | null {
  const found = heaviestTrait(trial);
  if (!found || trial.seasons.length < 2) return null;
  const { trait, rows } = found;
  const cells = panelCells(trial, trait.id);
  const { name } = TRAIT_WORDS[trait.id];
  return {
    id: `variety-${trial.crop.id.toLowerCase()}-seasons`,
    title: `${name}, season by season`,
    description: `${cells
      .map(
        (cell) =>
          `${cell.name}, ${cell.season}: ${cell.values.map((value) => format.digits(value, trait.unit)).join(', ')}`,
      )
      .join('. ')}.`,
    spec: seasonPanels(
      {
        names: rows.map(({ variety }) => variety.name),
        seasons: trial.seasons.map(({ label }) => label),
        cells,
        unit: trait.unit,
        axisTitle: format.unitLabel(trait.unit),
      },
      format,
    ),
    table: panelsTable(trial, trait.id),
  };
}

/** Of wishes that weigh alike the first. */
function heaviestTrait({ wishes, traits }: CropTrial): TrialTrait | null {
  const [first] = wishes.filter(({ weight }) => weight > 0).sort((a, b) => b.weight - a.weight);
  return traits.find(({ trait }) => trait.id === first?.trait) ?? null;
}
