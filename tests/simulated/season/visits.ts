import type { Chance } from '../chance.ts';
import { listText, mapText, type Row } from '../yaml-text.ts';
import { dayText } from './calendar.ts';
import type { GrownSeason } from './grown.ts';
import type { Look } from './keeper.ts';
import { writtenLate } from './late.ts';
import { SIGN_NAMES, wordOf } from './signs.ts';
import { type Slips, slips } from './slips.ts';
import type { Walk } from './walk.ts';

/** A season's visits.yaml: walks on which nothing was looked over are not written. */
export function visitsText({ walks, looks }: GrownSeason, rates: Slips, chance: Chance): string {
  const texts = walks.flatMap((walk) => {
    const own = looks.filter((look) => look.walk === walk);
    return own.length === 0 ? [] : visitText(walk, own, rates, chance);
  });
  return texts.length === 0 ? listText([]) : texts.join('');
}

function visitText({ day, observer }: Walk, looks: readonly Look[], rates: Slips, chance: Chance): string {
  const date = dayText(day);
  const about = mapText({ visited_on: date, by: observer.code, ...writtenLate(day, rates, chance) });
  const rows = listText(looks.map((look) => lookRow(look, rates, chance)));
  return `- id: V${date.slice(5, 7)}${date.slice(8)}\n${indented(about, 2)}  fruits:\n${indented(rows, 4)}`;
}

const indented = (text: string, by: number): string => text.replace(/^(?=.)/gm, ' '.repeat(by));

function lookRow({ fruit, shown, call }: Look, { sign_missing }: Slips, chance: Chance): Row {
  const signs = SIGN_NAMES.filter(() => !slips(sign_missing, chance)).map(
    (name) => [name, wordOf(name, shown[name])] as const,
  );
  return { fruit, ...Object.fromEntries(signs), call };
}
