import type { Listing } from '../reading/garden-records.ts';
import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';
import type { LotRecord } from '../records/lot.ts';
import { type Index, indexById, lookUp } from './index-by-id.ts';
import type { Keyed } from './keyed.ts';
import type { Varieties } from './link-varieties.ts';

export interface Lots {
  /** By id. */
  readonly lots: readonly Keyed<LotRecord>[];
  readonly index: Index<LotRecord>;
  readonly problems: readonly Problem[];
}

/** Every seed lot, with tests that count more than they sowed, and seed saved from a hybrid. */
export function linkLots(listings: readonly Listing<'lots'>[], varieties: Varieties): Lots {
  const { index, problems } = indexById<LotRecord>(listings, 'lot');
  const entries = [...index.byId.values()];
  return {
    lots: entries.map(({ record }) => ({ ...record, key: `lots/${record.id}` })).sort((a, b) => (a.id < b.id ? -1 : 1)),
    index,
    problems: [...problems, ...entries.flatMap((entry) => [...checkVariety(entry, varieties), ...checkTests(entry)])],
  };
}

function checkVariety(entry: Entry<LotRecord>, varieties: Varieties): Problem[] {
  const { variety, from } = entry.record;
  const { found, problem } = lookUp(varieties.index, variety, entry, ['variety'], 'variety');
  if (problem) return [problem];
  if (from !== 'saved' || found?.seed !== 'hybrid') return [];
  const complaint = {
    severity: 'warning' as const,
    code: 'saved-from-hybrid',
    message: `${variety} is a hybrid: its own seed does not come true`,
    hint: 'grow it as a trial, under a name of its own',
  };
  return [problemIn(entry, ['from'], complaint)];
}

const checkTests = (entry: Entry<LotRecord>): Problem[] =>
  (entry.record.tests ?? []).flatMap(({ seeds, sprouted }, index) => {
    if (sprouted <= seeds) return [];
    const complaint = {
      code: 'part-over-whole',
      message: `sprouted ${sprouted} is more than seeds ${seeds}`,
      hint: 'one of the two counts is wrong',
    };
    return [problemIn(entry, ['tests', index, 'sprouted'], complaint)];
  });
