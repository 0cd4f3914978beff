import type { Crop } from './garden.ts';

/** Every source a crop's file leans on, each once, in the order of the file. */
export const cropSources = (crop: Crop): string[] => [...new Set(sourcesIn(crop))];

function sourcesIn(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(sourcesIn);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => {
    if (key === 'source' && typeof inner === 'string') return [inner];
    if (key === 'sources' && Array.isArray(inner)) return inner.filter((one) => typeof one === 'string');
    return sourcesIn(inner);
  });
}
