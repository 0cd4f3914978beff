import type { Facts } from '../../src/book/chapter.ts';
import { shortCites } from '../../src/book/cites.ts';
import type { Figure } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { cropsOf } from '../../src/garden/crops-of.ts';
import type { Variety } from '../../src/garden/garden.ts';
import type { VarietySeason } from '../../src/ledger/variety-season.ts';
import { type Answer, answersOf } from './answer.ts';
import { pathOf } from './paths.ts';
import type { RipensHere, TimeHere, Verdict } from './ripen-here.ts';
import type { RoomHere } from './room-here.ts';

export interface ListModel {
  /** Label of the last season anything was planted in; null before the first. */
  readonly season: string | null;
  /** False while that season runs. */
  readonly over: boolean;
  /** What stands in the last season, by crop; empty when no variety of it is known. */
  readonly growing: readonly { readonly crop: string; readonly varieties: number }[];
  readonly varieties: number;
  /** Which variety, crop by crop. */
  readonly answers: readonly Answer[];
  /** An answer says more than that nothing is harvested. */
  readonly answered: boolean;
  readonly crops: readonly CropRows[];
  /** Varieties of that season, those whose days are known, and those with time enough to ripen. */
  readonly grown_now: number;
  readonly judged: number;
  readonly enough: number;
  readonly times: readonly (TimeHere & { readonly groups: readonly VerdictGroup[] })[];
  /** Crops of which sources tell the room. */
  readonly rooms: readonly RoomHere[];
  readonly has_frost: boolean;
  readonly cites: readonly string[];
}

interface VerdictGroup {
  readonly verdict: Verdict;
  readonly varieties: readonly RipensHere[];
}

interface CropRows {
  readonly name: string;
  /** A mass of any of them is known. */
  readonly weighed: boolean;
  readonly rows: readonly ListRow[];
}

export interface ListRow {
  readonly name: string;
  readonly path: string;
  readonly yardstick: boolean;
  /** Labels of its seasons, the first first. */
  readonly seasons: readonly string[];
  readonly spots: number;
  /** Of its last season; null when it was never planted. */
  readonly last: { readonly label: string; readonly fruits: Figure; readonly mass: Figure } | null;
}

/** All varieties, by crop, in the alphabet's order. */
export function listModel(facts: Facts, times: readonly TimeHere[], rooms: readonly RoomHere[]): ListModel {
  const { garden, ledger, reference } = facts;
  const answers = answersOf(facts);
  const latest = ledger.yields.filter((one) => one.season.plantings.length > 0).at(-1);
  const season = latest?.season ?? null;
  const isGrownNow = ({ id }: Variety): boolean => ledger.varieties.get(id)?.at(-1)?.slug === season?.slug;
  const crops = cropsOf(garden.varieties)
    .map((crop) => ({
      names: cropNames(crop, garden.about.locale),
      own: garden.varieties.filter((variety) => variety.crop.id === crop.id),
    }))
    .sort((a, b) => (a.names.many < b.names.many ? -1 : 1));
  const grown_now = garden.varieties.filter(isGrownNow);
  const judged = grown_now
    .flatMap(({ id }) => times.flatMap(({ varieties }) => varieties.filter((one) => one.id === id)))
    .filter(({ verdict }) => verdict !== 'unknown');
  return {
    answers,
    answered: answers.some(({ state }) => state !== 'none'),
    grown_now: grown_now.length,
    judged: judged.length,
    enough: judged.filter(({ verdict }) => verdict === 'enough').length,
    times: times.map((time) => ({ ...time, groups: groupsOf(time) })),
    rooms: rooms.filter(({ room }) => room !== null),
    has_frost: times.some(({ ends_with }) => ends_with === 'frost'),
    cites: shortCites(
      reference,
      times.flatMap(({ crop, varieties }) => [
        ...(crop.room?.sources ?? []),
        ...(varieties.some(({ from }) => from === 'crop') ? (crop.ripe_days?.sources ?? []) : []),
      ]),
    ),
    season: season?.label ?? null,
    over: latest?.over ?? false,
    growing: crops
      .map(({ names, own }) => ({ crop: names.one, varieties: own.filter(isGrownNow).length }))
      .filter(({ varieties }) => varieties > 0),
    varieties: garden.varieties.length,
    crops: crops.map(({ names, own }) => {
      const rows = own.map((variety) => rowOf(variety, ledger.varieties.get(variety.id) ?? []));
      return { name: names.many, weighed: rows.some(({ last }) => last !== null && last.mass.value !== null), rows };
    }),
  };
}

const VERDICTS: readonly Verdict[] = ['enough', 'tight', 'too-long', 'unknown'];

const groupsOf = ({ varieties }: TimeHere): VerdictGroup[] =>
  VERDICTS.map((verdict) => ({ verdict, varieties: varieties.filter((one) => one.verdict === verdict) })).filter(
    (group) => group.varieties.length > 0,
  );

function rowOf(variety: Variety, seasons: readonly VarietySeason[]): ListRow {
  const last = seasons.at(-1);
  return {
    name: variety.name,
    path: pathOf(variety),
    yardstick: variety.yardstick === true,
    seasons: seasons.map(({ label }) => label),
    spots: seasons.reduce((sum, { plantings }) => sum + new Set(plantings.map(({ spot }) => spot.id)).size, 0),
    last: last
      ? { label: last.label, fruits: last.totals.measures.fruits.total, mass: last.totals.measures.kg.total }
      : null,
  };
}
