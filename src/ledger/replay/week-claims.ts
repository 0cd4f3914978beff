import type { Day } from '../../day.ts';
import type { Crop, Fruit, Garden, Planting, Season } from '../../garden/garden.ts';
import { type Kept, keptOr } from '../../kept.ts';
import { claimOfTen } from '../../statistics/signs/claim-cap.ts';
import type { LookedFruit } from '../../statistics/signs/ripe-chance.ts';
import { judgedFruits } from '../ripeness/judged-fruit.ts';
import { knownCuts } from '../ripeness/known-cuts.ts';
import { lookOn, vineSigns } from '../ripeness/look.ts';
import { capOn, cutFor, togetherNumbers } from '../ripeness/together-numbers.ts';
import { plainThen } from './plain-then.ts';
import type { ReplayWeek } from './weeks.ts';

/** What the book of a Saturday said of a fruit that was looked over in the seven days it was used. */
export interface WeekClaim {
  readonly season: string;
  readonly week: Day;
  readonly crop: string;
  readonly fruit: string;
  readonly looked_on: Day;
  /** Cut fruits it was told from. */
  readonly cuts: number;
  /** Of ten, as it would have been printed; the chance before it was rounded and cut off. */
  readonly of_ten: number;
  readonly chance: number;
  readonly base_chance: number;
  /** Null where the crop has no sign on the vine. */
  readonly best_sign: string | null;
  readonly sign_chance: number | null;
}

export interface WeekClaims {
  /** Fruits looked over. */
  readonly looked: number;
  /** Null where the cuts known were too few to claim anything. */
  readonly claims: readonly WeekClaim[] | null;
}

/** `book` is the garden as known on the week's first day, `then` on its last: the looks are the week's own. */
export function weekClaims(
  book: Garden,
  then: Garden,
  crop: Crop,
  slug: string,
  week: ReplayWeek,
  kept: Kept,
): WeekClaims {
  const looks = looksIn(then, crop, slug, week);
  if (looks.length === 0) return { looked: 0, claims: [] };
  const signs = vineSigns(crop);
  const known = knownCuts(judgedFruits(book.seasons, crop), signs).map(({ look }) => look);
  const asked = looks.map(({ look }) => look);
  const numbers = keptOr(kept, 'fits', JSON.stringify(['ripe-together', { known, asked }]), () =>
    togetherNumbers({ known, asked }),
  );
  const ripe = numbers.find(({ question }) => question === 'ripe-yet');
  if (!ripe?.chances) return { looked: looks.length, claims: null };
  const { cap } = capOn(known, ripe);
  const plain = plainThen(cutFor(known, 'ripe-yet'), asked);
  const claims = looks.flatMap(({ fruit, looked_on }, at): WeekClaim[] => {
    const [found, beside] = [ripe.chances?.[at], plain[at]];
    if (!found || !beside) return [];
    return [
      {
        season: slug,
        week: week.day,
        crop: crop.id,
        fruit: fruit.id,
        looked_on,
        cuts: known.length,
        of_ten: claimOfTen(found.chance, cap),
        chance: found.chance,
        base_chance: beside.base,
        best_sign: beside.sign ? (signs[beside.sign.place]?.id ?? null) : null,
        sign_chance: beside.sign?.chance ?? null,
      },
    ];
  });
  return { looked: looks.length, claims };
}

interface Look {
  readonly fruit: Fruit;
  readonly looked_on: Day;
  readonly look: LookedFruit;
}

/** The last look of the week at each fruit on the vine, by fruit id. */
function looksIn({ seasons }: Garden, crop: Crop, slug: string, week: ReplayWeek): Look[] {
  const season = seasons.find((one) => one.slug === slug);
  if (!season) return [];
  return season.plantings
    .filter(({ variety }) => variety?.crop.id === crop.id)
    .flatMap((planting) => planting.fruits.flatMap((fruit) => lastLook(season, planting, fruit, crop, week)));
}

function lastLook(season: Season, planting: Planting, fruit: Fruit, crop: Crop, { day, until }: ReplayWeek): Look[] {
  const off = fruit.pick?.picked_on ?? fruit.end?.ended_on ?? fruit.cut?.cut_on ?? null;
  const looked_on = season.visits
    .filter(({ visited_on }) => visited_on >= day && visited_on <= until && !(off?.last && off.last < visited_on))
    .filter(({ fruits }) => fruits.some((look) => look.fruit === fruit.id))
    .at(-1)?.visited_on;
  const look = looked_on && lookOn(vineSigns(crop), season, planting, fruit, looked_on);
  return look ? [{ fruit, looked_on, look }] : [];
}
