import type { Fact } from '../garden-facts.ts';

/** Few here kept a record of what was laid by or given away: of the others nothing may be counted. */
const NEVER: Fact['never'] = [/laid by, \d/, /still sound/, /Where the fruit of/, 'seeds of ten'];

const fact = (why: string, says: Fact['says'], never: Fact['never'] = []): Fact => ({
  page: 'picking/',
  says: ['Split and gnawed fruit goes first, every day', ...(says ?? [])],
  never: [...(NEVER ?? []), ...(never ?? [])],
  why,
});

export const PICKING_FACTS: Readonly<Record<string, readonly Fact[]>> = {
  'day-zero': [
    fact(
      'planted 16 May at the soonest, ripe after 85 days as others give it: 15 + 30 + 31 + 9 days; nothing is picked',
      [
        /Watermelons ripen: 9 Aug to/,
        'as others give it',
        'Muskmelons: kinds that slip part',
        'Watermelons: cut the stalk',
        /Others keep muskmelons \d+ to \d+ days at \d+ to \d+ °C; watermelons \d+ to \d+ days/,
        'Too little is kept yet',
      ],
    ),
  ],
  'eight-plants': [
    {
      page: 'picking/',
      says: [
        /Muskmelons ripen: 12( Aug)? to 21 Aug/,
        'Watermelons ripen: 8 Aug to 7 Sept',
        'as in our one season',
        'The one fruit we laid by was sound to the end',
      ],
      never: ['seeds of ten'],
      why: 'E3-a on 8 August, the last of Copper Gate on 7 September; Thatch Penny 12 to 21 August; E1-b eaten sound on 20 August',
    },
  ],
  'notebook-years': [
    fact('picked in three years, and nothing told of what was laid by', [
      'Kept here: little',
      'keeping.yaml',
      'Watermelons: cut the stalk',
    ]),
  ],
  'no-instruments': [
    fact('P1 on 20 August, 76 days from about 5 June; S1 on 10 August, S4 on 30 August; N3 came off unripe', [
      'Muskmelons ripen: 20 Aug, 11 weeks after planting out',
      /Watermelons ripen: 10( Aug)? to 30 Aug/,
    ]),
  ],
  'ten-unblocked': [
    fact('watermelons alone', ['Watermelons: cut the stalk', 'One layer deep'], [/muskmelon/i]),
  ],
  southern: [
    fact(
      'over New Year: planted 15 November, picked ripe from 7 February to 7 March, that of 14 March for the season’s end',
      ['Watermelons ripen: 7 Feb to 7 Mar', 'Kept here: little'],
      [/muskmelon/i],
    ),
  ],
  'us-letter': [
    {
      page: 'picking/',
      says: [
        /Watermelons ripen: [A-Z][a-z]+ \d/,
        'at 45 to 59 °F',
        /members 3 26 food bank 1 23 neighbours 1 about 7/,
        /in all 5 about 56/,
      ],
      never: ['°C', /still sound/],
      why: 'the month first; 7 and 15 °C are 44.6 and 59 °F; 26 + 22.5 + about 7 lb to three places',
    },
  ],
  'one-crop': [
    fact(
      'its own crop has neither way of taking it off nor days of keeping in its file; picked 20 September to 4 October',
      [
        'Lantern gourds ripen: 20 Sept to 4 Oct',
        'Lantern gourds: cut the stalk with a clean knife',
        'Nobody’s figures in this book say how long it keeps',
        'Lantern gourds: no source found',
      ],
      ['Others keep'],
    ),
  ],
};
