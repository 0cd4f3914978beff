import type { Facts } from '../../src/book/chapter.ts';
import { type Figure, happened } from '../../src/figure.ts';
import type { Fruit } from '../../src/garden/garden.ts';

/** In the order they are told. */
export const FATES = [
  'picked',
  'thinned',
  'aborted',
  'lost',
  'left',
  'growing',
] as const satisfies readonly Fruit['fate'][];

const WORDS: Readonly<Record<Fruit['fate'], string>> = {
  picked: 'picked',
  thinned: 'thinned',
  aborted: 'dropped young',
  lost: 'lost',
  left: 'left',
  growing: 'growing',
};

/** What became of the fruits in one season's register, all crops together. */
export interface SeasonCounts {
  readonly label: string;
  readonly slug: string;
  readonly fruits: Figure;
  readonly fates: readonly { readonly fate: Fruit['fate']; readonly word: string; readonly figure: Figure }[];
}

/** The seasons in whose register somebody wrote down a fruit thinned or dropped young; elsewhere a nought would be a guess. */
export const seasonCounts = ({ garden, ledger }: Facts): SeasonCounts[] =>
  garden.seasons.flatMap(({ slug, label, plantings }): SeasonCounts[] => {
    const fruits = plantings.flatMap((planting) => planting.fruits);
    const of = (fate: Fruit['fate']): readonly Fruit[] => fruits.filter((fruit) => fruit.fate === fate);
    if (of('thinned').length + of('aborted').length === 0) return [];
    const figure = (id: string, told: readonly Fruit[]): Figure =>
      happened({
        id: `thinning.${slug}.${id}`,
        value: told.length,
        unit: 'fruits',
        n: fruits.length,
        method: 'plain-count',
        basis: ledger.bases.of(told.map(({ key }) => key)),
        reason: null,
      });
    return [
      {
        label,
        slug,
        fruits: figure('fruits', fruits),
        fates: FATES.map((fate) => ({ fate, word: WORDS[fate], figure: figure(`fate_${fate}`, of(fate)) })),
      },
    ];
  });

export const countOf = ({ fates }: SeasonCounts, fate: Fruit['fate']): number =>
  fates.find((one) => one.fate === fate)?.figure.value ?? 0;
