import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { Facts, QuestionChapter } from '../../src/book/chapter.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import { whenLines } from '../../src/book/when-line.ts';
import { cropModels } from './crop-model.ts';
import { firstFlowers, spanFigures } from './first-flowers.ts';
import { insectCounts, SCARCE } from './insect-counts.ts';
import { tables } from './tables.ts';
import { lastTagged } from './tagged.ts';

/** Is that flower female, and will it set? Which flower is which, who carries the pollen, and how many took. */
export const flowers: QuestionChapter = {
  kind: 'question',
  id: 'flowers',
  write(facts) {
    const { garden, ledger, reference } = facts;
    const crops = cropModels(facts);
    const first = firstFlowers(facts);
    const tagged = lastTagged(facts);
    const insects = insectCounts(facts);
    const apart = crops.filter(({ sexes }) => sexes === 'apart');
    const together = crops.filter(({ sexes }) => sexes === 'together');
    const visited = crops.filter(({ visits_least }) => visits_least !== null);
    // A home page has room for the looks of one crop, of several the common words do, and for whose number it prints.
    const community = garden.about.edition === 'community';
    const tellsLooks = community || apart.length === 1;
    return [
      {
        path: 'flowers/',
        chapter: 'flowers',
        template: 'flowers/index.njk',
        title: 'Is that flower female, and will it set?',
        finding: 'flowers/finding.njk',
        level: levelOf(facts),
        model: {
          set: whenLines(ledger.years, 'set', garden.about.locale),
          undated: crops
            .filter(({ id }) => !ledger.years.some(({ crop, bands }) => crop.id === id && bands.set))
            .map(({ names }) => names.many),
          crops,
          apart,
          together,
          untold: crops.filter(({ sexes }) => sexes === null),
          /** Some crop, or one nobody tells of, may have its sexes apart. */
          drawn: together.length < crops.length || crops.length === 0,
          looks: tellsLooks ? apart.filter(({ female_looks }) => female_looks !== null) : [],
          by_insects: crops.length === 0 || crops.some(({ carried_by }) => carried_by !== 'shaking'),
          cites: [...new Set((community || visited.length === 0 ? crops : visited).flatMap(({ cites }) => cites))],
          visited,
          first,
          tagged,
          insects,
          scarce: SCARCE,
        },
        charts: [],
        tables: tables(facts, first),
        figures: [
          ...first.flatMap(({ female, male }) => [...spanFigures(male), ...spanFigures(female)]),
          ...(tagged?.lines ?? []).map(({ of_ten }) => of_ten),
          ...(insects ? [insects.counts, insects.scarce] : []),
        ],
        cautions: cautionsAt(reference, 'flowering'),
        listed: true,
      },
    ];
  },
};

/** The day a flower opened or a fruit set, then flowers tagged and looked at again, then the insects counted. */
function levelOf({ garden: { seasons } }: Facts): RecordLevel {
  const entries = seasons.flatMap(({ events }) => events.flowering);
  const fruits = seasons.flatMap(({ plantings }) => plantings.flatMap((planting) => planting.fruits));
  return recordLevel('little', {
    little: entries.some(({ what }) => what.startsWith('first-')) || fruits.some(({ set }) => set?.set_on != null),
    some: entries.some(({ took }) => took !== null),
    full: entries.some(({ insects }) => insects !== null),
  });
}
