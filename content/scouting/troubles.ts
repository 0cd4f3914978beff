import type { Facts } from '../../src/book/chapter.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { inLanguage } from '../../src/garden/in-language.ts';

/** A trouble as the crops' files tell it; crops that tell the same share a line. */
export interface TroubleLine {
  readonly id: string;
  readonly name: string;
  readonly looks: string;
  readonly does: string;
  /** Ids of the crops, and their names. */
  readonly crops: readonly string[];
  readonly names: readonly string[];
}

export interface Troubles {
  readonly lines: readonly TroubleLine[];
  /** What they are called, each once. */
  readonly names: readonly string[];
  /** Names of crops whose file tells of none. */
  readonly untold: readonly string[];
  /** Ids of sources, in the order they are first named. */
  readonly sources: readonly string[];
}

/** Of the crops grown, in the order their files tell them. A trouble without words in the book's language is left out. */
export function troublesOf({ ledger, garden: { about } }: Facts): Troubles {
  const lines = new Map<string, TroubleLine>();
  const crops = ledger.years.map(({ crop }) => crop);
  const told = crops.map((crop) => {
    const { many } = cropNames(crop, about.locale);
    const own = (crop.troubles ?? []).flatMap(({ id, ...words }) => {
      const [name, looks, does] = [words.names, words.looks, words.does].map((one) => inLanguage(one, about.locale));
      return name && looks && does ? [{ id, name, looks, does }] : [];
    });
    for (const line of own) {
      const key = JSON.stringify(line);
      const { crops: ids, names } = lines.get(key) ?? { crops: [], names: [] };
      lines.set(key, { ...line, crops: [...ids, crop.id], names: [...names, many] });
    }
    return { many, own: own.length };
  });
  return {
    lines: [...lines.values()],
    names: [...new Set([...lines.values()].map(({ name }) => name))],
    untold: told.filter(({ own }) => own === 0).map(({ many }) => many),
    sources: crops.flatMap(({ troubles }) => (troubles ?? []).flatMap(({ sources }) => sources)),
  };
}
