import type { Facts } from '../../src/book/chapter.ts';
import type { Fruit, Garden, Season } from '../../src/garden/garden.ts';
import { lastPlanted } from '../../src/garden/last-planted.ts';
import { ownStation } from '../../src/garden/own-station.ts';

/** Questions of the book that a record bears on, most first, of equals the simpler record first: a judgement of the makers, no source. */
const ANSWERS = {
  harvest: ['yield', 'variety', 'ripe-when'],
  'set-days': ['ripe-when', 'is-ripe', 'thinning'],
  rain: ['rain-sugar', 'water', 'weather'],
  'looked-cuts': ['is-ripe', 'sweet'],
  'tagged-flowers': ['did-set', 'pollinate'],
  germination: ['seeds-to-sow', 'seed'],
  feeding: ['how-much-feed', 'nitrogen-stop'],
  waterings: ['water'],
  scouting: ['trouble'],
} as const satisfies Record<string, readonly string[]>;

export type RecordName = keyof typeof ANSWERS;

export interface MissingRecord {
  readonly record: RecordName;
  readonly answers: readonly string[];
}

/**
 * What the last planted season did not write down, that which bears on most questions first. Seed counts whenever it
 * was tested. Before the first season everything is missing.
 */
export function missingRecords({ garden }: Facts): MissingRecord[] {
  const season = lastPlanted(garden);
  return (Object.keys(ANSWERS) as RecordName[])
    .filter((record) => !isKept(record, season, garden))
    .map((record) => ({ record, answers: ANSWERS[record] }));
}

function isKept(record: RecordName, season: Season | null, garden: Garden): boolean {
  if (record === 'germination') return hasGermination(garden);
  return season !== null && KEPT[record](season, garden);
}

const fruitsOf = ({ plantings }: Season): Fruit[] => plantings.flatMap(({ fruits }) => fruits);

const KEPT: Readonly<Record<Exclude<RecordName, 'germination'>, (season: Season, garden: Garden) => boolean>> = {
  harvest: (season) =>
    season.plantings.some(({ pickings }) => pickings.length > 0) || fruitsOf(season).some(({ pick }) => pick !== null),
  'set-days': (season) => fruitsOf(season).some(({ set }) => set !== null && set.set_on !== null),
  'looked-cuts': (season) => {
    const looked = new Set(season.visits.flatMap(({ fruits }) => fruits.map(({ fruit }) => fruit)));
    return fruitsOf(season).some(({ id, cut }) => cut !== null && cut.state !== null && looked.has(id));
  },
  rain: hasRain,
  'tagged-flowers': ({ events }) =>
    events.flowering.some(({ what }) => what === 'tagged' || what === 'hand-pollinated'),
  feeding: ({ events }) => events.feeding.length > 0,
  waterings: ({ events }) => events.waterings.length > 0,
  scouting: ({ events }) => events.scouting.length > 0,
};

/** A number on a day of the season; words alone are no gauge. */
function hasRain({ starts_on, ends_on }: Season, garden: Garden): boolean {
  const days = ownStation(garden)?.days ?? [];
  return days.some(({ date, rain_mm }) => date >= starts_on && date <= ends_on && rain_mm !== null);
}

const hasGermination = ({ lots, seasons }: Garden): boolean =>
  lots.some(({ tests }) => (tests ?? []).length > 0) ||
  seasons.some(({ events }) => events.sowings.some(({ emerged }) => emerged !== null));
