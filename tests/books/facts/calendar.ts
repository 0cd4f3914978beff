import type { Fact } from '../garden-facts.ts';

const fact = (why: string, says: Fact['says'], never: Fact['never'] = []): Fact => ({
  page: 'calendar/',
  says: says ?? [],
  never: never ?? [],
  why,
});

export const CALENDAR_FACTS: Readonly<Record<string, readonly Fact[]>> = {
  'day-zero': [
    fact('85 days from 16 May are 9 August, and its file’s season ends 110 days after, on 3 September', [
      'pick 9 Aug to 3 Sept',
      'These are the dates of 2026',
      /For muskmelons nobody’s dates are in this book yet for: feed for leaf, fruit sets, pick/,
    ]),
  ],
  'eight-plants': [
    fact('first ripe 8 August, last 7 September; Thatch Penny 12 to 21 August', [
      'plant out 18 May, pick 8 Aug to 7 Sept',
      'plant out 25 May, pick 12 to 21 Aug',
    ]),
  ],
  'notebook-years': [
    fact('three years of planting days, put into the next', [
      'plant out 20 May to 1 Jun',
      'These are the usual dates, put into 2025',
    ]),
  ],
  'no-instruments': [fact('S1 on 10 August to S4 on 30 August', ['plant out 24 May, pick 10 to 30 Aug'])],
  'ten-unblocked': [
    fact('82 days (9 August less 24 May, the usual day less two) to 105, counted from 24 May', [
      /pick 9 Aug to/,
      'Plant out: 22 to 31 May (10 plantings this season)',
      'common practice, no source',
    ]),
  ],
  southern: [
    fact('over New Year, 84 to 112 days from 15 November', [
      'sow 18 Oct, plant out 15 Nov, pick 7 Feb to 7 Mar',
      'These are the dates of 2025/26',
      '12 to 16 weeks after planting out',
    ]),
  ],
  'us-letter': [fact('the month first', ['sow Apr 20, plant out May 18', /pick Jul 30 to Aug 27/])],
  'one-crop': [
    fact('26 May to 20 September are 117 days; its file tells nothing of set', [
      'plant out 26 May, pick 20 Sept to 4 Oct',
      /For lantern gourds nobody’s dates are in this book yet for: feed for leaf, fruit sets/,
    ]),
  ],
};
