import type { Day } from '../day.ts';
import type { Format } from '../format.ts';
import type { Garden } from '../garden/garden.ts';
import type { Ledger } from '../ledger/ledger.ts';
import type { CautionRecord } from '../records/caution.ts';
import type { MaterialRecord } from '../records/material.ts';
import type { MethodRecord } from '../records/method.ts';
import type { RoofRecord } from '../records/roof.ts';
import type { SoilRecord } from '../records/soil.ts';
import type { SourceRecord } from '../records/source.ts';
import type { Page } from './page.ts';

/** Facts of the trade shared by all gardens. */
export interface Reference {
  readonly sources: readonly SourceRecord[];
  /** In a book those that bear on its garden. */
  readonly cautions: readonly CautionRecord[];
  readonly materials: readonly MaterialRecord[];
  readonly soils: readonly SoilRecord[];
  readonly roofs: readonly RoofRecord[];
  readonly methods: readonly MethodRecord[];
}

/** What every chapter is written from. */
export interface Facts {
  /** As known on `today`. */
  readonly garden: Garden;
  /** The day of the book; null before the first season. */
  readonly today: Day | null;
  readonly ledger: Ledger;
  readonly reference: Reference;
  readonly format: Format;
}

/** Answers one question a grower asks, from the facts alone. Pure. */
export interface QuestionChapter {
  readonly kind: 'question';
  /** The folder below content. */
  readonly id: string;
  readonly write: (facts: Facts) => Page[];
}

/** Front and back matter: written once the questions are, and told of their pages. Pure. */
export interface MatterChapter {
  readonly kind: 'matter';
  readonly id: string;
  readonly write: (facts: Facts, questions: readonly Page[]) => Page[];
}

export type Chapter = QuestionChapter | MatterChapter;
