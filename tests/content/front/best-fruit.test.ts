import { expect, test } from 'vitest';
import { bestFruitOf } from '../../../content/front/best-fruit.ts';
import { planting, smallGarden } from '../../ledger/small-garden.ts';

/** Id and reason of the best of some fruits, each as its pick's keys and its cut's keys. */
const best = (fruits: Readonly<Record<string, readonly [pick: string, cut: string]>>): string | null => {
  const rows = Object.entries(fruits).map(
    ([id, [pick, cut]]) =>
      `- {id: ${id}, planting: P1, fate: picked, pick: {picked_on: 2025-08-10${pick && `, ${pick}`}}${cut && `, cut: {cut_on: 2025-08-10, ${cut}}`}}\n`,
  );
  const [season] = smallGarden({ plantings: planting('P1', 'S1'), fruits: rows.join('') }).seasons;
  const found = bestFruitOf(season?.plantings ?? []);
  return found && `${found.fruit.id} ${found.named_for}`;
};

test('best liked before sweeter, sweeter before heavier', () => {
  expect(best({ A: ['', 'liked: yes, brix_centre: 13'], B: ['', 'liked: very, brix_centre: 9'] })).toBe('B liked');
  expect(best({ A: ['', 'liked: very, brix_centre: 9'], B: ['', 'liked: very, brix_centre: 9.5'] })).toBe('B liked');
  expect(best({ A: ['mass_kg: 3', 'liked: very'], B: ['mass_kg: 4', 'liked: very'] })).toBe('B liked');
  expect(best({ A: ['', 'liked: very, sweet: sweet'], B: ['', 'liked: very, sweet: very-sweet'] })).toBe('B liked');
});

test('a fruit nobody tasted comes after any that was; what is not known after what is', () => {
  expect(best({ A: ['mass_kg: 9', ''], B: ['mass_kg: 2', 'liked: no'] })).toBe('B liked');
  expect(best({ A: ['', 'liked: very'], B: ['', 'liked: very, brix_centre: 8'] })).toBe('B liked');
});

test('without liking the sweetest, without any tasting the heaviest, without a scale none', () => {
  expect(best({ A: ['mass_kg: 9', ''], B: ['mass_kg: 2', 'brix_centre: 11'] })).toBe('B sugar');
  expect(best({ A: ['mass_kg: 9', ''], B: ['mass_kg: 2', ''] })).toBe('A mass');
  expect(best({ A: ['', ''] })).toBeNull();
});

test('a split fruit is not named, one whose condition nobody wrote is', () => {
  expect(best({ A: ['condition: split', 'liked: very'], B: ['', 'liked: yes'] })).toBe('B liked');
});

test('of equals the first by id, whatever their order', () => {
  expect(best({ B: ['', 'liked: yes'], A: ['', 'liked: yes'] })).toBe('A liked');
});
