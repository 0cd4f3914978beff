import type { Fact } from '../garden-facts.ts';

const fact = (why: string, says: NonNullable<Fact['says']>, never: NonNullable<Fact['never']> = []): Fact => ({
  page: 'variety/',
  says,
  never: [/Will not make it/, ...never],
  why,
});

export const VARIETY_FACTS: Readonly<Record<string, readonly Fact[]>> = {
  'day-zero': [
    fact(
      '16 May to 15 October: 15 + 30 + 31 + 31 + 30 + 15 days; 23 May: seven fewer; a muskmelon’s days nobody states; 5 m² and 2.5 m² for six watermelons are 1.25 each',
      [
        '2 of 3 have time enough here to ripen',
        'Watermelons have 152 days here, 16 May to our season’s end, 15 Oct',
        'Osier Lamp (80 days stated), Quillon (85 days, as of its kind)',
        'Muskmelons have 145 days here',
        'Nobody can say: Hob Kettle',
        /watermelons 0\.9 to 2\.2 m² \(ours had 1\.3\)/,
      ],
    ),
  ],
  'eight-plants': [
    fact('18 May to 30 September: 13 + 30 + 31 + 31 + 30; 84 days to 10 August, 82 to 8 August; 12 m² among four mounds of two plants', [
      'all have time enough here to ripen',
      'Watermelons have 135 days here',
      'Copper Gate (ours took 84), Fiddle Moss (ours took 82)',
      'Thatch Penny (ours took 79)',
      '(ours had 1.5)',
    ]),
  ],
  'notebook-years': [
    fact('planted some day about the end of May, the season ends 30 September; no area is written down', [
      /our season’s end, 30 Sept/,
      'Aunt Lettice Stripe',
    ], ['ours had']),
  ],
  'no-instruments': [
    fact('24 May to 20 September: 7 + 30 + 31 + 31 + 20; Larder Moon 85 days to 17 August; the tub’s fruit about 76', [
      'Watermelons have 119 days here',
      'Larder Moon (ours took 85)',
      'Wren Basket (ours took 76)',
    ]),
  ],
  'ten-unblocked': [
    fact('watermelons alone; 40 m² among ten mounds, two plants each', ['our season’s end, 28 Sept', '(ours had 2.0)'], [/muskmelon/i]),
  ],
  southern: [
    fact(
      'over New Year: 15 November to 10 April are 15 + 31 + 31 + 28 + 31 + 10 days; 36 m² for twelve plants',
      ['Watermelons have 146 days here, 15 Nov to our season’s end, 10 Apr', 'Tin Roof (ours took up to 98)', '(ours had 3.0)'],
      [/muskmelon/i],
    ),
  ],
  'us-letter': [
    fact('May 18 to September 15: 13 + 30 + 31 + 31 + 15; 300 ft² for eighteen plants are 16.7', [
      'Watermelons have 120 days here',
      'ft² (ours had 17)',
      /Little Caboose \d+ ours took up to \d+ \d+ time enough/,
    ]),
  ],
  'one-crop': [
    fact('26 May to 20 October: 5 + 30 + 31 + 31 + 30 + 20; its own crop tells no room', [
      'Lantern gourds have 147 days here',
      /Tallow Face 117 ours took 117 30 time enough/,
    ], ['Room a plant']),
  ],
};
