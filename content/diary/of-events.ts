import type { EventKind, Events } from '../../src/garden/event.ts';
import type { Lot, Season, Variety } from '../../src/garden/garden.ts';
import type { MaterialId } from '../../src/records/material-id.ts';
import { type Entry, entry } from './entry.ts';

/** What a name in an entry is looked up in. */
export interface Names {
  readonly varieties: readonly Variety[];
  readonly lots: readonly Lot[];
  /** The name of what was put on the ground, by its id. */
  readonly material: (id: MaterialId) => string;
}

type Tellers = { readonly [K in EventKind]: (event: Events[K][number], season: Season, names: Names) => Entry[] };

const spotOf = ({ plantings }: Season, id: string | null): string[] =>
  plantings.filter((planting) => planting.id === id).map(({ spot }) => spot.id);

const TELL: Tellers = {
  sowings: ({ sown_on, emerged_on, seeds, emerged, lot, variety, planting }, { plantings }, { varieties, lots }) => {
    const own = plantings.find(({ id }) => id === planting)?.variety?.id;
    const id = variety ?? lots.find((one) => one.id === lot)?.variety ?? own;
    const names = varieties.filter((one) => one.id === id).map(({ name }) => name);
    return [
      entry({ lane: 'sown', code: 'sown', date: sown_on, count: seeds, names }),
      ...(emerged_on ? [entry({ lane: 'sown', code: 'came-up', date: emerged_on, count: emerged, names })] : []),
    ];
  },
  mulching: ({ laid_on, spots, work, material }) => [
    entry({
      lane: 'ground',
      code: `mulch-${work ?? 'laid'}`,
      word: material,
      date: laid_on,
      names: spots ?? [],
    }),
  ],
  feeding: ({ given_on, spots, material, mass_kg, volume_l, barrows, cups, roughly }, _season, names) => [
    entry({
      lane: 'ground',
      code: 'fed',
      word: names.material(material),
      date: given_on,
      names: spots ?? [],
      more: { mass_kg, volume_l, barrows, cups, roughly },
    }),
  ],
  waterings: ({ watered_on, spots }) => [
    entry({ lane: 'watered', code: 'watered', date: watered_on, names: spots ?? [] }),
  ],
  soil: ({ felt_on, spots }) => [entry({ lane: 'watered', code: 'felt', date: felt_on, names: spots ?? [] })],
  dips: ({ dipped_on }) => [entry({ lane: 'watered', code: 'dipped', date: dipped_on })],
  flowering: ({ seen_on, planting, what, flowers, took, insects }, season) => [
    entry({
      lane: 'flowers',
      code: what,
      date: seen_on,
      count: what === 'insects-counted' ? insects : flowers,
      names: spotOf(season, planting),
      more: { took },
    }),
  ],
  girths: ({ measured_on, fruit }) => [
    entry({ lane: 'looked', code: 'measured', date: measured_on, count: 1, names: [fruit] }),
  ],
  scouting: ({ looked_on, spots, found, what, checked, affected, severity }) => [
    entry({
      lane: 'looked',
      code: found === 'none' ? 'scouted-none' : 'scouted',
      word: what ?? found,
      date: looked_on,
      names: spots ?? [],
      more: { checked, affected, severity },
    }),
  ],
  keeping: ({ ended_on, fruit, ended }) => [
    entry({ lane: 'cut', code: `kept-${ended}`, date: ended_on, count: 1, names: [fruit] }),
  ],
  shares: ({ shared_on, to, fruits, mass_kg }) => [
    entry({ lane: 'cut', code: 'shared', word: to, date: shared_on, count: fruits, more: { mass_kg } }),
  ],
  tastings: ({ tasted_on, best_first, sweetest_first }) => {
    const ordered = [...(best_first ?? []), ...(sweetest_first ?? [])];
    const code = ordered.length > 0 ? 'tasted-in-order' : 'tasted';
    return [entry({ lane: 'cut', code, date: tasted_on, count: 1, names: ordered })];
  },
};

/** Everything of the season's diary files. */
export const eventEntries = (season: Season, names: Names): Entry[] =>
  (Object.keys(TELL) as EventKind[]).flatMap((kind) =>
    season.events[kind].flatMap((event) => TELL[kind](event as never, season, names)),
  );
