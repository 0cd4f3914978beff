import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';
import type { PlantingRecord } from '../records/planting.ts';
import type { Planting } from './garden.ts';

/** A warning where register and pickings of one planting do not count the same fruits. */
export function checkCounts(entries: readonly Entry<PlantingRecord>[], plantings: readonly Planting[]): Problem[] {
  return plantings.flatMap((planting) => {
    const entry = entries.find(({ record }) => record.id === planting.id);
    const register = planting.fruits.filter(({ fate }) => fate === 'picked').length;
    const pickings = planting.pickings.reduce((sum, { count }) => sum + count, 0);
    if (!entry || register === 0 || planting.pickings.length === 0 || register === pickings) return [];
    const message = `the register has ${register} picked fruits of ${planting.id}, the pickings ${pickings}: ${Math.abs(register - pickings)} apart`;
    return [
      problemIn(entry, ['id'], {
        severity: 'warning',
        code: 'counts-differ',
        message,
        hint: 'totals take the larger count; the two are never added',
      }),
    ];
  });
}
