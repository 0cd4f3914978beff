import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { Facts, QuestionChapter } from '../../src/book/chapter.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import { cropModels } from './crop-model.ts';
import { bitterSpots, markedFruits } from './marked-fruit.ts';
import { CLASSES, savedLots } from './saved-lot.ts';
import { type SeedVariety, seedSeason, seedVarieties, type Worth } from './seed-variety.ts';
import { lotsTable, varietiesTable } from './tables.ts';

/** Packets a community's page holds; a home's holds one. */
const MOST_PACKETS = 4;
const KEEPABLE: readonly Worth[] = ['closed', 'alone', 'itself', 'close-first'];

/** Which seed to keep? What comes true, what it crossed with, which fruit and how many plants, and a packet to write on. */
export const seed: QuestionChapter = {
  kind: 'question',
  id: 'seed',
  write(facts) {
    const season = seedSeason(facts);
    const crops = cropModels(facts);
    const varieties = seedVarieties(facts);
    const lots = savedLots(facts);
    const namesOf = (...worth: readonly Worth[]): string[] =>
      varieties.filter((one) => worth.includes(one.worth)).map(({ name }) => name);
    const keepable = namesOf(...KEEPABLE).length > 0;
    const few = varieties.filter((one) => KEEPABLE.includes(one.worth) && hasTooFewPlants(one));
    return [
      {
        path: 'seed/',
        chapter: 'seed',
        template: 'seed/index.njk',
        title: 'Which seed to keep?',
        finding: 'seed/finding.njk',
        level: levelOf(facts, varieties),
        model: {
          season: season?.label ?? null,
          varieties,
          alone: namesOf('alone'),
          closed: namesOf('closed'),
          itself: namesOf('itself'),
          close_first: namesOf('close-first'),
          trial: namesOf('trial'),
          hybrids: namesOf('none'),
          keepable,
          others_told: namesOf('none').length > 0 || (namesOf('trial').length > 0 && keepable),
          few,
          few_names: few.map(({ name }) => name),
          crops,
          soonest: crops.flatMap(({ soonest }) => soonest ?? []),
          cleanings: crops.filter(({ cleaning }) => cleaning !== null),
          // A garden of one crop need not hear of others.
          crossing: crops.length > 1 ? crops.filter(({ crosses }) => crosses !== null) : [],
          cites: [...new Set(crops.flatMap(({ cites }) => cites))],
          told: crops.filter(({ seed: told }) => told),
          uncited: crops.filter(({ seed: told }) => !told).map(({ names }) => names.many),
          ...flowersOf(facts),
          marked: season ? markedFruits(season) : [],
          bitter: season ? bitterSpots(season) : [],
          lots,
          packets: packetsOf(facts, varieties),
          classes: CLASSES,
        },
        charts: [],
        tables: [varietiesTable(varieties), lotsTable(lots)].filter(({ rows }) => rows.length > 0),
        figures: [...varieties.map(({ plants }) => plants), ...lots.map(({ came_up }) => came_up)],
        cautions: cautionsAt(facts.reference, 'seed'),
        listed: true,
      },
    ];
  },
};

const hasTooFewPlants = ({ plants, parents }: SeedVariety): boolean =>
  plants.value !== null && parents !== null && plants.value < parents.low;

/** How a flower is closed hangs on how its crop flowers. */
function flowersOf({ ledger }: Facts): { readonly closes_apart: boolean; readonly closes_together: boolean } {
  const sexes = ledger.years.map(({ crop }) => crop.flowering?.sexes ?? 'apart');
  return { closes_apart: sexes.length === 0 || sexes.includes('apart'), closes_together: sexes.includes('together') };
}

interface Packet {
  /** Null to be written in, as are the others. */
  readonly variety: string | null;
  readonly crop: string | null;
  readonly season: string | null;
  readonly plants: SeedVariety['plants'] | null;
  readonly by_hand: boolean;
}

/** The surest seed first; a blank one where nothing of the season may be kept. */
function packetsOf(facts: Facts, varieties: readonly SeedVariety[]): Packet[] {
  const season = seedSeason(facts)?.label ?? null;
  const told = KEEPABLE.flatMap((worth) => varieties.filter((one) => one.worth === worth)).map(
    ({ name, crop, plants, worth }) => ({
      variety: name,
      crop: crop.one,
      season,
      plants,
      by_hand: worth === 'closed',
    }),
  );
  const blank = { variety: null, crop: null, season, plants: null, by_hand: false };
  const most = facts.garden.about.edition === 'home' ? 1 : MOST_PACKETS;
  return told.length > 0 ? told.slice(0, most) : [blank];
}

/** Whether its seed comes true, then a flower closed or a fruit marked, then a lot of one's own that was tested. */
function levelOf({ garden }: Facts, varieties: readonly SeedVariety[]): RecordLevel {
  const fruits = garden.seasons.flatMap(({ plantings }) => plantings.flatMap((planting) => planting.fruits));
  const closed = garden.seasons.some(({ events }) => events.flowering.some(({ what }) => what === 'closed-for-seed'));
  return recordLevel('little', {
    little: varieties.some(({ seed, plants }) => seed !== 'unknown' && plants.value !== null),
    some: closed || fruits.some(({ cut }) => cut !== null && cut.keep_seed !== null),
    full: garden.lots.some(({ from, tests }) => from === 'saved' && (tests ?? []).length > 0),
  });
}
