import type { Facts } from '../../src/book/chapter.ts';
import type { Dated } from '../../src/dated.ts';
import type { Season } from '../../src/garden/garden.ts';
import { inLanguage } from '../../src/garden/in-language.ts';
import { type LateNitrogen, lateNitrogen } from '../../src/ledger/feeding/late-nitrogen.ts';

/** A feed with nitrogen that came on the day of the first female flower or after it. */
export interface LateLine {
  readonly given: Dated;
  readonly name: string;
  readonly spots: readonly string[];
  readonly flower: LateNitrogen['flower'];
  readonly bears: LateNitrogen['bears'];
  readonly same_day: boolean;
}

export const lateLines = ({ garden, ledger, reference }: Facts, season: Season): LateLine[] =>
  lateNitrogen(season, ledger.years, reference.materials).map(
    ({ material, given, spots, flower, bears, same_day }) => ({
      given,
      name: inLanguage(material.names, garden.about.locale) ?? material.id,
      spots,
      flower,
      bears,
      same_day,
    }),
  );
