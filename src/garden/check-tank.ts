import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';
import type { DipRecord } from '../records/event/dip.ts';
import type { GardenRecord } from '../records/garden.ts';
import type { TankRecord } from '../records/tank.ts';
import { asWritten, writtenKey } from './written-key.ts';

/** The inside measures a shape needs before a depth can be turned into litres. */
const NEEDS = {
  upright: ['diameter_cm', 'height_cm'],
  lying: ['diameter_cm', 'length_cm'],
  box: ['length_cm', 'width_cm', 'height_cm'],
} as const;

/** The measure that says how deep water can stand. */
const heightKey = ({ shape }: TankRecord): 'diameter_cm' | 'height_cm' =>
  shape === 'lying' ? 'diameter_cm' : 'height_cm';

/** A tank whose shape lacks a measure, a tap above its rim, and dips that are deeper or fuller than it is. */
export function checkTank(garden: Entry<GardenRecord> | null, dips: readonly Entry<DipRecord>[]): Problem[] {
  const tank = garden?.record.tank ?? null;
  if (!garden || !tank) return [];
  const height_cm = tank[heightKey(tank)];
  return [
    ...unmeasured(garden, tank),
    ...(tank.tap_cm !== null && height_cm !== null && tank.tap_cm >= height_cm
      ? [
          problemIn(garden, ['tank', writtenKey(tank, 'tap_cm')], {
            code: 'tap-above-tank',
            message: `the tap (${asWritten(tank, 'tap_cm')}) is not below the top (${asWritten(tank, heightKey(tank))})`,
            hint: 'measure both from the floor inside',
          }),
        ]
      : []),
    ...dips.flatMap((dip) => tooFull(dip, tank, height_cm)),
  ];
}

function unmeasured(garden: Entry<GardenRecord>, tank: TankRecord): Problem[] {
  const missing = tank.shape === null ? [] : NEEDS[tank.shape].filter((key) => tank[key] === null);
  if (missing.length === 0) return [];
  return [
    problemIn(garden, ['tank', 'shape'], {
      severity: 'warning',
      code: 'tank-unmeasured',
      message: `a tank of shape ${tank.shape} needs ${missing.join(' and ')} too before a dip tells litres`,
      hint: 'measure it inside, or take the shape out and write holds_l',
    }),
  ];
}

function tooFull(dip: Entry<DipRecord>, tank: TankRecord, height_cm: number | null): Problem[] {
  const { depth_cm, volume_l } = dip.record;
  const all_l = tank.holds_l === null ? null : tank.holds_l * (tank.count ?? 1);
  const wrong = (key: string, whole: string): Problem[] => [
    problemIn(dip, [writtenKey(dip.record, key)], {
      code: 'dip-over-tank',
      message: `${asWritten(dip.record, key)} is more than the tank has room for: ${whole}`,
      hint: 'check the unit in the key, and the measures of the tank in garden.yaml',
    }),
  ];
  if (depth_cm !== null && height_cm !== null && depth_cm > height_cm)
    return wrong('depth_cm', asWritten(tank, heightKey(tank)));
  if (volume_l !== null && all_l !== null && volume_l > all_l)
    return wrong('volume_l', asWritten(tank, 'holds_l') + (tank.count === null ? '' : `, ${tank.count} of them`));
  return [];
}
