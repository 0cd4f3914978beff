import type { Fact } from '../garden-facts.ts';

const fact = (why: string, says: NonNullable<Fact['says']>, never: NonNullable<Fact['never']> = []): Fact => ({
  page: 'water/',
  says,
  never,
  why,
});

const FINGER = 'Put a finger in: water when the top 5 cm are dry';
const NO_CANS = [/\d cans/, /\d litres/];

export const WATER_FACTS: Readonly<Record<string, readonly Fact[]>> = {
  'day-zero': [
    fact(
      'no station: the finger, and no number; planted 16 May, set 40 to 50 days on',
      [FINGER, 'nobody can say without a thermometer', 'Even water, as watermelons set: 25 Jun to 5 Jul'],
      NO_CANS,
    ),
  ],
  'eight-plants': [
    fact('a gauge and no thermometer', [FINGER, 'nobody can say without a thermometer', 'Kept here: little'], NO_CANS),
  ],
  'notebook-years': [fact('no station', [FINGER, 'nobody can say without a thermometer'], NO_CANS)],
  'no-instruments': [fact('words for the rain', [FINGER, 'Kept here: little'], NO_CANS)],
  'ten-unblocked': [fact('no station', [FINGER, 'nobody can say without a thermometer'], [...NO_CANS, 'muskmelon'])],
  southern: [
    fact(
      'eight summers read, October to March; 6 m² a mound, a coefficient of 1; Eq. 52 and its means worked apart in Python: 174, 202, 205, 169 l a week; April was never read',
      [
        '6.0 m² of watermelons want about 205 litres a week in Jan, 21 cans',
        'Too few years were read in Apr',
        'Nov 4.1 174 17 7 every 3 days 76',
        'Feb 4.0 169 17 7 every 3 days 99',
        'A can holds 10 litres as the house takes it',
      ],
      [/\bJul\b/, 'nobody can say'],
    ),
  ],
  'us-letter': [
    fact('two years of readings are too few; 5 cm are 2 in', ['the top 2 in are dry', 'after five years of the thermometer'], [
      /\d gallons/,
      /\d cans/,
    ]),
  ],
  'one-crop': [
    fact('a thermometer of one year, but the crop’s own file has no coefficient', [
      FINGER,
      'What they drink nobody tells in this book',
      'Kept here: some',
    ], NO_CANS),
  ],
};
