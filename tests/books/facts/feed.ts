import type { Fact } from '../garden-facts.ts';

const fact = (why: string, says: NonNullable<Fact['says']>, never: NonNullable<Fact['never']> = []): Fact => ({
  page: 'feed/',
  says,
  never,
  why,
});

const STOP = 'Give none once the first female flower opens';

export const FEED_FACTS: Readonly<Record<string, readonly Fact[]>> = {
  'day-zero': [
    fact(
      'planted 16 and 17 May, the middle one 16; ripe after 85 days, set at most 45 before that: 40 days on; 80 to 157 and 80 to 168 kg a hectare',
      [
        `${STOP}: watermelons about 25 Jun.`,
        'Nothing given is written down for 2026',
        'muskmelons 8 to 16 g a m² of nitrogen in a season, watermelons 8 to 17',
      ],
      ['muskmelons about', 'got something'],
    ),
  ],
  'eight-plants': [
    fact(
      'the first female flower on 27 June, 40 days after 18 May; compost for all in May, no amount; E4 was fed on 12 June, and nobody tells when it flowers',
      [
        `${STOP}: watermelons about 27 Jun.`,
        /Feed watermelons for leaf: 18 May to 27 Jun, up to 6 weeks after planting out \(as in our one season\)/,
        '4 spots got something in 2025; how much nitrogen that was the records do not tell',
      ],
      ['liquid feed on', 'Used the first year'],
    ),
  ],
  'notebook-years': [
    fact('out 20 May to 1 June, 25 May in the middle for 2025; 40 days on 4 July', [
      `${STOP}: watermelons about 4 Jul.`,
      'as others give it',
      /Nothing given is written down for 2024/,
    ]),
  ],
  'no-instruments': [
    fact(
      'the first female flower on 29 June, 36 days after 24 May; three barrows on beds without an area, and a feed without a label',
      [
        `${STOP}: watermelons about 29 Jun.`,
        '3 spots got something in 2025; how much nitrogen that was the records do not tell',
      ],
      ['liquid feed on'],
    ),
  ],
  'ten-unblocked': [
    fact(
      'out 22 to 31 May, 24 May in the middle, 40 days on; 9 barrows of 85 l, 0.5 to 0.9 kg a litre, 0.5 to 1.1 of 100, on 40 m²: 1.9 to 7.6 kg; of it 50 to 65 of 100',
      [
        '10 spots got something in 2025',
        /L9, L10 48 to 189 24 to 123/,
        `${STOP}: watermelons about 3 Jul.`, 'watermelons 8 to 17', 'of 100 parts of P2O5 44 are phosphorus'],
      ['muskmelon', 'cucumber'],
    ),
  ],
  southern: [
    fact('the first female flower on 24 December, 39 days after 15 November', [
      `${STOP}: watermelons about 24 Dec.`,
      'Feed watermelons for leaf: 15 Nov to 24 Dec, up to 6 weeks after planting out (as in our one season)',
      'Nothing given is written down for 2025/26',
    ]),
  ],
  'us-letter': [
    fact(
      'out on 18 May, 40 days on; 8 g a m² are 1.6 lb a 1,000 ft², 16.8 are 3.4; 4.5 lb with 5 of 100 on 300 ft² are 0.075 lb a 100 ft², 60 lb of compost with 1 to 2.5 of 100 on 150 ft² 0.4 to 1; what the gallons weighed is not told',
      [
        `${STOP}: watermelons about Jun 27.`,
        'watermelons 0.16 to 0.34 lb a 100 ft² of nitrogen',
        'A1, A3 0.48 to 1.08 0.12 to 0.23',
        'A2 at least 0.48 to 1.08',
        'B1, B2 at least 0.08 at least 0.08',
        'B3 0.08 0.08',
      ],
      [/\d g\b/],
    ),
  ],
  'one-crop': [
    fact(
      'its own crop file tells neither days nor nitrogen',
      [`${STOP}.`, 'How much lantern gourds want nobody tells in this book', 'Nothing given is written down for 2025'],
      [/weeks after planting out/, /\d g a m²/],
    ),
  ],
};
