import type { Figure } from '../../src/figure.ts';
import type { CropTrial } from '../../src/ledger/trial/crop-trial.ts';
import type { TasteQuestion, VarietyTaste } from '../../src/ledger/trial/taste.ts';

/** What tasters said of fruits side by side. */
export interface TasteModel {
  readonly question: TasteQuestion;
  readonly ballots: number;
  readonly fruits: number;
  readonly rows: readonly {
    readonly name: string;
    readonly fruits: number;
    readonly ballots: number;
    readonly cannot: VarietyTaste['cannot'];
    readonly better: Figure;
  }[];
  /** A variety stands against the yardstick. */
  readonly ranked: boolean;
}

export const tasteModels = ({ tastes }: CropTrial): TasteModel[] =>
  tastes.map(({ taste: { question, ballots, fruits }, rows }) => ({
    question,
    ballots,
    fruits,
    rows: rows.map(({ variety, told, better }) => ({
      name: variety.name,
      fruits: told.fruits,
      ballots: told.ballots,
      cannot: told.cannot,
      better,
    })),
    ranked: rows.some(({ better }) => better.value !== null),
  }));
