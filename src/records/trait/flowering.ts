import { choice } from '../field/choice.ts';
import { record } from '../field/record.ts';
import { measure, sources, words } from './trait.ts';

/** Its flowers, who carries the pollen, and how many fruits a plant is left. */
export const floweringTraitSchema = record({
  sexes: choice(['apart', 'together'], {
    title: 'Flowers',
    description: 'Male and female in flowers of their own on one plant, or together in one flower.',
  }),
  carried_by: choice(['insects', 'shaking'], { title: 'Pollen is carried by' }),
  males_per_female_low: measure('Male flowers to a female one, least', 100).optional(),
  males_per_female_high: measure('Male flowers to a female one, most', 100).optional(),
  visits_least: measure('Visits of bees a flower needs', 100).optional(),
  hand_set_of_ten_low: measure('Of ten flowers pollinated by hand, set, least', 10).optional(),
  hand_set_of_ten_high: measure('Of ten flowers pollinated by hand, set, most', 10).optional(),
  keep_fruits_low: measure('Fruits left on a plant, least', 200).optional(),
  keep_fruits_high: measure('Fruits left on a plant, most', 200).optional(),
  female_looks: words('How a female flower looks', 120).optional(),
  sources,
});
