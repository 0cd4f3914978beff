import type { Texts } from '../garden-texts.ts';

type Words = Readonly<Record<string, string | undefined>>;

/** A row of fruits.yaml, all values as the text they are. */
export interface WrittenFruit {
  readonly id: string;
  readonly planting: string;
  readonly plant: string;
  readonly fate: string;
  readonly set: Words;
  readonly pick?: Words;
  readonly end?: Words;
  readonly cut?: Words;
}

export interface WrittenVisit {
  readonly visited_on: string;
  readonly by: string;
  readonly recorded_on: string | undefined;
  /** One per fruit looked over: its id, signs and call. */
  readonly fruits: readonly Words[];
}

/** The rows of a season's register. Quicker by far than a reader of all YAML, and knows no more than the lines it is for. */
export const writtenFruits = (texts: Texts, slug: string): WrittenFruit[] =>
  rows(texts[`seasons/${slug}/fruits.yaml`] ?? '') as WrittenFruit[];

export const writtenPlantings = (texts: Texts, slug: string): Words[] =>
  rows(texts[`seasons/${slug}/plantings.yaml`] ?? '') as Words[];

export const writtenVisits = (texts: Texts, slug: string): WrittenVisit[] =>
  (texts[`seasons/${slug}/visits.yaml`] ?? '')
    .split(/^- id: /m)
    .slice(1)
    .map((text) => ({
      visited_on: /^ {2}visited_on: (.*)$/m.exec(text)?.[1] ?? '',
      by: /^ {2}by: (.*)$/m.exec(text)?.[1] ?? '',
      recorded_on: /^ {2}recorded_on: (.*)$/m.exec(text)?.[1],
      fruits: rows(text) as Words[],
    }));

const rows = (text: string): unknown[] =>
  [...text.matchAll(/^ *- (\{.*\})$/gm)].map(([, row = '']) =>
    JSON.parse(row.replace(/(\w+): /g, '"$1": ').replace(/: ([^{}"][^{},]*)/g, ': "$1"')),
  );
