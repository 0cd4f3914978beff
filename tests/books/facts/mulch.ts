import type { Fact } from '../garden-facts.ts';

const fact = (why: string, says: Fact['says'], never: Fact['never'] = []): Fact => ({
  page: 'mulch/',
  says: ['Mulch when the ground is warm and the seedlings are too big for slugs', ...(says ?? [])],
  never,
  why,
});

/** No mulch is written down: two to four weeks after planting out, by common practice. A barrow is 85 litres. */
const unkept = (why: string, says: Fact['says']): Fact =>
  fact(
    why,
    ['2 to 4 weeks after planting out (common practice, no source)', 'The day mulch was laid', ...(says ?? [])],
    [/Ours of/, 'Mulch laid here', 'Kept here: some'],
  );

export const MULCH_FACTS: Readonly<Record<string, readonly Fact[]>> = {
  'day-zero': [
    unkept('out on 16 and 17 May, so 30 May to 13 June, and on 23 May, so 6 to 20 June; 2.5 m² 5 and 8 cm deep', [
      'Mulch watermelons: 30 May to 13 Jun',
      'Mulch muskmelons: 6 to 20 Jun',
      'for 2.5 m² 125 to 200 litres, 1.5 to 2.4 barrows',
    ]),
  ],
  'eight-plants': [
    fact(
      'on all four mounds on 8 June: 21 days after 18 May, 14 after 25 May; eight tenths covered, no depth; 3 m²',
      [
        'Ours of 2025 went on 2 to 3 weeks after planting out',
        'Mulch muskmelons: 8 Jun, 2 weeks after planting out (as in our one season)',
        'Mulch watermelons: 8 Jun, 3 weeks after planting out (as in our one season)',
        'for 3.0 m² 150 to 240 litres, 1.8 to 2.8 barrows',
        'Kept here: some',
      ],
      [/common practice, no source/],
    ),
  ],
  'notebook-years': [unkept('no spot is measured: a square metre', ['for 1.0 m² 50 to 80 litres, 0.6 to 0.9 barrows'])],
  'no-instruments': [
    fact('on N about 14 June, 21 days after 24 May; the pot of about 5 June had none; no spot is measured', [
      'Ours of 2025 went on 3 weeks after planting out',
      'Mulch watermelons: 14 Jun, 3 weeks after planting out (as in our one season)',
      'Mulch muskmelons: 19 Jun to 3 Jul, 2 to 4 weeks after planting out (common practice, no source)',
      'for 1.0 m² 50 to 80 litres, 0.6 to 0.9 barrows',
    ]),
  ],
  'ten-unblocked': [unkept('4 m² 5 and 8 cm deep', ['for 4.0 m² 200 to 320 litres, 2.4 to 3.8 barrows'])],
  southern: [
    fact('on 7 December, 22 days after 15 November; topped up between 28 December and 4 January; 6 m²', [
      'Ours of 2025/26 went on 3 weeks after planting out',
      'Mulch watermelons: 7 Dec, 3 weeks after planting out (as in our one season)',
      '7 Dec straw: S1, S2, S3 3 7 5',
      /28 Dec to 4 Jan grass, topped up: S1, S2, S3 not known/,
      'for 6.0 m² 300 to 480 litres, 3.5 to 5.6 barrows',
      'Kept here: full',
    ]),
  ],
  'us-letter': [
    fact('on June 8, 21 days after May 18, three inches deep; 50 ft² or 4.645 m² are 232 and 372 litres', [
      'Ours of 2025 went on 3 weeks after planting out',
      'Jun 8 straw: all spots 3 9 3',
      'lay straw 2 to 3 in deep',
      'for 50 ft² 61 to 98 gallons, 2.7 to 4.4 barrows',
    ]),
  ],
  'one-crop': [
    unkept('out on 26 May; 8 m² 5 and 8 cm deep', [
      'Mulch lantern gourds: 9 to 23 Jun',
      'for 8.0 m² 400 to 640 litres, 4.7 to 7.5 barrows',
    ]),
  ],
};
