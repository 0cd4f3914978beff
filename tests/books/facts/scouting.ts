import type { Fact } from '../garden-facts.ts';

const NO_LOOK = 'No look is written down yet, so nobody knows what came or when.';

/** Most wrote down no look: nothing may be said of one. */
const fact = (why: string, says: readonly string[], never: Fact['never'] = []): Fact => ({
  page: 'scouting/',
  says: [NO_LOOK, '0 none, 1 or 2 trace', '9 dead', ...says],
  never: [/we looked on/, /at worst/, /rose from/, 'How bad it was', ...never],
  why: `no scouting.yaml; ${why}`,
});

export const SCOUTING_FACTS: Readonly<Record<string, readonly Fact[]>> = {
  'day-zero': [
    fact(
      'muskmelons in T1 and T2 on 23 May, watermelons in M1 and M2 on 16 May',
      ['muskmelons from 23 May, watermelons from 16 May', 'Known troubles:', 'Powdery mildew', 'Fruit blotch'],
      ['What could it be?'],
    ),
  ],
  'eight-plants': [
    {
      page: 'scouting/',
      says: [
        'In 2025 we looked on 3 days',
        'found slugs (at worst 9 of 9)',
        /Slugs ?, E3: fell from 9 to 0 between 30 May and 13 Jul/,
        'muskmelons from 25 May, watermelons from 18 May',
      ],
      never: [/mildew \(at worst/],
      why: 'slugs took one of E3 before 30 May; nothing on 13 July and 17 August; E4 out on 25 May, the others on 18 May',
    },
  ],
  'notebook-years': [
    fact('too little is kept, and the page needs little', ['Known troubles:', 'Too little is kept yet', 'scouting.yaml']),
  ],
  'no-instruments': [
    fact('the tub about 5 June, both beds on 24 May', ['muskmelons from 5 Jun, watermelons from 24 May']),
  ],
  'ten-unblocked': [
    fact(
      'the first mounds on 22 May; watermelons alone',
      ['watermelons from 22 May', 'What could it be?', 'Fruit blotch Oily'],
      ['muskmelon'],
    ),
  ],
  southern: [fact('all six mounds on 15 November', ['watermelons from 15 Nov', 'What could it be?'], ['muskmelon'])],
  'us-letter': [fact('all six mounds on May 18', ['watermelons from May 18', 'What could it be?'], ['muskmelon'])],
  'one-crop': [
    fact(
      'its own crop has no trouble in its file',
      ['lantern gourds from 26 May', 'Of lantern gourds no trouble is described here'],
      ['What could it be?', 'Known troubles:', 'Troubles:'],
    ),
  ],
};
