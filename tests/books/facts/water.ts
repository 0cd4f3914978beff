import type { Fact } from '../garden-facts.ts';

const fact = (why: string, says: NonNullable<Fact['says']>, never: NonNullable<Fact['never']> = []): Fact => ({
  page: 'water/',
  says,
  never,
  why,
});

const FINGER = 'Put a finger in: water when the top 5 cm are dry';
const NO_CANS = [/\d cans (a|every)/, /a full-grown spot drinks/];

export const WATER_FACTS: Readonly<Record<string, readonly Fact[]>> = {
  'day-zero': [
    fact(
      'no station: the finger, and no number; planted 16 May, set 40 to 50 days on; a tank nobody dipped',
      [
        FINGER,
        'nobody can say without a thermometer',
        'Even water, as watermelons set: 25 Jun to 5 Jul',
        'Who gets water first: those with set fruit or in flower',
        'Nobody has held it against the stick yet',
      ],
      [...NO_CANS, 'were given in all'],
    ),
  ],
  'eight-plants': [
    fact(
      'a gauge and no thermometer; four spots: 4 + 4 · 6 + 10 + 4 · 5 + 4 + 4 · 9 cans, a little more in a word; from 14 August to 1 September 17 days between',
      [
        FINGER,
        'nobody can say without a thermometer',
        'Kept here: little',
        'In 2025 there was water on 13 days, the longest wait between 17 days; at least 98 cans were given in all',
      ],
      [...NO_CANS, 'Will the tank last'],
    ),
  ],
  'notebook-years': [
    fact(
      'no station; a line for the month',
      [FINGER, 'nobody can say without a thermometer', 'In 2024 30 cans were given in all'],
      [...NO_CANS, 'there was water on'],
    ),
  ],
  'no-instruments': [
    fact(
      'words for the rain and for the water',
      [FINGER, 'Kept here: little', 'In 2025 water was given; how much nobody counted'],
      [...NO_CANS, 'were given in all'],
    ),
  ],
  'ten-unblocked': [
    fact(
      'no station, no watering',
      [FINGER, 'nobody can say without a thermometer'],
      [...NO_CANS, 'muskmelon', 'were given in all'],
    ),
  ],
  southern: [
    fact(
      'eight summers read; 6 m² a mound, 0.35 of it wetted, as no bowl was measured; the first female flower on 24 December, the first ripe fruit on 14 February: Eq. 52, 62, 66 and the tables worked apart in Python: 38, 43, 46 l a week just planted, 107, 117, 126 growing, 168, 188, 211 in fruit, 106, 124, 136 ripening',
      [
        'In a hot week a full-grown spot drinks 21 cans (watermelons)',
        'just planted 15 to 30 Nov 4 4 5',
        'growing 1 to 23 Dec 11 12 13',
        'flower and fruit 24 Dec to 13 Feb 17 19 21',
        'ripening 14 Feb to 15 Mar 11 12 14',
        // 211 l over seven days, and a third of 188 l.
        'A drip line would have to give 30 litres a spot each day',
        'a third of it, 6 cans',
        'A can holds 10 litres as the house takes it',
        'Common practice, no source: every two or three days',
        'What did the spots get in 2025/26?',
      ],
      [/\bJul\b/, 'nobody can say'],
    ),
  ],
  'us-letter': [
    fact(
      'two years of readings are too few for the weeks ahead; 5 cm are 2 in; what was given is looked back on; 382 gal in the tank',
      [
        'the top 2 in are dry',
        'after five years of the thermometer',
        'What did the spots get in 2025?',
        'Gallons a lb',
        'Full 382 gallons',
      ],
      [/a full-grown spot drinks/, /litres/],
    ),
  ],
  'one-crop': [
    fact(
      'a thermometer of one year, but the crop’s own file has no coefficient; 60 + 3 · 100 + 2 · 200 + 100 + 3 · 200 l are 146 cans of 10; 18 days between 26 May and 14 June',
      [
        FINGER,
        'What they drink nobody tells in this book',
        'Kept here: some',
        'In 2025 there was water on 10 days, the longest wait between 18 days; 146 cans were given in all',
      ],
      NO_CANS,
    ),
  ],
};
