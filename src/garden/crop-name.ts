import type { Crop } from './garden.ts';
import { inLanguage } from './in-language.ts';

/** A crop's name in the language of a locale, as its file gives it; its id where the file has no such language. */
export function cropNames(crop: Crop, locale: string): { one: string; many: string } {
  const one = inLanguage(crop.names, locale) ?? crop.id;
  return { one, many: inLanguage(crop.plurals, locale) ?? one };
}
