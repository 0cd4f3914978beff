import { chanceOf } from '../chance.ts';
import { initialsOf, laidOut } from '../design.ts';
import { plantedTexts, SEASON, type Texts } from '../garden-texts.ts';
import { varietyOf } from '../variety.ts';
import { borne } from './bearing.ts';
import { fruitsOf } from './fruit.ts';
import { type Ground, groundOf } from './ground.ts';
import { pickingsText } from './pickings.ts';
import { registerText } from './register.ts';
import type { YieldSetting } from './setting.ts';
import type { Truth } from './truth.ts';

/** A season's records as their keeper might have written them, and beside them what is true. */
export interface YieldGarden {
  readonly texts: Texts;
  readonly truth: Truth;
}

/** The garden of a seed: the same seed writes the same bytes. */
export function yieldGarden(setting: YieldSetting, seed: number): YieldGarden {
  const chance = chanceOf(seed);
  const laid = laidOut(setting.design, chance);
  const ground = groundOf(setting, laid, chance);
  const mounds = laid.map((mound) => borne(mound, setting.bearing, ground, chance));
  const harvests = mounds.map((mound) => [mound, fruitsOf(mound.bore, setting.bearing, chance)] as const);
  const write = setting.written_in === 'fruits' ? registerText : pickingsText;
  const varieties = initialsOf(setting.design).map(varietyOf);
  return {
    texts: {
      ...plantedTexts(varieties, laid),
      [`${SEASON}/${setting.written_in}.yaml`]: write(harvests, chance),
    },
    truth: { means: trueMeans(ground), mounds },
  };
}

/** A variety's mean on this garden's ground, as if it had stood in every block. */
function trueMeans({ varieties, blocks }: Ground): Record<string, number> {
  const added = [...blocks.values()];
  const average = added.length === 0 ? 0 : added.reduce((sum, one) => sum + one, 0) / added.length;
  return Object.fromEntries([...varieties].map(([id, { mean }]) => [id, mean + average]));
}
