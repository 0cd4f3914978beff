import type { Chance } from '../chance.ts';
import { wholeBetween } from '../chance.ts';
import { normal } from '../normal.ts';
import type { Row } from '../yaml-text.ts';
import { dayText } from './calendar.ts';
import type { Picked } from './ending.ts';
import type { Grown } from './grown.ts';
import { writtenLate } from './late.ts';
import { STATES, type State } from './ripening.ts';
import { type Slips, slips } from './slips.ts';
import { tasted } from './tasting.ts';
import type { TruePick } from './truth.ts';

const LATEST_DAYS = 2;

interface Uncut {
  readonly fruit: string;
  readonly variety: string;
  readonly ending: Picked;
  readonly pick: TruePick;
  readonly cut: number;
}

/** What is written of each fruit's cutting, by fruit: rotten fruit is not cut, nor what slips. */
export function cutRows(grown: readonly Grown[], reading_sd: number, rates: Slips, chance: Chance): Map<string, Row> {
  const lastOfKind = new Map<string, number>();
  const rows = inOrder(grown, rates, chance).map((one): [string, Row] => {
    const { fruit, variety, pick, cut } = one;
    const { on_tongue, ...words } = tasted(pick.brix, pick.state, lastOfKind.get(variety) ?? null, chance);
    lastOfKind.set(variety, on_tongue);
    return [
      fruit,
      {
        cut_on: dayText(cut),
        why: whyCut(one.ending),
        ...stateRow(pick.state, rates, chance),
        ...brixRow(pick.brix + reading_sd * normal(chance), rates, chance),
        ...wordsRow(words, rates, chance),
        ...writtenLate(cut, rates, chance),
      },
    ];
  });
  return new Map([...rows, ...thinnings(grown)]);
}

/** A thinned fruit is cut to see what unripe is. */
const thinnings = (grown: readonly Grown[]): [string, Row][] =>
  grown
    .filter(({ ending }) => ending.fate === 'thinned')
    .map(({ life, ending }) => [life.id, { cut_on: dayText(ending.day), why: 'thinned', state: 'unripe' }]);

/** Fruits that will be cut, in the order of their cutting. */
function inOrder(grown: readonly Grown[], { uncut }: Slips, chance: Chance): Uncut[] {
  return grown
    .flatMap(({ life, ending, truth }): Uncut[] => {
      if (ending.fate !== 'picked' || !truth.pick || ending.condition === 'rotten' || slips(uncut, chance)) return [];
      const cut = ending.day + wholeBetween(chance, 0, LATEST_DAYS);
      return [{ fruit: life.id, variety: life.variety, ending, pick: truth.pick, cut }];
    })
    .sort((a, b) => a.cut - b.cut);
}

function whyCut({ by_lot, reason }: Picked): string {
  if (by_lot) return 'lot';
  if (reason === 'damage') return 'damaged';
  return reason === 'season-end' || reason === 'frost' ? 'season-end' : 'ripe';
}

function stateRow(state: State, { state_missing, state_misread }: Slips, chance: Chance): Row {
  const missing = slips(state_missing, chance);
  const misread = slips(state_misread, chance);
  const step = chance() < 0.5 ? -1 : 1;
  if (missing) return {};
  // The first and the last state can only be missed by a step inward.
  const place = STATES.indexOf(state);
  return { state: misread ? (STATES[place + step] ?? STATES[place - step] ?? state) : state };
}

function brixRow(read: number, { brix_missing }: Slips, chance: Chance): Row {
  return slips(brix_missing, chance) ? {} : { brix_centre: Math.max(0, read).toFixed(1) };
}

function wordsRow(words: Readonly<Record<string, string | null>>, { word_missing }: Slips, chance: Chance): Row {
  const written = Object.entries(words).filter(
    (pair): pair is [string, string] => !slips(word_missing, chance) && pair[1] !== null,
  );
  return Object.fromEntries(written);
}
