import type { GardenRecord } from '../records/garden.ts';

/** What a can and a barrow hold, in litres, and whether somebody measured them here. */
export interface Measures {
  readonly can_l: number;
  readonly can_measured: boolean;
  readonly barrow_l: number;
  readonly barrow_measured: boolean;
}

/** House figures where a garden gives none: a judgement, no source. Cans run from 5 to 14 litres, barrows from 60 to 120. */
const HOUSE = { can_l: 10, barrow_l: 85 };

export const measuresOf = ({ measures }: Pick<GardenRecord, 'measures'>): Measures => ({
  can_l: measures?.can_l ?? HOUSE.can_l,
  can_measured: measures?.can_l != null,
  barrow_l: measures?.barrow_l ?? HOUSE.barrow_l,
  barrow_measured: measures?.barrow_l != null,
});
