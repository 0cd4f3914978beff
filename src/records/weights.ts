import { count } from './field/count.ts';
import { record } from './field/record.ts';

/** What a grower may want of a variety, in the order in which it is asked. */
export const WEIGHT_KEYS = ['sweet', 'plenty', 'big', 'early', 'crisp', 'juicy', 'reliable', 'looks', 'liked'] as const;

export type WeightKey = (typeof WEIGHT_KEYS)[number];

const weight = (title: string, wanted: string) =>
  count({ title, description: `${wanted} 0 never mind, 3 matters most.`, max: 3, about: false }).optional();

/** How much each thing matters to the people of this garden, 0 to 3; a blank is a thing nobody weighed. */
export const weightsSchema = record({
  sweet: weight('Sweet', 'Sugar in the ripe fruit.'),
  plenty: weight('Plenty', 'Sound fruit a plant.'),
  big: weight('Big', 'Heavy fruit.'),
  early: weight('Early', 'Ripe soon after planting out.'),
  crisp: weight('Crisp', 'Flesh that is firm to the tooth.'),
  juicy: weight('Juicy', 'Flesh that runs.'),
  reliable: weight('Reliable', 'Much the same every summer.'),
  looks: weight('Handsome', 'A fruit one would show.'),
  liked: weight('Liked', 'We like it, for whatever reason.'),
});
