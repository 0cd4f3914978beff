import type { SourceRecord } from '../records/source.ts';
import type { Reference } from './chapter.ts';

/** A source as it is cited; its id stands for words that nobody wrote. */
export const sourceOf = ({ sources }: Reference, id: string): Pick<SourceRecord, 'cite' | 'short'> =>
  sources.find((source) => source.id === id) ?? { cite: id, short: null };
