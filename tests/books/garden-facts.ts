/** What a page has to say or must never say, read off the records by hand. */
export interface Fact {
  readonly page: string;
  /** The column of text alone, without notes; otherwise all of the page. */
  readonly part?: 'all' | 'body';
  readonly says?: readonly (string | RegExp)[];
  readonly never?: readonly (string | RegExp)[];
  /** How the records tell it. */
  readonly why: string;
}

export const FACTS: Readonly<Record<string, readonly Fact[]>> = {
  'day-zero': [
    {
      page: '',
      says: ['8 plants in 5 spots', '3 varieties', '16 May', /Nothing is picked yet/, 'ecords to 23 May 2026'],
      why: '2 + 2 + 2 + 1 + 1 plants, three mounds and two tubs; the last line written is the tubs’, 23 May',
    },
    { page: 'yield/', says: ['Nothing is picked yet in 2026'], never: [/\bkg\b/], why: 'no harvest is written down' },
    { page: 'weather/', says: ['Nobody has written down the weather'], why: 'no station and no file' },
    { page: 'variety/', says: ['Hob Kettle', 'Osier Lamp', 'Quillon'], never: [/\d kg\b/], why: 'varieties.yaml' },
    { page: 'variety/osier-lamp/', says: ['2 mounds', '80 days from planting out', /icebox/i], why: 'M1 and M2' },
    { page: 'variety/quillon/', says: ['one mound', 'own seed does not come true'], why: 'a hybrid, in M3' },
    {
      page: 'variety/hob-kettle/',
      says: ['2 tubs', 'Seed from the swap table, in a twist of paper.'],
      never: [/none yet|no record/i, /Nothing is kept/],
      why: 'T1 and T2; plantings are kept, and a row of "no record" tells nobody anything',
    },
    {
      page: 'maturity/',
      says: ['Nothing has been picked ripe yet', 'planting date'],
      never: [/\d+ days/],
      why: 'no harvest is written down',
    },
    {
      page: 'ripe/',
      says: [
        'No cut is written down yet',
        'others look for',
        /muskmelons show\?((?!show\?).)*30 days from set((?!show\?).)*None is cut yet/,
        /watermelons show\?((?!show\?).)*35 days from set((?!show\?).)*85 from planting((?!show\?).)*None is cut yet/,
        'One word of what the knife found',
      ],
      never: [/\d in 10/, /of ten (un)?ripe/, 'Kept here'],
      why: 'nothing is picked or cut; one muskmelon and two watermelons are planted',
    },
    {
      page: 'rain/',
      says: ['nobody can say', 'sweeter, same or less'],
      never: ['°Brix', /\d mm/],
      why: 'no harvest, no meter and no gauge',
    },
  ],
  'eight-plants': [
    {
      page: '',
      says: ['8 plants in 4 mounds', /10 fruits, 24(\.2)? kg/, /8 Aug 2025: Fiddle Moss, from E3, 82 days/],
      why: 'E3-a, picked 8 August, planted 18 May: 13 + 30 + 31 + 8 days',
    },
    {
      page: '',
      says: ['Copper Gate from E1', '4.2 kg', 'liked very much'],
      why: 'E1-a, E3-b and E4-b are liked very much; two of them very sweet; E1-a is the heavier',
    },
    {
      page: 'yield/',
      says: [/10 fruits, 24(\.2)? kg/, /8 of (every|the) (ten|10)/, 'Too few', 'Thatch Penny, our only muskmelon'],
      never: ['range of the difference', 'gave more than'],
      why: '7.8 + 9.4 + 4.2 + 2.8 = 24.2 kg; one split, one gnawed; no variety has three mounds',
    },
    { page: 'yield/', says: [/E2 Copper Gate 2 3 2 9\.4/], why: '3.9 + 3.1 + 2.4 kg, E2-b split' },
    {
      page: 'weather/',
      says: ['at least 114 mm', '14 days, 21 Jun to 4 Jul', '16 Aug', 'Nothing read'],
      never: ['Temperature not read', 'Hot:', 'Heat units'],
      why: '114.3 mm to 8 September; the gauge of 17 August, 26.5 mm, is read in the morning; there is no thermometer',
    },
    {
      page: 'variety/thatch-penny/',
      says: ['3 fruits, 2.8 kg', 'parts from its stalk', '12 Aug', '79 days'],
      why: '1.1 + 0.9 + 0.8 kg; 25 May to 12 August',
    },
    {
      page: 'variety/copper-gate/',
      says: [/5 fruits, 17(\.2)? kg/, '84 days'],
      why: '7.8 + 9.4 kg; 18 May to 10 August',
    },
    { page: 'variety/copper-gate/', part: 'body', says: [/liked|sweet/], why: 'all five were tasted and written down' },
    {
      page: 'maturity/',
      says: [
        /Copper Gate 5 of 6 42 44 about 46 5 2/,
        /Fiddle Moss 2 of 2 37 37 37 1 1/,
        /Thatch Penny 12 Aug 21 Aug 79/,
        'Copper Gate 10 Aug 7 Sept 84',
        '85 from planting out',
      ],
      why: '29 June to 10 August 42, 1 July to 14 August 44, about 4 July to 19 August 46; one of six aborted; E3-b has no set day',
    },
    {
      page: 'ripe/',
      says: [
        /muskmelons show\?((?!show\?).)*2 fruits cut, none of them unripe/,
        /watermelons show\?((?!show\?).)*7 fruits cut, none of them unripe/,
        'Kept here: little',
        'The signs of a fruit, written down on the vine',
      ],
      never: [/No cut is written/, /\d in 10/, /of ten (un)?ripe/],
      why: 'E4-a and E4-b; E1-a, E1-b, E2-a, E2-b, E2-c, E3-a and E3-b; E4-c was not cut, none was unripe, none looked over',
    },
    {
      page: 'rain/',
      says: [
        'too little to say yet',
        'No ripe one was metered',
        /one pair of picking days straddled rain and differed/,
        'takes 6',
      ],
      never: ['°Brix for'],
      why: 'E1-b of 19 August, after 26.5 mm, was less sweet than E2-a of 14 August; E2-b was the same, and both days wet',
    },
  ],
  'notebook-years': [
    {
      page: '',
      says: ['10 plants in 3 spots', /[Aa]bout 14 fruits/],
      never: [/First ripe fruit.{0,12}24 Aug/],
      why: '3 + 2 + 4 + about 4 + 1; four of Marlpit Early came off some day in August, perhaps before the 24th',
    },
    {
      page: 'yield/',
      says: ['In 2024', 'about 14', 'Some counts were reckoned', 'at least 14', 'about 22'],
      why: 'pickings',
    },
    { page: 'yield/', never: [/no area|not weighed/], why: 'no column for what nobody ever wrote down' },
    {
      page: 'yield/2023/',
      says: ['at least 14', /One spot left no record/, 'unknown'],
      why: '2 + about 3 + about 9, and nothing is said of the fence bed',
    },
    { page: 'yield/2022/', says: ['about 22'], why: 'about 5 + about 4 + 6 + about 7' },
    { page: 'yield/2022/', never: ['The fruit register'], why: 'there is no register in this garden' },
    {
      page: 'variety/marlpit/',
      says: ['4 fruits'],
      never: ['none yet', /Aug(ust)? none/],
      why: 'picked in August of two past seasons, so neither none nor yet',
    },
    {
      page: 'variety/brassnet/',
      says: ['about 5 fruits'],
      never: [/first (ripe )?one came off about 20 Sept/],
      why: 'about four came off some day in September, perhaps before the 20th',
    },
    { page: 'weather/', says: ['Nobody has written down the weather'], why: 'no station' },
    {
      page: 'maturity/',
      says: [/Aunt Lettice Stripe about 24 Aug 14 Sept to 21 Sept about 91/, /Marlpit Early Aug Aug not known/],
      never: ['From set to ripe', 'heat in'],
      why: '25 May to about 24 August; no day of August is told for Marlpit Early, and no fruit has a line of its own',
    },
    {
      page: 'ripe/',
      says: [
        'No cut is written down yet',
        /muskmelons show\?((?!show\?).)*None is cut yet/,
        /watermelons show\?((?!show\?).)*None is cut yet/,
        'One word of what the knife found',
      ],
      never: [/\d in 10/, /of ten (un)?ripe/, 'Kept here'],
      why: 'three years of pickings and no register: no cut, no look',
    },
    { page: 'rain/', says: ['nobody can say'], never: ['°Brix'], why: 'no meter, no gauge, no word for either' },
  ],
  'no-instruments': [
    {
      page: '',
      says: ['7 plants in 3 spots', '7 fruits', /10 Aug 2025: Pinfold, from S, 78 days/],
      why: 'S1; 24 May to 10 August',
    },
    {
      page: '',
      says: [/Larder Moon from N|Pinfold from S/, 'liked very much'],
      why: 'N1 and S4: both very sweet, liked very much',
    },
    {
      page: 'yield/',
      says: ['7 fruits', /Sound fruits 6/],
      never: [/\b0\.0\b/, 'Sound mass', /\d kg\b/],
      why: 'one of seven split; nothing was weighed, which is not nothing',
    },
    {
      page: 'weather/',
      says: [/at least 15 wet days/i, '13 days, 3 Jul to 15 Jul', /Soaking days at least 4/],
      never: ['Temperature not read', 'Hot:', 'Heat units', /°C|\bmm of rain or more/],
      why: '11 days of some and 4 of soaking, three days unread; no thermometer and no gauge',
    },
    { page: 'variety/wren-basket/', says: ['one tub', 'about 76 days'], why: 'planted about 5 June, picked 20 August' },
    { page: 'variety/larder-moon/', says: ['3 fruits', '85 days'], why: '24 May to 17 August' },
    {
      page: 'variety/larder-moon/',
      part: 'body',
      says: [/\bbig\b/, /liked|sweet/],
      why: 'sizes in words and tastes are written down',
    },
    { page: 'variety/', never: ['not weighed'], why: 'no column for what nobody ever wrote down' },
    {
      page: 'maturity/',
      says: [/Larder Moon 2 of 3 about 48/, /Pinfold 3 of 4 not known/, /Pinfold 10 Aug 30 Aug 78/],
      never: ['heat in'],
      why: 'N1 was a walnut on 5 July, so set 28 June to 3 July, 45 to 50 days before 17 August; no other set day',
    },
    {
      page: 'ripe/',
      says: [
        /muskmelons show\?((?!show\?).)*None is cut yet/,
        /watermelons show\?((?!show\?).)*6 fruits cut, one of them unripe/,
        'Kept here: little',
        'The signs of a fruit, written down on the vine',
      ],
      never: [/No cut is written/, /\d in 10/, /of ten (un)?ripe/],
      why: 'N1, N2, S1, S2 and S4 ripe, N3 unripe; P1, the only muskmelon, was cut and not told apart; none was looked over',
    },
    {
      page: 'rain/',
      says: ['No ripe one was metered', /one pair of picking days straddled rain and differed/],
      never: ['°Brix for'],
      why: 'S4 of dry days was sweeter than S2 after the soaking of 19 August; S2 was the same as S1 of dry days',
    },
  ],
  'ten-unblocked': [
    {
      page: '',
      says: ['20 plants in 10 mounds', '4 varieties', /27 fruits, 100(\.4)? kg/, /9 Aug 2025: Sixpenny Bell/],
      why: 'pickings',
    },
    {
      page: 'yield/',
      says: [/27 fruits, 100(\.4)? kg/, /Sound fruits 25/, /Sound mass, kg (93|92\.9)/],
      why: '15.6 + 14 + 9.3 + 14.7 + 7.8 + 6.8 + 9 + 9.6 + 5.9 + 7.7 kg',
    },
    {
      page: 'yield/',
      says: [/Sixpenny Bell 2 4 7 (14|13\.7) dots only/, /Wick and Tar 1 2 1 7\.7 dots only/, 'Too few to say'],
      why: 'two mounds and one mound are too few',
    },
    {
      page: 'yield/',
      says: ['Sixpenny Bell: 2 mounds', 'Wick and Tar: one mound', 'Places were chosen'],
      never: [/Sixpenny Bell gave more/, /Wick and Tar gave more/, /Tar \d\.\d (less|more)/, /Bell \d\.\d (less|more)/],
      why: 'placed: chosen; no difference from a variety without three mounds',
    },
    {
      page: 'yield/',
      says: [/Harrow Red,? ?yardstick 4 8 11/, /Pale Ferry 2\.5 less/],
      why: 'sound kg a plant: 7.8, 5.05, 7.35, 4.5, mean 6.175; 4.65, 3.4, 3, mean 3.683; 2.49 apart',
    },
    { page: 'yield/', says: [/L9 .*L10 /], never: [/L10 .*L9 /], why: 'ten comes after nine' },
    { page: 'variety/wick-and-tar/', says: ['one fruit', '7.7 kg', '105 days'], why: '31 May to 13 September' },
    {
      page: 'maturity/',
      says: [/Harrow Red 16 Aug 6 Sept 86 90 from sowing/, /Wick and Tar 13 Sept 13 Sept 105/],
      never: ['From set to ripe', 'middle last'],
      why: '22 May to 16 August, 31 May to 13 September; pickings alone tell first and last',
    },
    {
      page: 'ripe/',
      says: [
        'No cut is written down yet',
        /watermelons show\?.*None is cut yet/,
        'One word of what the knife found',
        'Who looks for these signs',
      ],
      never: [/\d in 10/, /of ten (un)?ripe/, 'Kept here', 'muskmelons show'],
      why: 'pickings alone, of watermelons',
    },
    { page: 'rain/', says: ['nobody can say'], why: 'no meter and no gauge' },
  ],
  southern: [
    {
      page: '',
      says: [
        '2025/26',
        '12 plants in 6 mounds',
        /13 fruits, (51|50\.7) kg/,
        /Petrel Back from S2/,
        '11.4 °Brix',
        'no hot day',
      ],
      why: 'S2-1 is the only fruit liked very much; never 30 °C before 14 March',
    },
    {
      page: '',
      says: [/7 Feb 2026: Tin Roof, from S1, 84 days/],
      why: '15 November to 7 February over New Year: 15 + 31 + 31 + 7',
    },
    { page: 'yield/', says: ['2025/26', /Sound fruits 12/, '2024/25'], never: ['2025-26'], why: 'one of 13 split' },
    {
      page: 'yield/2024-25/',
      says: ['What did we get in 2024/25?', /11 fruits, 41(\.0)? kg/],
      why: '9.1 + 9.8 + 13.1 + 9 kg',
    },
    {
      page: 'weather/',
      says: [/warmest of 8/, /driest of 8/, /Rain, mm 156/, 'Every day of the 151 was read'],
      why: '156.4 mm from 15 October to 14 March, and 215.8 or more in the seven summers before; 19.24 °C, and 19.08 or less',
    },
    {
      page: 'weather/2024-25/',
      says: [/second coolest of 7/, /second wettest of 7/],
      never: [/30 °C\).*Hot days 0\b/],
      why: '439.7 mm, after 514.2 in 2020/21; 16.96 °C, above 16.84 in 2023/24; the warmest day had 29.8 °C, so it was no 30',
    },
    {
      page: 'variety/tin-roof/',
      says: ['9.1 to 10.2', '82 days from planting out', '84 days'],
      why: '10.2, 9.1 and 9.6 °Brix',
    },
    { page: 'records/', says: ['2024/25'], why: 'seasons carry their label' },
    {
      page: 'maturity/',
      says: [
        /Petrel Back 5 of 8 38 about 43 about 47 4 3/,
        /Tin Roof 6 of 6 41 about 44 48 4 3/,
        /Tin Roof 7 Feb 7 Mar 84/,
      ],
      why: 'Petrel Back 38, 42, 43 and about 47 days over New Year, one lost, one split, one of the season’s end; Tin Roof 41, 43, 44, 48',
    },
    {
      page: 'ripe/',
      says: [
        /watermelons show\?.*4 fruits cut, none of them unripe/,
        'Kept here: little',
        'The signs of a fruit, written down on the vine',
        'Who looks for these signs',
      ],
      never: [/No cut is written/, /\d in 10/, /of ten (un)?ripe/],
      why: 'S1-1, S2-1 and I2-1 prime, S3-1 just ripe; the other nine were not cut; none was looked over',
    },
    {
      page: 'rain/',
      says: ['Too few rains', '4 fruits on 3 days of picking, one spell of rain'],
      never: [/\d °Brix for 10/],
      why: 'one season; 33.2 mm of the morning of 12 February before the picking of the 14th, no rain before the 7th and the 21st',
    },
  ],
  'us-letter': [
    {
      page: '',
      says: ['18 plants in 6 mounds', /14 fruits, (195|194\.5) lb/, '45 hot days', /7\.7 in/, 'May 18'],
      why: 'sums of the files',
    },
    {
      page: 'yield/',
      says: [/14 fruits, (195|194\.5) lb/, /Switchyard,? ?yardstick 3 9 6 (128|127\.5)/, 'lb a plant', 'ft²'],
      why: '43.5 + 39.5 + 44.5 = 127.5 lb, of three mounds of three plants',
    },
    { page: 'yield/2024/', says: [/10 fruits, 119 lb/, /Sound fruits 9/], why: '61.5 + 33 + 24.5 lb; one not sound' },
    { page: 'yield/2024/', never: [/A1 Switchyard 3 3 3 62/], why: '61.5 lb was written down, to the half pound' },
    {
      page: 'weather/',
      says: [
        '45 hot days',
        '90 °F',
        '55 °F',
        /0\.8/,
        /7\.7 in/,
        /Jul 2\b/,
        'base 50',
        'cap 86 °F',
        'No place among the years',
      ],
      why: '45 days at 90 °F or more to August 27; 1.45 in on July 2; two years of readings are too few to rank',
    },
    {
      page: 'weather/2024/',
      says: ['14 hot days', /Cool nights 33/, /17(\.3)? in/],
      why: '17.26 in; 33 nights under 55 °F',
    },
    {
      page: 'variety/switchyard/',
      says: [/heaviest/],
      never: [/to 17\.6 27 /],
      why: '26.5 lb was written down, to the half pound',
    },
    { page: 'variety/caboose/', says: ['Jul 30', '73 days', '9.5 to 11.0'], why: 'May 18 to July 30' },
    {
      page: 'maturity/',
      says: [/Little Caboose Jul 30 Aug 20 73/, '74 from planting out', /Switchyard Aug 13 Aug 27 87/],
      why: 'May 18 to July 30 and to August 13',
    },
    {
      page: 'ripe/',
      says: [
        /watermelons show\?.*4 fruits cut, none of them unripe/,
        'Kept here: little',
        'The signs of a fruit, written down on the vine',
      ],
      never: [/No cut is written/, /\d in 10/, /of ten (un)?ripe/],
      why: 'A1-1, A2-1 and B2-1 prime, A3-1 just ripe; none was looked over',
    },
    {
      page: 'rain/',
      says: ['Too few pickings in dry weather', '4 fruits on 4 days of picking, 3 spells of rain'],
      why: '0.51, 0.25 and 0.39 in before three of four picking days: 13, 6 and 10 mm',
    },
  ],
  'one-crop': [
    {
      page: '',
      says: ['6 plants in 6 mounds', /12 fruits, 66(\.2)? kg/, /20 Sept 2025: Tallow Face, from F2, 117 days/],
      why: '26 May to 20 September',
    },
    { page: '', says: ['Heaviest fruit', /Beadle from F5/, '10.2 kg'], why: 'F5-1; nothing was tasted' },
    { page: '', never: ['0 hot days'], why: 'ten days of June were not read, and none is said in words' },
    {
      page: 'yield/',
      says: ['What did each lantern gourd variety give?', /Sound fruits 11/, /12 fruits, 66/],
      why: 'one of 12 rotten',
    },
    { page: 'variety/', says: ['Lantern gourds', 'Beadle', 'Tallow Face'], why: 'crops/lantern-gourd.yaml' },
    {
      page: 'variety/beadle/',
      says: ['Lantern gourd', /5 fruits, 39 kg/, '124 days'],
      why: '14.5 + 14.3 + 10.2 = 39 kg',
    },
    { page: 'weather/', says: ['210 mm', 'Temperature not read: 20 Jun to 29 Jun'], why: '209.9 mm to 18 October' },
    {
      page: 'maturity/',
      says: [/Beadle 27 Sept 4 Oct 124/, /Tallow Face 20 Sept 4 Oct 117/, '110 from sowing'],
      why: '26 May to 27 and to 20 September; fruits of the frost were not called ripe',
    },
    {
      page: 'ripe/',
      says: ['Nothing with signs of its own is grown here yet', 'One word of what the knife found'],
      never: [/Pocket card/i, /in the order of looking/i, /fruits? cut/, 'Kept here'],
      why: 'crops/lantern-gourd.yaml names no sign, and nothing was cut',
    },
    { page: 'rain/', says: ['nobody can say yet'], why: 'a gauge, but nothing was metered or tasted' },
  ],
};
