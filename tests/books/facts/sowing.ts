import type { Fact } from '../garden-facts.ts';

const fact = (why: string, says: Fact['says'], never: Fact['never'] = []): Fact => ({
  page: 'sowing/',
  says: says ?? [],
  never: never ?? [],
  why,
});

export const SOWING_FACTS: Readonly<Record<string, readonly Fact[]>> = {
  'day-zero': [
    fact('sown 18 and 20 April, 28 and 27 days before 16 and 17 May; the tubs’ sowing is not told', [
      /Sow watermelons 18 to 19 Apr, 4 weeks before planting out/,
      /Muskmelons go out: 23 May/,
      'Watermelons go out: 16 to 17 May',
    ]),
  ],
  'eight-plants': [
    fact('planted 18 and 25 May, the watermelons sown on 21 April, 27 days before', [
      'Sow watermelons 21 Apr, 4 weeks before planting out',
      'Muskmelons go out: 25 May',
    ]),
  ],
  'notebook-years': [
    fact('watermelons went out 20 May to 1 June in three years, and no day of sowing is told', [
      'Watermelons go out: 20 May to 1 Jun (as in our 3 seasons)',
      '3 to 5 weeks before planting out',
    ]),
  ],
  'no-instruments': [
    fact('two spots of watermelons on 24 May, the tub about 5 June', [
      'Watermelons go out: 24 May',
      'Muskmelons go out: 5 Jun',
    ]),
  ],
  'ten-unblocked': [
    fact('22 to 31 May, by ten plantings; sown 24 April to 4 May', [
      'Watermelons go out: 22 to 31 May (10 plantings this season)',
      '4 to 5 weeks before planting out',
    ]),
  ],
  southern: [
    fact('sown 18 October for 15 November: 28 days', [
      'Sow watermelons 18 Oct, 4 weeks before planting out',
      'Watermelons go out: 15 Nov',
    ]),
  ],
  'us-letter': [
    fact('sown 20 April for 18 May; 21.1 and 35 °C are 70 and 95 °F', [
      'Sow watermelons Apr 20',
      '70 to 95 °F',
      /Soil, °F 68 77 86 95/,
    ]),
  ],
  'one-crop': [
    fact(
      'sown 28 April for 26 May; its own crop file tells no warmth, no law and no days',
      ['Sow lantern gourds 28 Apr', 'nobody can say before ten of them were laid out damp'],
      [/days to come up/, '9-in-10', /United States/],
    ),
  ],
};
