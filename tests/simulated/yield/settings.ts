import type { Bearing, YieldSetting } from './setting.ts';

const MEANS = { low: 7, high: 11 };
const EVEN: Bearing = { measure: 'sound_kg', error: 'normal', sd_kg: 1.1, block_reach_kg: 1.5 };

/** Gardens under which the chain from records to printed ranges is judged. */
export const YIELD_SETTINGS: readonly YieldSetting[] = [
  {
    name: '3 complete blocks of 4',
    model: 'right',
    design: { blocks: ['ABCD', 'ABCD', 'ABCD'] },
    means: MEANS,
    bearing: EVEN,
    written_in: 'fruits',
  },
  {
    name: '3 complete blocks of 8',
    model: 'right',
    design: { blocks: ['ABCDEFGH', 'ABCDEFGH', 'ABCDEFGH'] },
    means: MEANS,
    bearing: EVEN,
    written_in: 'pickings',
  },
  {
    name: '4 blocks with gaps',
    model: 'right',
    design: { blocks: ['ABCD', 'ABCE', 'ABDE', 'CDE'] },
    // Blocks so unlike that a mean not adjusted for them misses the truth.
    means: { low: 10, high: 14 },
    bearing: { ...EVEN, block_reach_kg: 4 },
    written_in: 'fruits',
  },
  {
    name: 'no blocks, 3 to 6 mounds',
    model: 'right',
    design: { unblocked: 'AAABBBBCCCCCDDDDDD' },
    means: MEANS,
    bearing: EVEN,
    written_in: 'pickings',
  },
  {
    name: 'no blocks, 2 varieties of 3',
    model: 'right',
    design: { unblocked: 'AAABBB' },
    means: MEANS,
    bearing: EVEN,
    written_in: 'fruits',
  },
  {
    name: 'counts of fruits',
    model: 'broken',
    design: { unblocked: 'AAAABBBBCCCC' },
    means: { low: 1.5, high: 4 },
    bearing: { measure: 'sound_fruits' },
    written_in: 'pickings',
  },
  {
    name: 'skewed',
    model: 'broken',
    design: { unblocked: 'AAABBBCCCDDD' },
    means: MEANS,
    bearing: { measure: 'sound_kg', error: 'skewed', sd_kg: 2.5, block_reach_kg: 0 },
    written_in: 'fruits',
  },
  {
    name: 'unequal spread, 1 to 3',
    model: 'broken',
    design: { blocks: ['ABCD', 'ABCD', 'ABCD'] },
    means: MEANS,
    bearing: { measure: 'sound_kg', error: 'normal', sd_kg: [0.4, 0.6, 0.9, 1.2], block_reach_kg: 1.5 },
    written_in: 'fruits',
  },
];
