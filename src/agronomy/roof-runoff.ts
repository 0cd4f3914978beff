/**
 * Rain on a roof as litres in the tank. The area is the roof’s footprint, seen from above: a slope catches no more rain
 * than the ground it covers. A share of the rain is lost to splash, wetting and gutters (data/reference/roofs.yaml).
 * Formula: enHealth, Guidance on use of rainwater tanks, 2010, appendix B: litres = share × (rain − wetting) × footprint.
 * 1 mm of rain on 1 m² is 1 litre. Nothing is rounded.
 */

export interface Roof {
  readonly footprint_m2: number;
  /** Of the rain, the part that runs off: 0 to 1. */
  readonly runoff_share: number;
  /** Thrown away at the start of each wet spell; 0 for a roof that throws nothing away. */
  readonly first_flush_l: number;
}

/** What the thing that throws the first water away still takes before water goes on to the tank. */
export interface Flush {
  readonly room_l: number;
}

export interface RoofDay {
  /** What reaches the tank. */
  readonly inflow_l: number;
  readonly thrown_away_l: number;
  /** As the day leaves it. */
  readonly flush: Flush;
}

/**
 * Litres that run off, before anything is thrown away. The wetting is rain that the roof itself takes up and dries off
 * again; it is published for a month (2 mm) and a year (24 mm), not for a day, so a day goes without it.
 * Throws RangeError for a negative measure, or a share not from 0 to 1.
 */
export function runoffLitres(
  { footprint_m2, runoff_share }: Pick<Roof, 'footprint_m2' | 'runoff_share'>,
  rain_mm: number,
  wetting_mm = 0,
): number {
  check('footprint_m2', footprint_m2);
  check('runoff_share', runoff_share, 1);
  check('rain_mm', rain_mm);
  check('wetting_mm', wetting_mm);
  return runoff_share * Math.max(0, rain_mm - wetting_mm) * footprint_m2;
}

/** As a day without rain leaves it: empty, with room for a whole first flush. */
export const emptyFlush = ({ first_flush_l }: Pick<Roof, 'first_flush_l'>): Flush => ({ room_l: first_flush_l });

/**
 * One day. A wet spell begins with a wet day after a day without rain; its first litres are thrown away, over several
 * days where the first is too small to fill the room, and no more until the spell is over. A day without rain, also a
 * trace, empties it. Throws RangeError as `runoffLitres`, and for a negative first flush or room.
 */
export function roofDay(roof: Roof, rain_mm: number, { room_l }: Flush): RoofDay {
  check('first_flush_l', roof.first_flush_l);
  check('room_l', room_l);
  const ran_off_l = runoffLitres(roof, rain_mm);
  if (rain_mm === 0) return { inflow_l: 0, thrown_away_l: 0, flush: emptyFlush(roof) };
  const thrown_away_l = Math.min(ran_off_l, room_l);
  return { inflow_l: ran_off_l - thrown_away_l, thrown_away_l, flush: { room_l: room_l - thrown_away_l } };
}

/** Litres into the tank, a number a day, from the days’ rain in order. The day before the first is taken to be dry. */
export function roofInflows(roof: Roof, rain_mm: readonly number[]): number[] {
  let flush = emptyFlush(roof);
  return rain_mm.map((rain) => {
    const day = roofDay(roof, rain, flush);
    flush = day.flush;
    return day.inflow_l;
  });
}

function check(name: string, value: number, most = Number.MAX_VALUE): void {
  if (!(value >= 0 && value <= most)) throw new RangeError(`invalid ${name}: ${value}`);
}
