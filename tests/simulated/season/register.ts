import type { Chance } from '../chance.ts';
import { listText, type Row } from '../yaml-text.ts';
import { dayText } from './calendar.ts';
import { cutRows } from './cuts.ts';
import type { Ending, Picked } from './ending.ts';
import { setRow } from './first-seen.ts';
import type { Grown } from './grown.ts';
import { writtenLate } from './late.ts';
import { type Slips, slips } from './slips.ts';
import type { Year } from './year.ts';

const KG_IN_LB = 0.45359237;

/** A season's fruits.yaml. */
export function registerText(
  grown: readonly Grown[],
  reading_sd: number,
  rates: Slips,
  year: Year,
  chance: Chance,
): string {
  const cuts = cutRows(grown, reading_sd, rates, chance);
  return listText(grown.map((one) => fruitRow(one, cuts.get(one.life.id) ?? null, rates, year, chance)));
}

function fruitRow(one: Grown, cut: Row | null, rates: Slips, year: Year, chance: Chance): Row {
  const { life, ending, truth } = one;
  return {
    id: life.id,
    planting: life.planting,
    plant: life.plant,
    fate: ending.fate,
    set: setRow(one, rates, year, chance),
    ...(ending.fate === 'picked'
      ? { pick: pickRow(ending, truth.pick?.kg ?? 0, rates, chance) }
      : { end: endRow(ending, rates, chance) }),
    ...(cut && { cut }),
  };
}

function pickRow(ending: Picked, kg: number, rates: Slips, chance: Chance): Row {
  const unsaid = slips(rates.condition_missing, chance);
  return {
    picked_on: dayText(ending.day),
    reason: ending.reason,
    ...massRow(kg, rates, chance),
    ...(unsaid ? {} : { condition: ending.condition }),
    by: ending.by,
    ...writtenLate(ending.day, rates, chance),
  };
}

function massRow(kg: number, { mass_missing, mass_in_lb }: Slips, chance: Chance): Row {
  const missing = slips(mass_missing, chance);
  const pounds = slips(mass_in_lb, chance);
  if (missing) return {};
  return pounds ? { mass_lb: (kg / KG_IN_LB).toFixed(1) } : { mass_kg: kg.toFixed(2) };
}

/** A loss nobody saw happen is dated by the walks it lies between, half the time. */
function endRow(ending: Exclude<Ending, Picked>, rates: Slips, chance: Chance): Row {
  const { day, since, lost_to, by } = ending;
  const unseen = lost_to !== null && lost_to !== 'frost' && since !== null;
  const between = unseen && chance() < 0.5;
  return {
    ended_on: between ? `${dayText(since)}..${dayText(day)}` : dayText(day),
    ...(lost_to && { lost_to }),
    by,
    ...writtenLate(day, rates, chance),
  };
}
