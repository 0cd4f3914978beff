/**
 * Water in a tank from the depth on a dipstick, and back. Inside measures in centimetres, volumes in litres, nothing
 * rounded. Walls are straight and ends are flat: a butt that tapers or a drum with bulging ends holds a little less or
 * more. Several tanks joined below stand level, so each has the same depth. The formulas are elementary geometry; the
 * lying drum is the segment of a circle, as in Bronshtein & Semendyayev, Handbook of Mathematics; from memory.
 * Every function throws RangeError for a measure that is not above zero, or a depth or volume the tank cannot have.
 */

const CM3_PER_LITRE = 1000;

export type TankShape =
  | { readonly kind: 'upright'; readonly diameter_cm: number; readonly height_cm: number }
  /** A drum on its side. */
  | { readonly kind: 'lying'; readonly diameter_cm: number; readonly length_cm: number }
  | { readonly kind: 'box'; readonly length_cm: number; readonly width_cm: number; readonly height_cm: number };

/** Litres when full. */
export const tankHolds = (shape: TankShape): number => litresAtDepth(shape, heightOf(shape));

/** From the floor to where it is full, cm. */
export function heightOf(shape: TankShape): number {
  for (const [name, value] of Object.entries(shape)) if (typeof value === 'number') checkAboveZero(name, value);
  return shape.kind === 'lying' ? shape.diameter_cm : shape.height_cm;
}

/** Litres below a depth, from the floor. */
export function litresAtDepth(shape: TankShape, depth_cm: number): number {
  checkWithin('depth_cm', depth_cm, heightOf(shape));
  if (shape.kind !== 'lying') return (floorArea(shape) * depth_cm) / CM3_PER_LITRE;
  return (segmentArea(shape.diameter_cm, depth_cm) * shape.length_cm) / CM3_PER_LITRE;
}

/** Depth from the floor, cm, that holds so many litres. A lying drum by halving, to the last digit that makes a difference. */
export function depthAtLitres(shape: TankShape, litres: number): number {
  const height_cm = heightOf(shape);
  checkWithin('litres', litres, tankHolds(shape));
  if (shape.kind !== 'lying') return Math.min(height_cm, (litres * CM3_PER_LITRE) / floorArea(shape));
  let [low, high] = [0, height_cm];
  for (let middle = high / 2; low < middle && middle < high; middle = (low + high) / 2) {
    if (litresAtDepth(shape, middle) < litres) low = middle;
    else high = middle;
  }
  return high;
}

const floorArea = (shape: Exclude<TankShape, { kind: 'lying' }>): number =>
  shape.kind === 'box' ? shape.length_cm * shape.width_cm : (Math.PI * shape.diameter_cm ** 2) / 4;

/** The part of a circle below a level line: r² (θ − sin θ cos θ), θ being half the angle the line is seen under from the middle. */
function segmentArea(diameter_cm: number, depth_cm: number): number {
  const theta = 2 * Math.asin(Math.sqrt(depth_cm / diameter_cm));
  return (diameter_cm / 2) ** 2 * (theta - Math.sin(theta) * Math.cos(theta));
}

function checkAboveZero(name: string, value: number): void {
  if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`invalid ${name}: ${value}`);
}

function checkWithin(name: string, value: number, most: number): void {
  if (!(value >= 0 && value <= most)) throw new RangeError(`invalid ${name}: ${value} is not from 0 to ${most}`);
}
