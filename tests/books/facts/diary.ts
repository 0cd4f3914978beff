import type { Fact } from '../garden-facts.ts';

const fact = (why: string, says: Fact['says'], never: Fact['never'] = []): Fact => ({
  page: 'diary/',
  says: says ?? [],
  never: never ?? [],
  why,
});

export const DIARY_FACTS: Readonly<Record<string, readonly Fact[]>> = {
  'day-zero': [
    fact('five plantings on three days and nothing picked', [
      'seed was sown from 18 Apr and plants went out from 16 May',
      /16 May Planted out 4 plants in M1, M2/,
      /23 May Planted out 2 plants in T1, T2/,
    ], [/[Pp]icked \d/, 'picking was']),
  ],
  'eight-plants': [
    fact('set from 29 June, picked 8 August to 7 September, by the register', [
      'fruit set from 29 Jun',
      'the picking was from 8 Aug to 7 Sept',
      /26 Aug .{0,40}lost to animals in E4/,
    ]),
  ],
  'notebook-years': [
    fact('pickings alone; a month stands as a month', [/In 2024 plants went out from 25 May/, 'Earlier: 2023, 2022']),
  ],
  'no-instruments': [
    fact('words for the rain stand beside the day', ['In 2025 plants went out from 24 May', /none|some|soaking/]),
  ],
  'ten-unblocked': [fact('picked 9 August to 13 September', ['the picking was from 9 Aug to 13 Sept'])],
  southern: [
    fact('over New Year', [
      'In 2025/26 seed was sown from 18 Oct and plants went out from 15 Nov',
      'the picking was from 7 Feb to 14 Mar',
    ]),
  ],
  'us-letter': [fact('month first, and the thermometer in Fahrenheit', ['plants went out from May 18', 'highest, °F'])],
  'one-crop': [fact('picked 20 September to 11 October', ['the picking was from 20 Sept to 11 Oct'])],
};
