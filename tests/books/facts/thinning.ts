import type { Fact } from '../garden-facts.ts';

const fact = (why: string, says: NonNullable<Fact['says']>, never: NonNullable<Fact['never']> = []): Fact => ({
  page: 'thinning/',
  says: ['Seldom: a plant drops what it cannot carry.', 'Late small fruit are not a fault', ...says],
  never,
  why,
});

const NOTHING_KEPT = [/on \d+ plants/, 'in the register', 'we claim nothing'];

export const THINNING_FACTS: Readonly<Record<string, readonly Fact[]>> = {
  'day-zero': [
    fact(
      'the season ends on 15 October; 15 days to 30 September, 30 more to 31 August',
      [
        'leave a plant 2 to 4 muskmelons or 2 to 3 watermelons.',
        'Too late: fruit set after 31 Aug.',
        'Our own records say nothing of it yet.',
      ],
      NOTHING_KEPT,
    ),
  ],
  'eight-plants': [
    fact(
      'E4 had four, one of them an animal’s, on two plants, 1.1 + 0.9 + 0.8 = 2.8 kg of three; E1 to E3 seven on six, 21.4 kg, and E1-c dropped young',
      [
        'Muskmelons of 2025: 4 fruits on 2 plants, 0.9 kg each. Watermelons of 2025: 7 fruits on 6 plants, 3.1 kg each.',
        '2025: 12 fruits in the register, of them thinned 0, dropped young 1.',
        'Too late: fruit set after 16 Aug.',
        'Kept here: full',
      ],
    ),
  ],
  'notebook-years': [
    fact(
      'pickings alone; the next season ends on 30 September 2025, 45 days after 16 August',
      ['Too late: fruit set after 16 Aug.', 'Our own records say nothing of it yet.', 'Kept here: little'],
      NOTHING_KEPT,
    ),
  ],
  'no-instruments': [
    fact(
      'P1 on one plant; N1 to N3 and S1 to S4, S3 rotten, on six; nothing weighed. 20 September less 45 days',
      [
        'Muskmelons of 2025: one fruit on one plant. Watermelons of 2025: 7 fruits on 6 plants.',
        'Too late: fruit set after 6 Aug.',
      ],
      [/\d kg/],
    ),
  ],
  'ten-unblocked': [
    fact(
      'pickings alone, of watermelons; 28 September less 45 days',
      ['leave a plant 2 to 3 watermelons.', 'Too late: fruit set after 14 Aug.'],
      [...NOTHING_KEPT, /muskmelon/i],
    ),
  ],
  southern: [
    fact(
      '14 fruits, I3-2 lost to an animal, on 12 plants; 50.7 kg over 13; 10 April less 45 days: 10, 31 and 4',
      [
        'Watermelons of 2025/26: 14 fruits on 12 plants, 3.9 kg each.',
        'Too late: fruit set after 24 Feb.',
        'One mark a spot, and no line',
      ],
      ['in the register', /muskmelon/i],
    ),
  ],
  'us-letter': [
    fact(
      '14 fruits on 18 plants, 194.5 lb; September 15 less 45 days',
      ['Watermelons of 2025: 14 fruits on 18 plants, 14 lb each.', 'Too late: fruit set after Aug 1.'],
      ['in the register'],
    ),
  ],
  'one-crop': [
    fact(
      '13 fruits, F5-2 left, on six plants; 66.2 kg over 12; its file tells neither a number to leave nor days to ripe',
      [
        'Lantern gourds of 2025: 13 fruits on 6 plants, 5.5 kg each.',
        'How many to leave nobody tells here of lantern gourds.',
        'No source found.',
      ],
      ['bigger fruit', 'Too late'],
    ),
  ],
};
