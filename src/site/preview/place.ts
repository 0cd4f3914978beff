/** No file is called so. */
const NOWHERE = '/';

/**
 * The file a request line asks for, below the site: `/` is `index.html`, a folder its own index. The name only ever
 * looks up a list, so `..`, a backslash or a zero byte name nothing; nor does what begins otherwise than with a stroke.
 * Null for an address whose escapes do not decode.
 */
export function placeOf(target: string): string | null {
  const path = target.split(/[?#]/, 1)[0] ?? '';
  if (!path.startsWith('/')) return NOWHERE;
  try {
    const name = decodeURIComponent(path.slice(1));
    return name === '' || name.endsWith('/') ? `${name}index.html` : name;
  } catch {
    return null;
  }
}

/** What follows `?name=` in a request line, decoded; null when there is none or it does not decode. */
export const askedFor = (target: string, name: string): string | null => {
  const { searchParams } = new URL(`x:?${target.split('?').slice(1).join('?')}`);
  return searchParams.get(name);
};
