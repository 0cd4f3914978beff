/** Invented varieties in seasons on mounds, with what is true of them. */
import type { PosteriorData } from '../../../src/statistics/posterior/posterior-data.ts';
import { type Chance, chanceOf } from '../../simulated/chance.ts';
import { normal } from '../../simulated/normal.ts';

/** Half-normal scales in residual SDs. */
const SCALES = { variety: 1.5, season: 1, mound: 0.5, day: 0.5 };

/** Spreads in residual SDs, which are 1. */
export interface TrueSpreads {
  readonly variety: number;
  /** Of varieties from season to season. */
  readonly season: number;
  readonly mound: number;
  /** Of picking days; absent: days are left out of the model. */
  readonly day?: number;
}

export interface TrialPlan {
  readonly varieties: number;
  readonly seasons: number;
  /** Of each variety in each season. */
  readonly mounds: number;
  /** Of each mound. */
  readonly fruits: number;
  /** Picking days of each season. */
  readonly days?: number;
  /** Share of mounds that bore; 1 when absent. */
  readonly bore?: number;
  /** Null: drawn from the priors, one set a trial. */
  readonly sd: TrueSpreads | null;
}

export interface SimulatedTrial {
  readonly data: PosteriorData;
  /** The constant and the variety's effect, by variety. */
  readonly worth: ReadonlyMap<string, number>;
  readonly sd: TrueSpreads;
}

const fromPriors = (chance: Chance, days: boolean): TrueSpreads => {
  const half = (scale: number): number => scale * Math.abs(normal(chance));
  const sd = { variety: half(SCALES.variety), season: half(SCALES.season), mound: half(SCALES.mound) };
  return days ? { ...sd, day: half(SCALES.day) } : sd;
};

/** The trial of a seed. The first season is the constant's own. */
export function simulatedTrial(plan: TrialPlan, seed: number): SimulatedTrial {
  const chance = chanceOf(seed);
  const sd = plan.sd ?? fromPriors(chance, plan.days !== undefined);
  const effects = new Map<string, number>();
  const effectOf = (level: string, spread: number): number => {
    const known = effects.get(level) ?? spread * normal(chance);
    effects.set(level, known);
    return known;
  };
  const names = Array.from({ length: plan.varieties }, (_, at) => `v${at}`);
  const worth = new Map(names.map((variety) => [variety, 10 + effectOf(variety, sd.variety)]));
  const fruits = names.flatMap((variety) =>
    counted(plan.seasons).flatMap((season) =>
      counted(plan.mounds)
        .filter((mound) => mound === 1 || chance() < (plan.bore ?? 1))
        .flatMap((mound) =>
          counted(plan.fruits).map(() => {
            const fruit = {
              variety,
              season,
              in_season: `${variety} ${season}`,
              mound: `${variety} ${season} ${mound}`,
              day: `day ${season} ${1 + Math.floor((plan.days ?? 1) * chance())}`,
            };
            const y =
              (worth.get(variety) ?? 0) +
              0.7 * (season - 1) +
              effectOf(fruit.in_season, sd.season) +
              effectOf(fruit.mound, sd.mound) +
              (sd.day === undefined ? 0 : effectOf(fruit.day, sd.day)) +
              normal(chance);
            return { ...fruit, y };
          }),
        ),
    ),
  );
  return {
    data: {
      y: fruits.map(({ y }) => y),
      fixed: [
        { name: 'constant', values: fruits.map(() => 1) },
        ...counted(plan.seasons)
          .slice(1)
          .map((own) => ({ name: `season ${own}`, values: fruits.map(({ season }) => (season === own ? 1 : 0)) })),
      ],
      random: [
        { name: 'variety', level: fruits.map(({ variety }) => variety), scale: SCALES.variety },
        { name: 'variety in season', level: fruits.map(({ in_season }) => in_season), scale: SCALES.season },
        { name: 'mound', level: fruits.map(({ mound }) => mound), scale: SCALES.mound },
        ...(sd.day === undefined ? [] : [{ name: 'day', level: fruits.map(({ day }) => day), scale: SCALES.day }]),
      ],
    },
    worth,
    sd,
  };
}

const counted = (count: number): number[] => Array.from({ length: count }, (_, at) => at + 1);
