import type { Dated } from '../../src/dated.ts';
import type { Fruit, Season } from '../../src/garden/garden.ts';
import { harvestOf } from '../../src/ledger/harvest.ts';
import { type Entry, entry } from './entry.ts';

/** Sowing, planting out, and what came off, as plantings and their fruits tell it. */
export const plantingEntries = ({ plantings, events }: Season): Entry[] =>
  plantings.flatMap((planting) => {
    const { sown_on, planted_on, plants_set, spot, variety, fruits, pickings } = planting;
    const names = [spot.id];
    const isTold = events.sowings.some((sowing) => sowing.sown_on.text === sown_on?.text);
    const byRegister = harvestOf(planting)?.from === 'register';
    return [
      ...(sown_on && !isTold
        ? [entry({ lane: 'sown', code: 'sown', date: sown_on, names: variety ? [variety.name] : [] })]
        : []),
      entry({ lane: 'planted', code: 'planted', date: planted_on, count: plants_set, names }),
      ...fruits.flatMap((fruit) => fruitEntries(fruit, names, byRegister)),
      ...(byRegister
        ? []
        : pickings.map(({ picked_on, count }) =>
            entry({ lane: 'picked', code: 'picked', date: picked_on, count, names }),
          )),
    ];
  });

/** A fruit's set, its end and its cut; its picking only where the register tells the harvest of its planting. */
function fruitEntries({ set, pick, cut, end, fate }: Fruit, names: readonly string[], byRegister: boolean): Entry[] {
  const one = (lane: Entry['lane'], code: string, date: Dated | null, word: string | null = null): Entry[] =>
    date ? [entry({ lane, code, word, date, count: 1, names })] : [];
  return [
    ...one('flowers', 'set', set?.set_on ?? null),
    ...(byRegister ? one('picked', 'picked', pick?.picked_on ?? null) : []),
    ...one('picked', 'gone', end?.ended_on ?? null, fate === 'lost' ? `lost-${end?.lost_to ?? 'unknown'}` : fate),
    ...one('cut', 'cut', cut?.cut_on ?? null),
  ];
}
