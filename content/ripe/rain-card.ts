import type { Page } from '../../src/book/page.ts';
import type { PickOrWaitModel } from './pick-or-wait-model.ts';

/** A pocket card for the evening before rain, complete by itself. */
export const rainCardPage = (crop: PickOrWaitModel): Page => ({
  path: crop.card_path,
  chapter: 'ripe',
  template: 'ripe/rain-card.njk',
  title: `Pick or wait? A card for ${crop.names.many}`,
  finding: null,
  level: null,
  model: { crop },
  charts: [],
  tables: [],
  figures: [],
  cautions: [],
  listed: false,
  form: 'card',
});
