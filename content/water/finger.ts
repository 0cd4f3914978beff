import { readilyAvailable } from '../../src/agronomy/soil-water.ts';
import { isOneDay } from '../../src/dated.ts';
import type { Day } from '../../src/day.ts';
import { reaches } from '../../src/garden/reaches.ts';
import { rootZoneOf } from '../../src/ledger/water/crop-water.ts';
import type { SeasonWater } from '../../src/ledger/water/season-water.ts';
import type { SpotWater } from '../../src/ledger/water/spot-water.ts';

/** How often a finger in the ground and the reckoning said the same, of all times both spoke. */
export interface FingerModel {
  readonly agreed: number;
  readonly of: number;
  /** The finger found it dry below where the reckoning had water enough, and the other way round. */
  readonly drier: number;
  readonly wetter: number;
}

/** Null where nobody felt below the top, or nothing was reckoned. One finger in several spots counts for each. */
export function fingerModel({ season, spots }: SeasonWater): FingerModel | null {
  const pairs = season.events.soil.flatMap((feel) => {
    const { felt_on, below } = feel;
    if (below === null || !isOneDay(felt_on)) return [];
    return spots.flatMap(({ water }) => {
      if (!reaches(feel, water.spot)) return [];
      const reckoned = isDryOn(water, felt_on.first);
      return reckoned === null ? [] : [{ felt_dry: below === 'dry', reckoned_dry: reckoned }];
    });
  });
  if (pairs.length === 0) return null;
  return {
    agreed: pairs.filter(({ felt_dry, reckoned_dry }) => felt_dry === reckoned_dry).length,
    of: pairs.length,
    drier: pairs.filter(({ felt_dry, reckoned_dry }) => felt_dry && !reckoned_dry).length,
    wetter: pairs.filter(({ felt_dry, reckoned_dry }) => !felt_dry && reckoned_dry).length,
  };
}

/** Whether on a morning more was gone than goes without harm: as the day before had left it. */
function isDryOn({ days, water }: SpotWater, on: Day): boolean | null {
  const eve = days.findLast(({ day }) => day < on)?.step ?? null;
  const zone = rootZoneOf(water);
  return eve && zone && eve.end.root_mm > readilyAvailable(zone.taw_mm, eve.depletion_share);
}
