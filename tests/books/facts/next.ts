import type { Fact } from '../garden-facts.ts';

const fact = (why: string, says: NonNullable<Fact['says']>, never: NonNullable<Fact['never']> = []): Fact => ({ page: 'next/', says, never, why });

export const NEXT_FACTS: Readonly<Record<string, readonly Fact[]>> = {
  'day-zero': [
    fact(
      'nothing is picked; none of three varieties is the yardstick; sown 18 April, planted 16 May: 28 days',
      [
        'Nothing is picked yet; write down what came off each spot, and when',
        'Choose one known variety as yardstick',
        'Grow Hob Kettle, Osier Lamp and Quillon again: one summer says little',
        'Sow watermelons, 4 weeks before planting out (as in our one season)',
      ],
      ['Learned', 'both of the last two seasons'],
    ),
  ],
  'eight-plants': [
    fact(
      '10 fruits, 24.2 kg, E3-a 82 days after planting out; set days, a gauge and counted trays are kept, looks are not',
      [
        'In 2025 we so far picked 10 fruits',
        'the signs of each fruit before it is cut: it would help to answer 2 questions',
        'the first ripe one 82 days after planting out',
        'Watermelons: 7 cuts, not enough to judge the signs by',
        'Then which tagged flowers set',
      ],
      ['the sweetest', 'both of the last two seasons'],
    ),
  ],
  'notebook-years': [
    fact('the stripe in the top row in 2023 and 2024; Marlpit in 2022 and 2024; about 14 fruits in 2024, and no set day', [
      /In 2024 we (so far )?picked about 14 fruits; next, write down the day each fruit sets/,
      'Judge Aunt Lettice Stripe, Brassnet and Marlpit Early by all their seasons',
      'Move watermelons, or change the soil, where they stood in both of the last two seasons: top',
    ]),
  ],
  'no-instruments': [
    fact('one season, three varieties', ['Grow Larder Moon, Pinfold and Wren Basket again: one summer says little'], ['°Brix', 'both of the last two seasons']),
  ],
  'ten-unblocked': [
    fact('Harrow Red is the yardstick; ten mounds in natural order, one season', [
      'Keep Harrow Red in the ground, the yardstick of the others',
      'Grow Pale Ferry, Sixpenny Bell and Wick and Tar again beside the yardstick: one summer says little',
      /L8 Pale Ferry L9 Sixpenny Bell L10 Wick and Tar/,
    ], [/muskmelon/i, 'again L']),
  ],
  southern: [
    fact(
      'S1, S2, I1 and I2 had watermelons in both summers; 13 fruits; first ripe on 7 February, 84 days after 15 November',
      [
        'In 2025/26 we',
        'picked 13 fruits',
        '84 days after planting out',
        'Judge Tin Roof by all its seasons, not by the last',
        'both of the last two seasons: I1, I2, S1 and S2',
        /S3 nothing Tin Roof/,
        'Whether it is ripe; how sweet each kind is',
      ],
      ['Whether rain thins the sugar'],
    ),
  ],
  'us-letter': [
    fact('A1, A2 and B1 had watermelons in both summers; no day of set is known; a gauge is kept', [
      'picked 14 fruits; next, write down the day each fruit sets',
      '73 days after planting out',
      'both of the last two seasons: A1, A2 and B1',
      'Keep Switchyard in the ground',
    ], ['Whether rain thins the sugar', /\d kg/]),
  ],
  'one-crop': [
    fact('12 fruits; 20 September is 117 days after 26 May; Beadle is the yardstick', [
      'picked 12 fruits',
      '117 days after planting out',
      'Keep Beadle in the ground',
      'Grow Tallow Face again beside the yardstick',
      /F1 Beadle F2 Tallow Face F3 Tallow Face/,
    ], ['Signs']),
  ],
};
