import { STAGES, type Stage } from '../../src/agronomy/crop-coefficient.ts';
import type { Facts } from '../../src/book/chapter.ts';
import { because, type Figure, type FigureUnit, happened, type Reason } from '../../src/figure.ts';
import { measuresOf } from '../../src/garden/measures.ts';
import type { SeasonWater } from '../../src/ledger/water/season-water.ts';
import type { SpotAccount, StageAccount } from '../../src/ledger/water/spot-account.ts';
import { stageKeys } from '../../src/ledger/water/stage-keys.ts';
import { type FingerModel, fingerModel } from './finger.ts';
import { weatherKey } from './weather-key.ts';

/** One spot's season, or the mean of all. Water in cans, as it is carried. */
export interface BackRow {
  readonly spot: string;
  readonly given: Figure;
  readonly rain: Figure;
  readonly wanted: Figure;
  readonly waterings: Figure;
  readonly short_days: Figure;
  readonly gap_days: Figure;
  readonly swing: Figure;
  readonly l_per_kg: Figure;
}

/** The average spot through one stage of growth. */
export interface StageRow {
  readonly stage: Stage;
  readonly given: Figure;
  readonly rain: Figure;
  readonly wanted: Figure;
}

export interface BackModel {
  readonly season: string;
  readonly rows: readonly BackRow[];
  /** In the order of the stages. */
  readonly stages: readonly StageRow[];
  /** The spot that went short on more days than the others; null where none did, or without a balance. */
  readonly driest: string | null;
  /** Figures of the average spot. */
  readonly mean: { readonly given: Figure; readonly rain: Figure; readonly wanted: Figure };
  /** Days from one watering to the next in flower and fruit, and cans each time; null where nobody watered then. */
  readonly rhythm: { readonly every_days: Figure; readonly cans: Figure } | null;
  readonly in_words: number;
  readonly rain_untold_days: number;
  readonly thirst: SpotAccount['thirst'];
  readonly finger: FingerModel | null;
}

/** Null for a season in which no watering was written down, or no spot can be reckoned. */
export function backModel(facts: Facts, water: SeasonWater): BackModel | null {
  const { season, spots } = water;
  if (spots.length === 0 || season.events.waterings.length === 0) return null;
  const { can_l } = measuresOf(facts.garden.about);
  const { bases, yields } = facts.ledger;
  const masses = new Map(
    (yields.find((one) => one.season === season)?.spots ?? []).map(({ spot, totals }) => [
      spot.id,
      totals.measures.kg.total,
    ]),
  );
  const accounts = spots.map(({ account, water: { plantings } }) => ({
    ...account,
    keys: [...account.keys, ...stageKeys(season, plantings)],
  }));
  const stem = `water.${season.slug}`;
  const rows = accounts.map((account): BackRow => {
    const basis = bases.of([...account.keys, ...weatherKey(facts)]);
    const figure = figureOf(`${stem}.spot.${account.spot}`, account.days, basis);
    const mass = masses.get(account.spot) ?? null;
    const kg = mass?.value || null;
    return {
      spot: account.spot,
      given: figure('given_cans', account.given_l / can_l, 'cans', 'water-given'),
      rain: figure('rain_cans', account.rain_l / can_l, 'cans', 'water-given'),
      wanted: figure('wanted_cans', account.wanted_l / can_l, 'cans', 'crop-water'),
      waterings: figure('waterings', account.waterings, 'days', 'water-given'),
      short_days: figure('short_days', account.short_days, 'days', 'root-zone-water', because('soil-unknown')),
      gap_days: figure('longest_gap_days', account.longest_gap_days, 'days', 'water-given'),
      swing: figure(
        'swing_cans',
        account.swing_l === null ? null : account.swing_l / can_l,
        'cans',
        'root-zone-water',
        because('soil-unknown'),
      ),
      l_per_kg: figure('l_per_kg', kg && account.given_l / kg, 'l_per_kg', 'water-given', because('none-weighed')),
    };
  });
  const basis = bases.of([...accounts.flatMap(({ keys }) => keys), ...weatherKey(facts)]);
  const mean = (name: string, of: (account: SpotAccount) => number, method: string): Figure =>
    figureOf(`${stem}.mean`, accounts.length, basis)(
      name,
      accounts.reduce((sum, account) => sum + of(account), 0) / accounts.length / can_l,
      'cans',
      method,
    );
  return {
    season: season.label,
    rows,
    stages: stageRows(accounts, stem, basis, can_l),
    driest: driestOf(accounts),
    mean: {
      given: mean('given_cans', ({ given_l }) => given_l, 'water-given'),
      rain: mean('rain_cans', ({ rain_l }) => rain_l, 'water-given'),
      wanted: mean('wanted_cans', ({ wanted_l }) => wanted_l, 'crop-water'),
    },
    rhythm: rhythmOf(accounts, figureOf(`${stem}.full`, accounts.length, basis), can_l),
    in_words: Math.max(...accounts.map(({ in_words }) => in_words)),
    rain_untold_days: Math.max(...accounts.map(({ rain_untold_days }) => rain_untold_days)),
    thirst: accounts.reduce((most, account) => (account.days > most.days ? account : most)).thirst,
    finger: fingerModel(water),
  };
}

