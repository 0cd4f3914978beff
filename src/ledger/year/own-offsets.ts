import { type Dated, isOneDay } from '../../dated.ts';
import { daysBetween } from '../../day.ts';
import type { Planting, Season } from '../../garden/garden.ts';
import { reaches } from '../../garden/reaches.ts';
import { ripenessOf } from '../maturity/ripening.ts';

/** Days from planting out, the earliest and the latest of this garden, and from how many seasons. */
export interface OwnSpan {
  readonly from: number;
  readonly to: number;
  readonly seasons: number;
}

/** What this garden's own records say of a crop's year, counted in days from planting out; null where they say nothing. */
export interface OwnOffsets {
  readonly sow: OwnSpan | null;
  readonly mulch: OwnSpan | null;
  readonly female: OwnSpan | null;
  readonly set: OwnSpan | null;
  readonly pick: OwnSpan | null;
}

/** Every key of the records that can tell when something happened. Only days known to the day, or about, count. */
export function ownOffsets(seasons: readonly Season[], cropId: string): OwnOffsets {
  const by = (datesOf: (planting: Planting, season: Season) => readonly (Dated | null)[]): OwnSpan | null =>
    spanOf(
      seasons.map((season) =>
        season.plantings
          .filter(({ variety }) => variety?.crop.id === cropId)
          .flatMap((planting) => datesOf(planting, season).flatMap((date) => offset(planting.planted_on, date) ?? [])),
      ),
    );
  return {
    sow: by(({ sown_on }) => [sown_on]),
    mulch: by(({ spot }, { events }) =>
      events.mulching
        // Plastic is laid before planting to warm the ground: another matter.
        .filter(
          ({ spots, work, material }) =>
            (work ?? 'laid') === 'laid' && material !== 'plastic' && reaches({ spots }, spot),
        )
        .map(({ laid_on }) => laid_on),
    ),
    female: by(({ id }, { events }) =>
      events.flowering.filter(({ planting, what }) => planting === id && what === 'first-female').map(seenOn),
    ),
    set: by(({ fruits }) => fruits.filter(({ fate }) => fate === 'picked').map(({ set }) => set?.set_on ?? null)),
    pick: by(({ fruits, pickings }) => [
      ...fruits
        .filter((fruit) => fruit.fate === 'picked' && ripenessOf(fruit) !== 'not-yet')
        .map(({ pick }) => pick?.picked_on ?? null),
      ...pickings.filter(({ count }) => count > 0).map(({ picked_on }) => picked_on),
    ]),
  };
}

const seenOn = ({ seen_on }: { readonly seen_on: Dated }): Dated => seen_on;

const offset = (planted: Dated, date: Dated | null): number | null =>
  date && isOneDay(planted) && isOneDay(date) ? daysBetween(planted.first, date.first) : null;

function spanOf(bySeason: readonly (readonly number[])[]): OwnSpan | null {
  const told = bySeason.filter((offsets) => offsets.length > 0);
  if (told.length === 0) return null;
  const all = told.flat();
  return { from: Math.min(...all), to: Math.max(...all), seasons: told.length };
}
