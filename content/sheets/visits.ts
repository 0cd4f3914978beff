import { type BlankColumn, type BlankSheet, blankColumn } from '../../src/book/blank-sheet.ts';
import type { Facts } from '../../src/book/chapter.ts';
import type { Crop } from '../../src/garden/garden.ts';
import { SIGN_KEYS, type SignKey } from '../../src/records/sign.ts';
import { hasSlip, plantingsOf, seasonOf } from './plot.ts';

const WIDTHS: Readonly<Record<SignKey, number>> = {
  tendril: 30,
  ground_spot: 35,
  sound: 34,
  rind: 27,
  nail: 18,
  stalk: 26,
  ground_colour: 27,
  smell: 22,
  slip: 25,
};

/** Together wider than this in mm, the sheet is laid on its side. */
const UPRIGHT_MM = 200;

/** What each fruit showed from outside, and the call, before any knife. */
export function visits(facts: Facts): BlankSheet {
  const column = (key: string, width: number) => blankColumn('visits', ['fruits', 0], key, width);
  const growing = (seasonOf(facts)?.plantings ?? []).flatMap(({ fruits }) =>
    fruits.filter(({ fate }) => fate === 'growing').map(({ id }) => id),
  );
  const signs = signsOf(facts).map((key): BlankColumn => ({ ...column(key, WIDTHS[key]), drawn: true }));
  const columns = [column('fruit', 16), ...signs, column('call', 24)];
  const landscape = columns.reduce((sum, { width }) => sum + width, 0) > UPRIGHT_MM;
  return {
    id: 'visits',
    title: 'Looking the fruit over',
    rule: 'One line a fruit: circle what you see and hear, then your call, before anybody cuts it. A line through the cell means that nobody looked.',
    columns,
    known: growing.map((id) => [id]),
    rows_a_sheet: landscape ? 8 : 12,
    tall: true,
    landscape,
    cautions: ['stings'],
  };
}

/** The signs of the crops grown this season, in the order of looking; before the first planting those of every crop. */
function signsOf(facts: Facts): SignKey[] {
  const grown = plantingsOf(facts).flatMap(({ variety }) => variety?.crop ?? []);
  const crops: readonly Crop[] = grown.length > 0 ? grown : [...facts.garden.crops.values()];
  const isAsked = (key: SignKey): boolean =>
    crops.some(({ signs }) => signs?.some(({ shown }) => shown?.[key] != null) ?? false);
  return SIGN_KEYS.filter((key) => (key === 'slip' ? hasSlip(facts) : isAsked(key)));
}
