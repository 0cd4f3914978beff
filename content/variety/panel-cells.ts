import type { PanelValues } from '../../src/charts/season-panels.ts';
import type { CropTrial } from '../../src/ledger/trial/crop-trial.ts';
import type { TraitId } from '../../src/ledger/trial/trait.ts';

/** Below this many values a mean is no more than they are. */
const FEWEST = 2;

/** Every value of a trait, by variety and season, with their plain mean. */
export const panelCells = ({ varieties, seasons, values }: CropTrial, trait: TraitId): PanelValues[] =>
  varieties.flatMap(({ id, name }) =>
    seasons.flatMap(({ slug, label }) => {
      const own = values
        .filter((one) => one.trait === trait && one.variety === id && one.season === slug)
        .map(({ value }) => value);
      if (own.length === 0) return [];
      const mean = own.length < FEWEST ? null : own.reduce((sum, value) => sum + value, 0) / own.length;
      return [{ name, season: label, values: own, mean }];
    }),
  );
