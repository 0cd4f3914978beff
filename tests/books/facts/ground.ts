import type { Fact } from '../garden-facts.ts';

/**
 * A cap 90 cm across and 25 high is π · 0.25 · (3 · 0.45² + 0.25²) / 6 = 0.0877 m³, 1.03 barrows of 85 litres. Compost of
 * 1 to 2.5 parts nitrogen in 100, 10 to 15 of 100 of it in the first year, 0.5 to 0.95 kg a litre, for 8 to 16.8 g a m²:
 * from 8 / (0.025 · 0.15) / 0.95 = 2.25 to 16.8 / (0.01 · 0.1) / 0.5 = 33.6 litres a m² (g and kg in step).
 */
const MOUND = 'Heap a mound 90 cm across and 25 high: 88 litres of earth, 1.0 barrows';

const fact = (why: string, says: Fact['says'], never: Fact['never'] = []): Fact => ({
  page: 'ground/',
  says: ['Ground that lets water go, and room', ...(says ?? [])],
  never,
  why,
});

/** No raw manure is written down. */
const unmanured = (why: string, says: Fact['says'], never: Fact['never'] = []): Fact =>
  fact(why, [/No raw or dried manure is written down for 20/, ...(says ?? [])], [/pick nothing before/, ...(never ?? [])]);

export const GROUND_FACTS: Readonly<Record<string, readonly Fact[]>> = {
  'day-zero': [
    unmanured('three mounds of 2.5 m² with two plants each, 1.25 m² a plant; no feeding.yaml; 2.5 times 2.25 and 33.6', [
      'of muskmelons 0.5 to 1.7 m², of watermelons 0.9 to 2.2 m²',
      'None of ours stood closer',
      'Ready by 16 May',
      MOUND,
      '6 to 84 litres on 2.5 m² (up to 1.0 barrows)',
      'No raw or dried manure is written down for 2026',
      'After any, picking waits 120 days',
    ]),
  ],
  'eight-plants': [
    unmanured('12 m² among four mounds: 3 m², two plants each; 3 times 2.25 and 33.6; out on 18 May', [
      MOUND,
      'None of ours stood closer',
      'Ready by 18 May',
      '7 to 101 litres on 3.0 m² (up to 1.2 barrows)',
    ]),
  ],
  'notebook-years': [
    unmanured(
      'two rows and a bed, none measured: a ridge 1 m long, 0.6 wide and 0.25 high is half of 0.15 m³; 2.25 and 33.6 on one m²',
      ['Heap a row 100 × 60 cm and 25 high: 75 litres of earth, 0.9 barrows', '2 to 34 litres on 1.0 m²'],
      ['bowl', /stood closer/],
    ),
  ],
  'no-instruments': [
    unmanured(
      'two beds and a tub, none measured: 1 m² 15 cm high is 150 litres, 1.76 barrows',
      ['Fill a bed 100 × 100 cm and 15 high: 150 litres of earth, 1.8 barrows', '2 to 34 litres on 1.0 m²'],
      ['bowl', /stood closer/],
    ),
  ],
  'ten-unblocked': [
    fact(
      '40 m² among ten mounds: 4 m²; one plant at 2.2 m², four at 0.9; 4 times 2.25 and 33.6; 120 days from 16 November are 14 + 31 + 31 + 28 + 16',
      [
        MOUND,
        'None of ours stood closer in 2025',
        /L10 watermelons 4\.0 2 1 to 4/,
        '9 to 134 litres on our average spot of 4.0 m² (up to 1.6 barrows)',
        'Raw manure of 16 Nov 2024 on every spot: pick nothing before 16 Mar 2025 (120 days); that day has passed.',
      ],
      ['No raw or dried manure'],
    ),
  ],
  southern: [
    unmanured(
      '18 m² among three mounds: 6 m²; planted out on 15 November; 6 times 2.25 and 33.6',
      [
        MOUND,
        'None of ours stood closer in 2025/26',
        'Ready by 15 Nov',
        '13 to 202 litres on our average spot of 6.0 m² (up to 2.4 barrows)',
        'for 2025/26',
      ],
      ['Ready by 15 May'],
    ),
  ],
  'us-letter': [
    unmanured(
      '150 ft² among three mounds: 50 ft² or 4.645 m²; 87.7 litres are 23 gallons; 10.4 and 156 litres are 3 and 41 gallons',
      [
        'Heap a mound 35 in across and 10 high: 23 gallons of earth, 1.0 barrows',
        /A1, A2, A3, B1, B2, B3 watermelons 50 3 2 to 5/,
        '3 to 41 gallons on our average spot of 50 ft² (up to 1.8 barrows)',
        'Fill a hole 18 in deep',
      ],
      [/litres/],
    ),
  ],
  'one-crop': [
    unmanured(
      'the crop’s own file gives neither room nor feeding; 48 m² among six mounds, 3 cm of compost on 8 m² are 240 litres',
      [
        'How much room lantern gourds need, no source here says',
        'How much lantern gourds want, no source here says',
        '240 litres on 8.0 m²',
        /F6 lantern gourds 8\.0 1 nobody says/,
      ],
      [/stood closer/, 'hold all the nitrogen'],
    ),
  ],
};
