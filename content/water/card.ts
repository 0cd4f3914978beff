import type { Facts } from '../../src/book/chapter.ts';
import type { Page } from '../../src/book/page.ts';
import { measuresOf } from '../../src/garden/measures.ts';
import { thresholdsOf } from '../../src/garden/weather-settings.ts';
import { rhythmIn } from '../../src/ledger/water/rhythm.ts';
import type { NeedModel } from './need-model.ts';

/** A watering card for each crop whose need is known. */
export function cardPages({ garden, ledger }: Facts, needs: readonly NeedModel[]): Page[] {
  const { can_l, can_measured } = measuresOf(garden.about);
  return needs.map((crop): Page => {
    const plan = ledger.water?.crops.find((one) => one.crop.id === crop.id);
    const rows = (plan?.stages ?? []).map((need) => ({
      stage: need.stage,
      first: need.first,
      last: need.last,
      usual: rhythmIn(need, 'usual', can_l),
      hot: rhythmIn(need, 'hot', can_l),
    }));
    return {
      path: `water/card/${crop.id}/`,
      chapter: 'water',
      template: 'water/card.njk',
      title: `How much water? A card for ${crop.names.many}`,
      finding: null,
      level: null,
      model: { crop, rows, can_l, can_measured, soaking_mm: thresholdsOf(garden.about).soaking_day_mm },
      charts: [],
      tables: [],
      figures: [],
      cautions: [],
      listed: false,
      form: 'card',
    };
  });
}
