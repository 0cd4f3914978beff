import { inLanguage } from '../garden/in-language.ts';
import type { Reference } from './chapter.ts';

/** What a material is called in a language; its id stands for a name that nobody wrote. */
export const materialName = ({ materials }: Reference, id: string, locale: string): string =>
  inLanguage(materials.find((one) => one.id === id)?.names ?? null, locale) ?? id;
