import type { Crop } from './garden.ts';

/** A crop's name in the language of a locale, as its file gives it; its id where the file has no such language. */
export function cropNames(crop: Crop, locale: string): { one: string; many: string } {
  const language = locale.split('-')[0] ?? locale;
  const one = crop.names[locale] ?? crop.names[language] ?? crop.id;
  return { one, many: crop.plurals[locale] ?? crop.plurals[language] ?? one };
}
