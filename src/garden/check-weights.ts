import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';
import type { GardenRecord } from '../records/garden.ts';
import { WEIGHT_KEYS } from '../records/weights.ts';

/** An error where weights are written and none of them is above 0: by such weights everything is alike. */
export function checkWeights(garden: Entry<GardenRecord> | null): Problem[] {
  const weights = garden?.record.weights ?? null;
  if (!garden || !weights || WEIGHT_KEYS.some((key) => (weights[key] ?? 0) > 0)) return [];
  const complaint = {
    code: 'weights-all-zero',
    message: 'nothing matters: no weight is above 0',
    hint: 'write 3 beside what matters most to you, 1 or 2 beside what matters too, or delete weights',
    part: 'key' as const,
  };
  return [problemIn(garden, ['weights'], complaint)];
}
