import type { Mulch } from '../../agronomy/mulched-coefficient.ts';
import { isOneDay } from '../../dated.ts';
import type { Day } from '../../day.ts';
import type { Crop, Season, Spot } from '../../garden/garden.ts';
import { reaches } from '../../garden/reaches.ts';

/** Of ten parts of the ground, where mulch was laid and nobody told how much it covers: a judgement, no source. */
const USUAL_COVER_OF_TEN = 8;

const BARE: Mulch = { kind: 'none' };

/** The mulch on a spot by day, as the diary tells it. Work of unknown day counts from the season's first. */
export function mulchOn(season: Season, spot: Spot, crop: Crop): (day: Day) => Mulch {
  const works = season.events.mulching
    .filter((work) => reaches(work, spot))
    .map((work) => ({
      from: isOneDay(work.laid_on) ? work.laid_on.first : (work.laid_on.last ?? season.starts_on),
      mulch: work.work === 'taken-off' ? BARE : mulchOf(work.material, work.cover_of_ten, crop),
    }))
    .sort((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0));
  return (day) => works.findLast(({ from }) => from <= day)?.mulch ?? BARE;
}

/** Plastic does to each crop something else: without its figures nothing is taken off. */
function mulchOf(material: string, cover_of_ten: number | null, { water }: Crop): Mulch {
  const cover = (cover_of_ten ?? USUAL_COVER_OF_TEN) / 10;
  if (material !== 'plastic') return { kind: 'organic', cover };
  const plastic = water?.plastic;
  if (!plastic) return BARE;
  const { evaporation_cut_low, evaporation_cut_high, transpiration_cut_low, transpiration_cut_high } = plastic;
  return {
    kind: 'plastic',
    cover,
    evaporation_cut: (evaporation_cut_low + evaporation_cut_high) / 2,
    transpiration_cut: (transpiration_cut_low + transpiration_cut_high) / 2,
    // The single coefficient is not used beside a dual one.
    kc_initial: 0,
    kc_cut: 0,
  };
}
