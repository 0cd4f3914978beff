import type { Fact } from '../garden-facts.ts';

/** No garden here closed a flower, marked a fruit or saved a jar: none may be told of. */
const NEVER: NonNullable<Fact['never']> = ['Marked for seed', 'Bitter fruit grew', 'Seed saved here', 'keep what came of flowers'];

const fact = (why: string, says: NonNullable<Fact['says']>, never: NonNullable<Fact['never']> = []): Fact => ({
  page: 'seed/',
  says,
  never: [...NEVER, ...never],
  why,
});

export const SEED_FACTS: Readonly<Record<string, readonly Fact[]>> = {
  'day-zero': [
    fact(
      'Osier Lamp, 2 + 2 plants, stands beside the hybrid Quillon; of Hob Kettle nobody knows; set 40 days after 16 May at the soonest and 35 more: 30 July',
      [
        'Keep seed of Osier Lamp only from flowers closed by hand',
        'Osier Lamp: 4 plants, sources ask 6 to 12',
        'Quillon: hybrid, buy again',
        'Hob Kettle: not known, try apart',
        'Ripe seed of watermelons, soonest: 30 Jul, 11 weeks after planting out (as others give it)',
      ],
    ),
  ],
  'eight-plants': [
    fact('one muskmelon, Thatch Penny, 2 plants; Copper Gate beside the hybrid Fiddle Moss', [
      'Keep seed of Thatch Penny: nothing else of the kind stood here in 2025',
      'Keep seed of Copper Gate only from flowers closed by hand',
      'Thatch Penny: 2 plants, sources ask 10 to 20',
      'Fiddle Moss: hybrid, buy again',
    ]),
  ],
  'notebook-years': [
    fact('2024: Aunt Lettice Stripe and Marlpit Early are watermelons, Brassnet the only muskmelon; all spots have names', [
      'Keep seed of Brassnet: nothing else of the kind stood here in 2024',
      'Keep seed of Aunt Lettice Stripe only from flowers closed by hand',
      'Aunt Lettice Stripe: 4 plants',
      'Marlpit Early: not known',
    ]),
  ],
  'no-instruments': [
    fact('Larder Moon beside the hybrid Pinfold; Wren Basket alone in its tub', [
      'Keep seed of Wren Basket: nothing else',
      'Keep seed of Larder Moon only from flowers closed by hand',
      'Wren Basket: one plant, sources ask 10 to 20',
    ]),
  ],
  'ten-unblocked': [
    fact(
      'four watermelons side by side; Harrow Red in L1, L2, L4 and L7, two plants each',
      ['Harrow Red and Pale Ferry only from flowers closed by hand', /Harrow Red open-pollinated 3 others|Harrow Red open-pollinated Pale Ferry, Sixpenny Bell and Wick and Tar 0 8 6 to 12/, 'Sixpenny Bell: hybrid', 'Wick and Tar: not known'],
      [/muskmelon/i],
    ),
  ],
  southern: [
    fact(
      'Petrel Back in S2, I1 and I3, two plants each; tagged fruit set from 19 December at the soonest or later',
      ['Keep seed of Petrel Back only from flowers closed by hand', 'Tin Roof: hybrid', 'Petrel Back open-pollinated Tin Roof 0 6 6 to 12'],
      [/muskmelon/i, 'What crosses'],
    ),
  ],
  'us-letter': [
    fact('Switchyard beside the hybrid Little Caboose, 3 × 3 plants; 150 m are 492 feet', [
      'Keep seed of Switchyard only from flowers closed by hand',
      'Switchyard open-pollinated Little Caboose 0 9 6 to 12',
      /under 492, 492 to/,
    ], [/\d m\b/]),
  ],
  'one-crop': [
    fact(
      'two open-pollinated gourds side by side; its own crop has nothing of seed in its file',
      ['Keep seed of Beadle and Tallow Face only from flowers closed by hand', 'Of lantern gourds nobody’s distance is in this book', 'Beadle open-pollinated Tallow Face 0 3 not known'],
      ['Cleaning and drying', 'Ripe seed of'],
    ),
  ],
};
