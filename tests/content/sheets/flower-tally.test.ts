import { expect, test } from 'vitest';
import { flowerTally } from '../../../content/sheets/flower-tally.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { planting, smallGarden } from '../../ledger/small-garden.ts';

const reference = loadReference('data/reference');
const sheet = flowerTally(bookOf({ reference }, smallGarden({ plantings: planting('P1', 'S1') }), null).facts);

test('the tally has a column for all that a flower’s entry may tell, and the words to circle', () => {
  expect(sheet.columns.map(({ key }) => key)).toEqual([
    'seen_on',
    'planting',
    'what',
    'tag',
    'flowers',
    'took',
    'insects',
  ]);
  expect(sheet.columns[2]?.words.map(({ word }) => word)).toContain('closed-for-seed');
});

test('it is written on beside open flowers, so stings are warned of', () => expect(sheet.cautions).toContain('stings'));
