import { IntlMessageFormat } from 'intl-messageformat';
import { parse } from 'yaml';

/** Frame words: message id and values in, text out. Throws RangeError for an id that has no words. */
export type Messages = (id: string, values?: Readonly<Record<string, string | number>>) => string;

interface Tree {
  readonly [key: string]: string | Tree;
}

/** ICU messages of a language, with a locale's own spellings over them. Both are YAML texts. */
export function createMessages(locale: string, language: string, spelling: string): Messages {
  const texts = new Map([...flatten(parse(language)), ...flatten(parse(spelling))]);
  const ready = new Map<string, IntlMessageFormat>();
  return (id, values = {}) => {
    const text = texts.get(id);
    if (text === undefined) throw new RangeError(`invalid message: there are no words for "${id}"`);
    const message = ready.get(id) ?? new IntlMessageFormat(text, locale, undefined, { ignoreTag: true });
    ready.set(id, message);
    return String(message.format({ ...values }));
  };
}

function flatten(tree: Tree | null, path = ''): [string, string][] {
  return Object.entries(tree ?? {}).flatMap(([key, value]) =>
    typeof value === 'string' ? [[`${path}${key}`, value] as [string, string]] : flatten(value, `${path}${key}.`),
  );
}
