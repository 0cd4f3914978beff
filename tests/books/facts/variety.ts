import type { Fact } from '../garden-facts.ts';

/** Of no page about varieties, whatever the records hold. */
const NEVER: NonNullable<Fact['never']> = [
  /\d\s?%|per ?cent|±|\+\/-/i,
  /significan|best variety|winner|p-value|\bp\s?[<=]/i,
  /\b(?:0|1|19|20) in 20 that/,
];
/** Surer than a garden of one season may say. */
const ONE_SEASON = /\b1[78] in 20 that/;

type Says = NonNullable<Fact['says']>;

const on = (page: string, why: string, says: Says, never: Says = []): Fact => ({
  page,
  says,
  never: [...NEVER, ...never],
  why,
});
const fact = (why: string, says: Says, never: Says = []): Fact =>
  on('variety/', why, says, [/Will not make it/, ...never]);
/** A page about one variety, the report on all, the poster. */
const one = (id: string, why: string, says: Says, never: Says = []): Fact => on(`variety/${id}/`, why, says, never);
const report = (crop: string, why: string, says: Says, never: Says = []): Fact =>
  on(`variety/all/${crop}/`, why, says, never);
const poster = (crop: string, why: string, says: Says, never: Says = []): Fact =>
  on(`sheets/results-${crop}/`, why, says, never);

