import { isOneDay } from '../../dated.ts';
import type { Fruit, Planting, Season } from '../../garden/garden.ts';
import type { TraitId } from './trait.ts';
import type { TraitValue } from './trait-value.ts';

/** The words of a ladder, the least first: the first counts as 1. */
const LADDERS = {
  sweet: ['flat', 'faint', 'sweet', 'very-sweet'],
  crisp: ['mushy', 'soft', 'firm', 'crisp'],
  juicy: ['dry', 'moist', 'juicy', 'running'],
  liked: ['no', 'so-so', 'yes', 'very'],
  size: ['small', 'middling', 'big'],
  looks: ['poor', 'plain', 'good', 'handsome'],
} as const;

/**
 * What single fruits tell of their variety. Taste and sugar count of ripe fruits alone (found just ripe or prime when
 * cut): an unripe one says nothing of the variety. Mass, size and looks count of every fruit picked;
 * a mass of 0 is none.
 */
export function fruitValues({ slug }: Season, planting: Planting): TraitValue[] {
  return planting.fruits
    .filter(({ fate }) => fate === 'picked')
    .flatMap((fruit) => {
      const on = fruit.pick?.picked_on;
      const day = on && isOneDay(on) ? on.first : null;
      return toldOf(fruit).map(({ trait, value }) => ({
        trait,
        value,
        variety: planting.variety?.id ?? '',
        season: slug,
        block: planting.block,
        spot: planting.spot.id,
        day,
        key: fruit.key,
      }));
    });
}

function toldOf({ pick, cut }: Fruit): { trait: TraitId; value: number }[] {
  const ripe = cut?.state === 'just-ripe' || cut?.state === 'prime' ? cut : null;
  const told: readonly (readonly [TraitId, number | null])[] = [
    ['mass_kg', pick?.mass_kg || null],
    ['size', rung(LADDERS.size, pick?.size ?? null)],
    ['looks', rung(LADDERS.looks, pick?.looks ?? null)],
    ['brix', ripe?.brix_centre ?? null],
    ['sweet', rung(LADDERS.sweet, ripe?.sweet ?? null)],
    ['crisp', rung(LADDERS.crisp, ripe?.crisp ?? null)],
    ['juicy', rung(LADDERS.juicy, ripe?.juicy ?? null)],
    ['liked', rung(LADDERS.liked, ripe?.liked ?? null)],
  ];
  return told.flatMap(([trait, value]) => (value === null ? [] : [{ trait, value }]));
}

const rung = (ladder: readonly string[], word: string | null): number | null =>
  word === null ? null : ladder.indexOf(word) + 1;
