import { choice } from './field/choice.ts';
import { record } from './field/record.ts';

/** What may go wrong with a fruit that is picked too soon or left too long, in the order in which it is asked. */
export const LOSS_KEYS = ['unripe', 'split', 'dilution', 'lost'] as const;

export type LossKey = (typeof LOSS_KEYS)[number];

const loss = (title: string, description: string) =>
  choice(['little', 'some', 'much'], { title, description }).optional();

/** How bad each thing is for the people of this garden; a blank takes the house's word. */
export const lossesSchema = record({
  unripe: loss('Unripe', 'Picked, and not ripe inside.'),
  split: loss('Split', 'Burst on the vine by the rain.'),
  dilution: loss('Thinned', 'Whole, and less sweet after the rain.'),
  lost: loss('Lost', 'Over, rotten, eaten by an animal or stolen before the next look.'),
});
