import type { Roof } from '../../agronomy/roof-runoff.ts';
import type { Tank } from '../../agronomy/tank-balance.ts';
import { heightOf, litresAtDepth, type TankShape, tankHolds } from '../../agronomy/tank-shape.ts';
import type { EventOf } from '../../garden/event.ts';
import type { Garden } from '../../garden/garden.ts';
import type { RoofRecord } from '../../records/roof.ts';
import type { TankRecord } from '../../records/tank.ts';

/** The garden's tank, all of those alike that are joined to it taken together. */
export interface TankFacts {
  readonly tank: Tank;
  /** Of one of them; null where its measures are not known, and a dip in depth tells nothing. */
  readonly shape: TankShape | null;
  readonly count: number;
  /** Null where nobody measured the roof. */
  readonly roof: Roof | null;
  readonly roof_facts: RoofRecord | null;
  readonly flow_l_min: number | null;
}

/** Null for a garden without a tank, or with one of unknown size. */
export function tankFacts({ about }: Pick<Garden, 'about'>, roofs: readonly RoofRecord[]): TankFacts | null {
  const record = about.tank;
  if (!record) return null;
  const shape = shapeOf(record);
  const count = record.count ?? 1;
  const one_l = shape ? tankHolds(shape) : record.holds_l;
  if (one_l === null) return null;
  const roof_facts = roofs.find(({ id }) => id === (record.roof_of ?? 'unknown')) ?? null;
  const tap_cm = shape && record.tap_cm !== null ? Math.min(record.tap_cm, heightOf(shape)) : null;
  return {
    tank: { holds_l: one_l * count, dead_l: shape && tap_cm !== null ? litresAtDepth(shape, tap_cm) * count : 0 },
    shape,
    count,
    roof:
      record.roof_m2 !== null && roof_facts
        ? {
            footprint_m2: record.roof_m2,
            runoff_share: (roof_facts.runoff_low + roof_facts.runoff_high) / 2,
            first_flush_l: record.first_flush_l ?? 0,
          }
        : null,
    roof_facts,
    flow_l_min: record.flow_l_min,
  };
}

/** What a dip says is in the tank, litres; null where it tells neither litres nor a depth that can be turned into them. */
export function dippedLitres(
  { shape, count, tank }: TankFacts,
  { volume_l, depth_cm }: Pick<EventOf<'dips'>, 'volume_l' | 'depth_cm'>,
): number | null {
  if (volume_l !== null) return Math.min(volume_l, tank.holds_l);
  if (depth_cm === null || !shape) return null;
  return litresAtDepth(shape, Math.min(depth_cm, heightOf(shape))) * count;
}

function shapeOf({ shape, diameter_cm, length_cm, width_cm, height_cm }: TankRecord): TankShape | null {
  if (shape === 'upright' && diameter_cm !== null && height_cm !== null)
    return { kind: 'upright', diameter_cm, height_cm };
  if (shape === 'lying' && diameter_cm !== null && length_cm !== null) return { kind: 'lying', diameter_cm, length_cm };
  if (shape === 'box' && length_cm !== null && width_cm !== null && height_cm !== null)
    return { kind: 'box', length_cm, width_cm, height_cm };
  return null;
}
