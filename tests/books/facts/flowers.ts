import type { Fact } from '../garden-facts.ts';

const FEMALE = /first female \w+ flowers of/;
const TAGGED = /of \d+ flowers? \d/;
const COUNTED = /counts? found/;

const fact = (why: string, says: NonNullable<Fact['says']>, never: NonNullable<Fact['never']> = []): Fact => ({
  page: 'flowers/',
  says: ['with 2 insects or fewer pollinate by hand', 'several of ten yellow and drop', ...says],
  // No garden here tagged ten flowers.
  never: [/of every ten/, ...never],
  why,
});

/** Where nobody wrote down a flower nothing may be counted. */
const NO_FLOWER = [FEMALE, TAGGED, COUNTED, 'First flowers of'];

const APART = 'Males open first: that is normal.';

export const FLOWERS_FACTS: Readonly<Record<string, readonly Fact[]>> = {
  'day-zero': [
    fact(
      'ripe 85 days from 16 and 17 May at the soonest, 35 to 45 of them from set: 40 to 50 days after the middle day',
      [
        APART,
        /Watermelons set: 25 Jun to 5 Jul, 6 to 7 weeks after planting out \(as others give it\)/,
        'No source dates the set of muskmelons',
        '8 visits a flower or more (watermelons)',
        'Too little is kept yet',
      ],
      NO_FLOWER,
    ),
  ],
  'eight-plants': [
    fact(
      'E1-25 on 27 June, 13 + 27 = 40 days from 18 May, and about 6 insects; E1-a set on 29 June, E1-b about 4 July',
      [
        APART,
        'Our first female watermelon flowers of 2025: 27 Jun, 6 weeks after planting out.',
        '2025: our one count found about 6.',
        'Watermelons set: 29 Jun to 4 Jul, 6 to 7 weeks after planting out (as in our one season)',
        'Kept here: little',
      ],
      [TAGGED, 'First flowers of'],
    ),
  ],
  'notebook-years': [
    fact('two crops, and neither a flower nor a fruit’s set day', [APART, 'Too little is kept yet', 'as others give it'], NO_FLOWER),
  ],
  'no-instruments': [
    fact(
      'N-25 on 29 June, 7 + 29 = 36 days from 24 May; the first male of S-25 about nine days before',
      [
        APART,
        'Our first female watermelon flowers of 2025: 29 Jun, 5 weeks after planting out.',
        'Kept here: little',
      ],
      [TAGGED, COUNTED],
    ),
  ],
  'ten-unblocked': [
    fact('watermelons alone', [APART, 'a small hairy fruit the size of a pea', '4 to 7 males'], [...NO_FLOWER, /muskmelon/i]),
  ],
  southern: [
    fact(
      'S1-25 on 24 December, 15 + 24 = 39 days from 15 November; one of three of I1-25 set; 12 insects on New Year’s Day; sets from 28 December to 5 January',
      [
        APART,
        'Our first female watermelon flowers of 2025/26: 24 Dec, 6 weeks after planting out.',
        'S1 Tin Roof 14 Dec, 29 days 24 Dec, 39 days',
        '2025/26, left to the insects: of 3 flowers 1 set. From ten flowers on we say more.',
        '2025/26: our one count found 12.',
        'Watermelons set: 28 Dec to 5 Jan, 6 to 7 weeks after planting out (as in our one season)',
        'Kept here: full',
      ],
    ),
  ],
  'us-letter': [
    fact(
      'the month stands first; ripe 85 days from May 18, set 40 to 50 days from then',
      [APART, 'Watermelons set: Jun 27 to Jul 7'],
      NO_FLOWER,
    ),
  ],
  'one-crop': [
    fact(
      'its own crop has no flowers in its file',
      ['How lantern gourds flower is not told in this book', 'nobody tells here', 'No source found.'],
      [...NO_FLOWER, APART, /set: \d/],
    ),
  ],
};
