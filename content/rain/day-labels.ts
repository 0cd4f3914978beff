import type { ScatterPoint } from '../../src/charts/scatter-band.ts';
import type { Day } from '../../src/day.ts';
import type { Format } from '../../src/format.ts';
import type { CropRain } from '../../src/ledger/rain-sugar/crop-rain.ts';
import { WET_WINDOW_MM } from '../../src/ledger/rain-sugar/evidence.ts';

/** More names than this would cover the marks. */
const MOST_NAMED = 3;
/** A name is about this wide, as a share of the axis. */
const NAME_WIDTH = 0.2;

type Label = NonNullable<ScatterPoint['label']>;

interface Mark {
  readonly key: string;
  readonly picked_on: Day;
  readonly rain_mm: number;
  readonly y: number;
}

/**
 * The wet days that most of a slope would rest on, each written once, by key of a mark: above its highest, or below
 * its lowest where another name is near; a third at one place is left out.
 */
export function dayLabels(
  { pulls, evidence }: CropRain,
  marks: readonly Mark[],
  format: Format,
): ReadonlyMap<string, Label> {
  const widest = Math.max(...marks.map(({ rain_mm }) => rain_mm));
  const labels = new Map<string, Label>();
  const places: { readonly x: number; readonly side: Label['side'] }[] = [];
  for (const { day } of pulls) {
    const [lowest, highest] = endsOf(marks.filter(({ picked_on }) => picked_on === day));
    if (!lowest || !highest || highest.rain_mm < WET_WINDOW_MM || places.length === MOST_NAMED) continue;
    const isFree = (side: Label['side']): boolean =>
      places.every((place) => place.side !== side || Math.abs(place.x - highest.rain_mm) > NAME_WIDTH * widest);
    const side = (['above', 'below'] as const).find(isFree);
    if (!side) continue;
    places.push({ x: highest.rain_mm, side });
    const text = evidence.seasons > 1 ? format.dayYear(day) : format.day(day);
    labels.set((side === 'above' ? highest : lowest).key, { text, side });
  }
  return labels;
}

/** The lowest and the highest. */
function endsOf(marks: readonly Mark[]): [Mark | undefined, Mark | undefined] {
  const byHeight = [...marks].sort((a, b) => a.y - b.y);
  return [byHeight.at(0), byHeight.at(-1)];
}