function stageRows(accounts: readonly SpotAccount[], stem: string, basis: string, can_l: number): StageRow[] {
  return STAGES.flatMap((stage) => {
    const of = accounts.flatMap(({ stages }) => stages.filter((one) => one.stage === stage));
    if (of.length === 0) return [];
    const figure = figureOf(`${stem}.${stage}`, of.length, basis);
    const mean = (name: string, litres: (one: StageAccount) => number, method: string): Figure =>
      figure(name, of.reduce((sum, one) => sum + litres(one), 0) / of.length / can_l, 'cans', method);
    return [
      {
        stage,
        given: mean('given_cans', ({ given_l }) => given_l, 'water-given'),
        rain: mean('rain_cans', ({ rain_l }) => rain_l, 'water-given'),
        wanted: mean('wanted_cans', ({ wanted_l }) => wanted_l, 'crop-water'),
      },
    ];
  });
}

/** Over all spots in the stage of flower and fruit. */
function rhythmOf(
  accounts: readonly SpotAccount[],
  figure: ReturnType<typeof figureOf>,
  can_l: number,
): BackModel['rhythm'] {
  const full = accounts.flatMap(({ stages }) => stages.filter(({ stage }) => stage === 'middle'));
  const waterings = full.reduce((sum, one) => sum + one.waterings, 0);
  if (waterings === 0) return null;
  const days = full.reduce((sum, one) => sum + one.days, 0);
  const litres = full.reduce((sum, { given_l }) => sum + given_l, 0);
  return {
    every_days: figure('every_days', days / waterings, 'days', 'water-given'),
    cans: figure('cans_each_time', litres / waterings / can_l, 'cans', 'water-given'),
  };
}

const figureOf =
  (stem: string, n: number, basis: string) =>
  (name: string, value: number | null, unit: FigureUnit, method: string, lacking: Reason | null = null): Figure =>
    happened({ id: `${stem}.${name}`, value, unit, n, method, basis, reason: value === null ? lacking : null });

function driestOf(accounts: readonly SpotAccount[]): string | null {
  const [first] = [...accounts].sort((a, b) => (b.short_days ?? -1) - (a.short_days ?? -1));
  return first && (first.short_days ?? 0) > 0 ? first.spot : null;
}

export const figuresOfBack = ({ rows, stages, mean, rhythm }: BackModel): Figure[] => [
  ...rows.flatMap(({ given, rain, wanted, waterings, short_days, gap_days, swing, l_per_kg }) => [
    given,
    rain,
    wanted,
    waterings,
    short_days,
    gap_days,
    swing,
    l_per_kg,
  ]),
  ...stages.flatMap(({ given, rain, wanted }) => [given, rain, wanted]),
  mean.given,
  mean.rain,
  mean.wanted,
  ...(rhythm ? [rhythm.every_days, rhythm.cans] : []),
];
