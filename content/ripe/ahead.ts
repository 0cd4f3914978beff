import type { Facts } from '../../src/book/chapter.ts';
import type { Chart } from '../../src/book/chart.ts';
import type { Page } from '../../src/book/page.ts';
import type { Table } from '../../src/book/table.ts';
import type { Figure } from '../../src/figure.ts';
import type { CropPickOrWait } from '../../src/ledger/pick-or-wait/crop-pick-or-wait.ts';
import { fruitListPage } from './fruit-list.ts';
import { type PickOrWaitModel, pickOrWaitModel, saysMoreOfRain } from './pick-or-wait-model.ts';
import { cardsTable, stormsTable } from './pick-or-wait-tables.ts';
import { rainCardPage } from './rain-card.ts';
import { type WindowModel, windowChart, windowModel } from './window-model.ts';
import { windowsTable } from './window-tables.ts';

/** What lies ahead of the fruit on the vine: when each is ripe, and whether to pick before rain. */
export interface Ahead {
  readonly model: { readonly windows: readonly WindowModel[]; readonly picks: readonly PickOrWaitModel[] };
  readonly charts: readonly Chart[];
  readonly tables: readonly Table[];
  readonly figures: readonly Figure[];
  readonly pages: readonly Page[];
}

/** A home book has its sentence, its list and its card, and no charts. */
export function aheadOf(facts: Facts): Ahead {
  const { windows, picks } = facts.ledger;
  const isHome = facts.garden.about.edition === 'home';
  const models = picks.map((found) => pickOrWaitModel(facts, found)).sort(saysMoreOfRain);
  const ripened = windows.filter(({ crop, growing }) => crop.eaten !== 'young' || growing.length > 0);
  const charts = isHome ? [] : ripened.flatMap((found) => windowChart(facts, found) ?? []);
  const drawn = charts.map(({ table }) => table.id);
  // A chart brings its table along.
  const told = windows.map(windowsTable).filter(({ id }) => !drawn.includes(id));
  return {
    model: { windows: ripened.map((found) => windowModel(facts, found)), picks: models },
    charts,
    tables: [...told, stormsTable(picks), cardsTable(picks)],
    figures: [
      ...windows.flatMap(({ growing }) => growing.flatMap(({ to_ripe, to_over }) => [to_ripe, to_over])),
      ...picks.flatMap((pick) =>
        isHome ? ownSplits(pick) : [pick.storms.split, pick.dilution_of_ten, pick.lost_of_ten],
      ),
    ],
    pages: [...models.map(rainCardPage), fruitListPage(facts)],
  };
}

/** A home book tells no guess and no way of guessing but the card's own words. */
const ownSplits = ({ storms }: CropPickOrWait): Figure[] => (storms.chance.from === 'storms' ? [storms.split] : []);
