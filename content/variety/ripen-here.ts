import type { Facts } from '../../src/book/chapter.ts';
import { type Day, daysBetween } from '../../src/day.ts';
import { because, type Figure, happened } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { Crop, Variety } from '../../src/garden/garden.ts';
import type { CropYear } from '../../src/ledger/year/crop-year.ts';

/** Days to spare under which one cool summer is enough to miss: two weeks, a judgement, no source. */
const TIGHT_DAYS = 14;

/** The days a crop has here, from planting out to the end of the summer. */
export interface TimeHere {
  readonly crop: Crop;
  readonly names: { readonly one: string; readonly many: string };
  readonly planted: Day | null;
  readonly ends_on: Day | null;
  /** `frost`: the first of autumn, no earlier in `held` of `years` years; `season`: the end of the season, as this garden sets it. */
  readonly ends_with: 'frost' | 'season';
  readonly held: number;
  readonly years: number;
  readonly days: Figure;
  readonly varieties: readonly RipensHere[];
}

/** `enough`, `tight` and `too-long` weigh the days needed against the days here; `unknown` where either is missing. */
export type Verdict = 'enough' | 'tight' | 'too-long' | 'unknown';

export interface RipensHere {
  readonly id: string;
  readonly name: string;
  /** Days from planting out to the first ripe fruit: this garden's slowest season, else the packet's, else the crop's. */
  readonly needs: Figure;
  /** `packet-less-pot`: counted from sowing, the fewest days in the pot taken off; `packet-unsure`: from a day it does not name. */
  readonly from: 'own' | 'packet' | 'packet-less-pot' | 'packet-unsure' | 'crop' | null;
  readonly stated_days: number | null;
  readonly seasons: number;
  readonly spare: Figure;
  readonly verdict: Verdict;
}

/** Crop by crop, in the order of their ids, every variety written down. */
export const timesHere = (facts: Facts): TimeHere[] => facts.ledger.years.map((year) => timeHere(facts, year));

function timeHere(facts: Facts, year: CropYear): TimeHere {
  const { crop, plan, planting_out } = year;
  const { garden, ledger } = facts;
  const frost = ledger.frosts?.first_of_autumn ?? null;
  const frost_on = frost?.day ?? null;
  const is_frost = plan !== null && frost_on !== null && frost_on < plan.ends_on;
  const ends_on = is_frost ? frost_on : (plan?.ends_on ?? null);
  const planted = planting_out?.day ?? null;
  const plantings = garden.seasons
    .flatMap((season) => season.plantings)
    .filter(({ variety }) => variety?.crop.id === crop.id);
  const days = happened({
    id: `variety.ripen-here.${crop.id}.days`,
    value: planted && ends_on && planted < ends_on ? daysBetween(planted, ends_on) : null,
    unit: 'days',
    n: planting_out?.count ?? 0,
    method: 'time-to-ripen',
    basis: ledger.bases.of(plantings.map(({ key }) => key)),
    reason: planted && ends_on && planted < ends_on ? null : because('no-planting-out'),
  });
  return {
    crop,
    names: cropNames(crop, garden.about.locale),
    planted,
    ends_on,
    ends_with: is_frost ? 'frost' : 'season',
    held: is_frost ? (frost?.held ?? 0) : 0,
    years: is_frost ? (frost?.years ?? 0) : 0,
    days,
    varieties: garden.varieties
      .filter((variety) => variety.crop.id === crop.id)
      .map((variety) => ripensHere(facts, year, variety, days)),
  };
}

function ripensHere({ ledger }: Facts, year: CropYear, variety: Variety, days: Figure): RipensHere {
  const own = (ledger.varieties.get(variety.id) ?? [])
    .map(({ first_pick_days }) => first_pick_days)
    .filter(({ value }) => value !== null);
  const { value: needed, from } = neededOf(own, year, variety);
  const basis = ledger.bases.of(
    (ledger.varieties.get(variety.id) ?? []).flatMap(({ first_pick }) => first_pick?.keys ?? []),
  );
  const figure = (name: string, value: number | null): Figure =>
    happened({
      id: `variety.ripen-here.${variety.id}.${name}`,
      value,
      unit: 'days',
      n: from === 'own' ? own.length : 0,
      method: 'time-to-ripen',
      basis,
      reason: value === null ? because(needed === null ? 'no-days-stated' : 'no-planting-out') : null,
    });
  const spare = needed === null || days.value === null ? null : days.value - needed;
  return {
    id: variety.id,
    name: variety.name,
    needs: figure('needs', needed),
    from,
    stated_days: variety.stated_days,
    seasons: own.length,
    spare: figure('spare', spare),
    verdict: verdictOf(spare),
  };
}

function verdictOf(spare: number | null): Verdict {
  if (spare === null) return 'unknown';
  if (spare < 0) return 'too-long';
  return spare < TIGHT_DAYS ? 'tight' : 'enough';
}

function neededOf(own: readonly Figure[], { crop, bands }: CropYear, variety: Variety) {
  const told = (value: number | null, from: RipensHere['from']) => ({ value, from });
  if (own.length > 0) return told(Math.max(...own.map(({ value }) => value ?? 0)), 'own');
  const { stated_days: stated, stated_days_from: counted_from } = variety;
  if (stated === null) {
    const of_crop = crop.ripe_days?.planted_days_low ?? null;
    return told(of_crop, of_crop === null ? null : 'crop');
  }
  if (counted_from === 'planting') return told(stated, 'packet');
  const in_pot = bands.sow ? -bands.sow.to_days : 0;
  if (counted_from === 'sowing' && in_pot > 0 && in_pot < stated) return told(stated - in_pot, 'packet-less-pot');
  return told(stated, 'packet-unsure');
}
