import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { Facts, QuestionChapter } from '../../src/book/chapter.ts';
import { shortCites } from '../../src/book/cites.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import { whenLines } from '../../src/book/when-line.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { heapsOf } from './heaps.ts';
import { manureOf } from './manure.ts';
import { nitrogenOf } from './nitrogen.ts';
import { roomLines } from './room.ts';
import { heapsTable, manureTable, nitrogenTable, roomTable } from './tables.ts';

/** Depth of the hole that is filled with water, and whose advice that is. */
const HOLE = { deep_cm: 45, sources: ['uf-drainage'] };
const MANURE_RULE = ['ecfr-205-203'];

/** What ground? Drained, with room; how much earth a heap takes, how much compost, and how long raw manure waits. */
export const ground: QuestionChapter = {
  kind: 'question',
  id: 'ground',
  write(facts) {
    const { garden, ledger, reference } = facts;
    const { locale } = garden.about;
    const season = garden.seasons.at(-1) ?? null;
    const crops = ledger.years.map(({ crop }) => ({ names: cropNames(crop, locale), room: crop.room }));
    const room = roomLines(facts, season);
    const heaps = heapsOf(facts);
    const nitrogen = nitrogenOf(facts);
    const manure = manureOf(facts, season);
    const judged = room.filter(({ fits }) => fits !== null);
    const plantings = (lines: typeof room): number => lines.reduce((sum, { spots }) => sum + spots.length, 0);
    const dated = whenLines(ledger.years, 'plant-out', locale).flatMap(({ first }) => first ?? []);
    const cited = (of: readonly (readonly string[] | undefined)[]): string[] =>
      shortCites(
        reference,
        of.flatMap((sources) => sources ?? []),
      );
    const used = reference.materials.filter(({ id }) =>
      nitrogen.crops.some(({ materials }) => materials.some((line) => line.id === id)),
    );
    const cropSources = ledger.years.flatMap(({ crop }) => [crop.room?.sources, crop.feeding?.sources]);
    const materialSources = used.map(({ sources }) => sources);
    const tables = [
      ...(season ? [roomTable(room, season.label)] : []),
      heapsTable(heaps),
      nitrogenTable(nitrogen),
      manureTable(manure),
    ];
    return [
      {
        path: 'ground/',
        chapter: 'ground',
        template: 'ground/index.njk',
        title: 'What ground?',
        finding: 'ground/finding.njk',
        level: levelOf(facts),
        model: {
          season: season?.label ?? null,
          ready_by: dated.sort()[0] ?? null,
          hole_cm: HOLE.deep_cm,
          told: crops.flatMap(({ names, room: trait }) => (trait ? [{ names, ...spanOf(trait) }] : [])),
          untold: crops.flatMap(({ names, room: trait }) => (trait ? [] : [names.many])),
          unfed: ledger.years.flatMap(({ crop }) => (crop.feeding ? [] : [cropNames(crop, locale).many])),
          room,
          judged: plantings(judged),
          tight: judged.filter(({ tight }) => tight).flatMap(({ spots }) => spots),
          heaps,
          nitrogen,
          manure,
          cites: {
            hole: cited([HOLE.sources]),
            manure: cited([MANURE_RULE]),
            crops: cited(cropSources),
            materials: cited(materialSources),
            others: cited([...cropSources, ...materialSources]).length,
          },
        },
        charts: [],
        tables: tables.filter(({ rows }) => rows.length > 0),
        figures: [
          ...room.flatMap(({ figures }) => figures),
          ...heaps.lines.flatMap(({ l, barrows }) => [l, barrows]),
          ...(heaps.bowl ? [heaps.bowl.l] : []),
          ...nitrogen.figures,
        ],
        cautions: cautionsAt(reference, 'ground', 'planting'),
        listed: true,
      },
    ];
  },
};

const spanOf = (room: { readonly plant_area_low_m2: number; readonly plant_area_high_m2: number }) => ({
  area: { low: room.plant_area_low_m2, high: room.plant_area_high_m2 },
});

/** What was planted, then what was put on the ground, then how much of it. */
function levelOf({ garden: { seasons } }: Facts): RecordLevel {
  const feedings = seasons.flatMap(({ events }) => events.feeding);
  return recordLevel('little', {
    little: seasons.some(({ plantings }) => plantings.length > 0),
    some: feedings.length > 0,
    full: feedings.some(
      ({ mass_kg, volume_l, barrows, cups }) => (mass_kg ?? volume_l ?? barrows ?? cups ?? null) !== null,
    ),
  });
}