const NO_BET = [/if we had to bet/i, /in 20 that/, 'short list', 'variety against variety'];
const FEW = 'Which watermelon is better nobody can say yet: it takes three ripe fruits, or three spots, of two varieties';

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
    fact('nothing is picked yet', ['In 2026 we grow'], [...NO_BET, 'nobody can say yet', 'our only']),
    ...['osier-lamp', 'quillon', 'hob-kettle'].map((id) => one(id, 'nothing is picked yet', ['no fruit of it'], NO_BET)),
  ],
  'eight-plants': [
    fact('18 May to 30 September: 13 + 30 + 31 + 31 + 30; 84 days to 10 August, 82 to 8 August; 12 m² among four mounds of two plants', [
      'Watermelons have 135 days here',
      'Time enough: Copper Gate (ours took 84), Fiddle Moss (ours took 82)',
      'Thatch Penny (ours took 79)',
      '(ours had 1.5)',
    ]),
    fact(
      'Fiddle Moss gave two fruits in one spot, fewer than three; one muskmelon',
      [FEW, 'Thatch Penny, our only muskmelon with a harvest, has nothing to be held against'],
      NO_BET,
    ),
    ...['copper-gate', 'fiddle-moss', 'thatch-penny'].map((id) =>
      one(id, 'no two varieties have three of anything', ['2025'], NO_BET),
    ),
  ],
  'notebook-years': [
    fact('planted some day about the end of May, the season ends 30 September; no area is written down', [
      /our season’s end, 30 Sept/,
      'Aunt Lettice Stripe',
    ], ['ours had']),
    fact(
      'nothing weighed or tasted; the stripe has three spots in three years, Marlpit Early two',
      [FEW, 'Brassnet, our only muskmelon with a harvest, has nothing to be held against'],
      NO_BET,
    ),
    ...['grandstripe', 'marlpit', 'brassnet'].map((id) => one(id, 'no two are compared', ['2024'], NO_BET)),
  ],
  'no-instruments': [
    fact('24 May to 20 September: 7 + 30 + 31 + 31 + 20; Larder Moon 85 days to 17 August; the tub’s fruit about 76', [
      'Watermelons have 119 days here',
      'Larder Moon (ours took 85)',
      'Wren Basket (ours took 76)',
    ]),
    fact(
      'Larder Moon’s third fruit was cut unripe: two ripe ones of it and three of Pinfold; one spot each',
      [FEW, 'Wren Basket, our only muskmelon with a harvest, has nothing to be held against'],
      NO_BET,
    ),
    ...['larder-moon', 'pinfold', 'wren-basket'].map((id) => one(id, 'no wish is told of two', ['2025'], NO_BET)),
  ],
  'ten-unblocked': [
    fact('watermelons alone; 40 m² among ten mounds, two plants each', ['our season’s end, 28 Sept', '(ours had 2.0)'], [/muskmelon/i]),
    fact(
      'Harrow Red in four mounds and Pale Ferry in three; 2025 is the only season',
      [
        /Watermelons, if we had to bet: 1[56] in 20 that Harrow Red (gives more|is ripe sooner) than Pale Ferry\./,
        'That is 2025, one summer.',
        'All of it: Watermelons, variety against variety',
      ],
      [ONE_SEASON, /in 20 that (Pale|Six|Wick)/, /than (Sixpenny|Wick)/, 'nobody can say yet'],
    ),
    report(
      'watermelon',
      'sound kg a plant: 7.8, 5.05, 7.35, 4.5, mean 6.175; 4.65, 3.4, 3, mean 3.683; 3.9, 2.95, mean 3.425; 3.85. Squares 8.09 + 1.48 + 0.45 on 3 + 2 + 1, so one mound differs by 1.293: times √(1/4 + 1/3), √(1/4 + 1/2), √(1/4 + 1). Without 4.5 Harrow Red has 6.733, without 7.8 5.633',
      [
        'Pale Ferry 1 2.5 less 1.0 3.1 less to 2.0 less',
        'Sixpenny Bell 1 2.8 less 1.1 3.3 less to 2.2 less',
        'Wick and Tar 1 2.3 less 1.4 2.9 less to 1.8 less',
      ],
      [ONE_SEASON, 'without any one season', 'the same over seasons'],
    ),
    report(
      'watermelon',
      'days from 22, 22, 22 and 31 May: 86, 86, 93, 91, mean 89; 91 thrice; 77 and 84; 105. Squares 38 + 0 + 24.5 on six, so 3.227',
      [
        'Pale Ferry 1 2 more 2 1 more to 3 more',
        'Sixpenny Bell 1 9 less 3 12 less to 5 less',
        'Wick and Tar 1 16 more 4 15 more to 17 more',
        // 1.293 of 4.645, the mean of ten; 3.227 of 89.5.
        /for every 100 of the mean 28 4 Sugar/,
      ],
    ),
    report(
      'watermelon',
      'four, three, two and one mound of two plants; none counted alive; all placed: chosen; nothing cut',
      [
        'Harrow Red, yardstick open-pollinated medium, 90 days 2025 8 Pale Ferry open-pollinated 2025 6',
        'Sixpenny Bell hybrid icebox 2025 4 Wick and Tar not known 2025 2 One packet, one mound, to see what it is.',
        /Harrow Red, yardstick 1 4 /,
        /Sixpenny Bell 1 2 too few too few dots only Wick and Tar 1 1 too few too few dots only/,
        'Places were chosen, so good ground can pass for a good variety',
        'Too little is known of Sixpenny Bell and Wick and Tar.',
        'nothing here is said surer than 16 in 20',
        'One comparison with the yardstick',
        'How sweet it is (nothing told of it); how much it gives; how soon it is ripe; how well we like it (nothing told of it). Each alike',
        /Yardstick Harrow Red\. /,
      ],
      [/\d of \d One packet/, 'because it was grown the longest', 'by lot', 'What was the summer’s share?', 'Would the book have been right?', 'What did the tasters say?'],
    ),
    poster(
      'watermelon',
      'ten mounds, one season; nothing weighed fruit by fruit',
      ['From 10 mounds in one season, held against Harrow Red.', 'One summer: another may turn it round.', /If we had to bet: 1[56] in 20 that/],
      [ONE_SEASON, 'weighed or metered', 'short list', 'Order of merit'],
    ),
    one(
      'pale-ferry',
      'three mounds beside the yardstick’s four, in one summer',
      [/bet on our records: 1[56] in 20 that Harrow Red (gives more|is ripe sooner) than Pale Ferry/, 'In what matters to us: short list'],
      [ONE_SEASON],
    ),
    one('harrow-red', 'the yardstick is held against nothing', ['The others are held against it.'], [/bet on our records/]),
    one('wick-and-tar', 'one mound', ['one fruit'], NO_BET),
  ],
  southern: [
    fact(
      'over New Year: 15 November to 10 April are 15 + 31 + 31 + 28 + 31 + 10 days; 36 m² for twelve plants',
      ['Watermelons have 146 days here, 15 Nov to our season’s end, 10 Apr', 'Tin Roof (ours took up to 98)', '(ours had 3.0)'],
      [/muskmelon/i],
    ),
    fact(
      'two varieties in two seasons, five mounds each',
      [
        /Watermelons, if we had to bet: 1[5-8] in 20 that (Tin Roof|Petrel Back) (gives more|is ripe sooner) than/,
        'All of it: Watermelons, variety against variety',
      ],
      ['one summer', 'nobody can say yet'],
    ),
    report(
      'watermelon',
      'sound kg a plant 4.55, 4.5 and 4.9, 4.45 in 2024/25, 0.15 apart; 3.95, 1.75, 3 and 4.85, 4.7, 5.6 in 2025/26, 2.15 apart; half of 2.15 - 0.15 over seasons; one mound differs by √(3.0025/6), 0.707, times √(1/2 + 1/2 + 1/3 + 1/3)/2',
      ['Tin Roof 2 1.2 more 0.5 1.0 0.9 more to 1.4 more 0.2 more to 2.2 more', /for every 100 of the mean 17 /],
      ['2024-25', '2025-26'],
    ),
    report(
      'watermelon',
      'days 91, 90 and 98 (I1 was picked over a week) in 2024/25, 7.5 apart; 84, 91, 91 and 84, 91, 98, 2.33 apart',
      ['Tin Roof 2 5 more 4 3 2 more to 7 more 2 more to 8 more'],
    ),
    report(
      'watermelon',
      'two mounds of each in 2024/25 are too few to tell 2025/26 from; 0.15 and 7.5 came',
      [
        'Each season was left out and told from the others: 2 of 2 differences from Petrel Back came within what was said',
        /2024\/25 Tin Roof sound fruit \S+ less to \S+ more 0\.2 more within/,
        /2024\/25 Tin Roof first ripe fruit after planting out \S+ less to \S+ more 8 more within/,
      ],
      [/2025\/26 Tin Roof (sound|first)/],
    ),
    report(
      'watermelon',
      '4 + 6 plants of each; placed: lot in both seasons; three Tin Roof and one Petrel Back were metered and tasted',
      [
        'Petrel Back, yardstick open-pollinated small 2024/25, 2025/26 10 Tin Roof hybrid 82 days 2024/25, 2025/26 10',
        'Petrel Back, yardstick 2 5 ',
        'Places were drawn by lot.',
        'How sweet it is (nothing told of it)',
        'how well we like it (nothing told of it)',
        'nothing here is said surer than 18 in 20',
        'In an average summer of 2024/25, 2025/26',
        'under eight seasons',
        /Yardstick Petrel Back\. /,
      ],
      ['because it was grown the longest', 'Places were chosen'],
    ),
    poster('watermelon', '13 fruits weighed in 2025/26; four mounds and six', [
      'Tauparu Street Commons, 2024/25, 2025/26',
      'From 13 fruits weighed or metered and 10 mounds in 2 seasons, held against Petrel Back.',
    ], ['One summer']),
    one('tin-roof', 'two seasons beside the yardstick', [/bet on our records: 1[5-8] in 20 that (Tin Roof|Petrel Back) /, 'All watermelons beside it']),
  ],
  'us-letter': [
    fact('May 18 to September 15: 13 + 30 + 31 + 31 + 15; 300 ft² for eighteen plants are 16.7', [
      'Watermelons have 120 days here',
      'ft² (ours had 17)',
      /Little Caboose \d+ ours took up to \d+ \d+ time enough/,
    ]),
    fact(
      'two varieties in two seasons, four and five mounds',
      [/Watermelons, if we had to bet: 1[5-8] in 20 that Switchyard gives more than Little Caboose\. And 1[5-8] in 20 that Little Caboose is ripe sooner than Switchyard/],
      ['one summer'],
    ),
    report(
      'watermelon',
      'sound lb a plant: 20.5 and 11.0 in 2024 (B1 had one unsound, not weighed apart), 9.5 apart; 14.5, 13.17, 14.83 and 8.67, 3, 8.17 in 2025, 7.56 apart; half of their difference over seasons; √(21.24/4) = 2.30 times √(1 + 1 + 1/3 + 1/3)/2; days 90 and 76, 76, then 87, 87, 94 and 73, 80, 80',
      [
        'Little Caboose 2 8.5 less 1.9 1.0 9.0 less to 7.6 less 9.5 less to 7.6 less',
        'Little Caboose 2 13 less 3 1 13 less to 12 less 14 less to 12 less',
        'sound fruit, lb a plant',
      ],
    ),
    report(
      'watermelon',
      '6 + 9 plants, 3 + 9 plants; placed: lot in 2025, not told in 2024',
      [
        'Little Caboose hybrid icebox, 74 days 2024, 2025 15 Switchyard, yardstick open-pollinated large, 88 days 2024, 2025 12',
        'How places were given is not told of all',
        'Little Caboose 2 5 ',
        'Switchyard, yardstick 2 4 ',
      ],
      ['by lot', 'Places were chosen'],
    ),
    poster('watermelon', '14 fruits of 2025; three mounds and six', [
      'From 14 fruits weighed or metered and 9 mounds in 2 seasons, held against Switchyard.',
      'Letter to Tabloid',
    ], ['A4']),
  ],
  'one-crop': [
    fact('26 May to 20 October: 5 + 30 + 31 + 31 + 30 + 20; its own crop tells no room', [
      'Lantern gourds have 147 days here',
      /Tallow Face 117 ours took 117 30 time enough/,
    ], ['Room a plant']),
    fact(
      'three mounds each, one season',
      [/Lantern gourds, if we had to bet: 1[56] in 20 that Beadle gives more than Tallow Face\./, 'That is 2025, one summer.'],
      [ONE_SEASON],
    ),
    report(
      'lantern-gourd',
      'sound kg a plant 14.5, 9.3, 10.2, mean 11.33, and 10.9, 8.3, 8, mean 9.07; √(20.53/4) = 2.27 times √(2/3); without 9.3 12.35, without 14.5 9.75. Days 124, 124, 131 and 117 thrice: 9.33 apart, √(32.67/4) times √(2/3)',
      ['Tallow Face 1 2.3 less 1.8 3.3 less to 0.7 less', 'Tallow Face 1 9 less 2 11 less to 7 less'],
      [ONE_SEASON],
    ),
    report('lantern-gourd', 'a plant a mound; placed: lot', [
      'Beadle, yardstick open-pollinated large 2025 3 Tallow Face open-pollinated 110 days 2025 3',
      'Places were drawn by lot.',
      /Yardstick Beadle\. /,
    ]),
    poster('lantern-gourd', '5 + 7 fruits weighed, six mounds', [
      'Which lantern gourd?',
      'From 12 fruits weighed or metered and 6 mounds in one season, held against Beadle.',
    ]),
  ],
};
