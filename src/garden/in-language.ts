/** Words of a file that gives them by language: those of the locale, else of its language; null where it has neither. */
export function inLanguage(words: Readonly<Record<string, string>> | null, locale: string): string | null {
  const language = locale.split('-')[0] ?? locale;
  return words?.[locale] ?? words?.[language] ?? null;
}
