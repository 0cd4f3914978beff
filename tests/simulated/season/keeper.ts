import type { Chance } from '../chance.ts';
import { between } from '../chance.ts';
import type { Ending } from './ending.ts';
import { closedOn, found } from './found.ts';
import type { FruitLife } from './fruit-life.ts';
import type { Misfortune } from './misfortune.ts';
import { type Call, type Calling, callOf, felt } from './observer.ts';
import { ripenessAt } from './ripening.ts';
import { type Shown, type SignRule, shownIn } from './signs.ts';
import type { Walk, Walking } from './walk.ts';
import { heatBetween, type Year } from './year.ts';

/** How a garden's keepers walk, look, thin and pick. */
export interface Keeping {
  readonly walking: Walking;
  readonly calling: Calling;
  /** Age from which fruits are looked over, and the share of them a walk gets round to. */
  readonly looked_from_days: number;
  readonly looked: number;
  /** Share of fruits called ripe that are picked at once. */
  readonly picked_when_ripe: number;
  /** Share of fruits whose day of cutting is drawn by lot when they set, and the ages it is drawn from. */
  readonly by_lot: number;
  readonly lot_days: { readonly from: number; readonly to: number };
  readonly thinned: number;
  readonly thinned_from_days: number;
}

/** A fruit looked over on a walk, before anything was decided. */
export interface Look {
  readonly walk: Walk;
  readonly fruit: string;
  readonly shown: Shown;
  readonly call: Call;
}

export interface Followed {
  readonly ending: Ending;
  readonly looks: readonly Look[];
}

/** Follows a fruit from walk to walk until it is gone. Throws RangeError when no walk closes the season. */
export function follow(
  life: FruitLife,
  misfortune: Misfortune | null,
  walks: readonly Walk[],
  keeping: Keeping,
  signs: SignRule,
  year: Year,
  chance: Chance,
): Followed {
  const lotAge = chance() < keeping.by_lot ? between(chance, keeping.lot_days.from, keeping.lot_days.to) : null;
  const toThin = chance() < keeping.thinned;
  const looks: Look[] = [];
  let since: number | null = null;
  for (const walk of walks) {
    const age = walk.day - life.set;
    if (age <= 0) continue;
    if (misfortune && misfortune.day < walk.day) return { ending: found(misfortune, walk, since, chance), looks };
    const by = walk.observer.code;
    if (toThin && age >= keeping.thinned_from_days)
      return { ending: { fate: 'thinned', day: walk.day, since, lost_to: null, by }, looks };
    const picked = { fate: 'picked', day: walk.day, condition: 'whole', by } as const;
    const called = age >= keeping.looked_from_days && chance() < keeping.looked;
    const look = called ? lookOver(life, walk, keeping.calling, signs, year, chance) : null;
    if (look) looks.push(look.look);
    if (lotAge !== null && age >= lotAge) return { ending: { ...picked, reason: 'other', by_lot: true }, looks };
    // A fruit with a day drawn by lot waits for it, or those cut by lot would be the ones nobody had called ripe.
    const reason = look && lotAge === null ? reasonToPick(look, keeping, chance) : null;
    if (reason) return { ending: { ...picked, reason, by_lot: false }, looks };
    if (walk.closing) return { ending: closedOn(walk, since, chance), looks };
    since = walk.day;
  }
  throw new RangeError(`invalid walks: none closes the season of ${life.id}`);
}

function lookOver(life: FruitLife, walk: Walk, calling: Calling, signs: SignRule, year: Year, chance: Chance) {
  const ripeness = ripenessAt(heatBetween(year, life.set, walk.day), life.heats);
  const shown = shownIn(ripeness, life.latents, signs, chance);
  const feeling = felt(shown, walk.observer, chance);
  return { feeling, look: { walk, fruit: life.id, shown, call: callOf(feeling, calling) } satisfies Look };
}

function reasonToPick(
  { feeling, look }: { readonly feeling: number; readonly look: Look },
  { calling, walking, picked_when_ripe }: Keeping,
  chance: Chance,
): 'ripe' | 'forecast' | null {
  if (look.call === 'ripe' && chance() < picked_when_ripe) return 'ripe';
  const dared = look.walk.before_rain && feeling >= calling.ripe_from - walking.forecast.daring;
  return dared ? 'forecast' : null;
}
