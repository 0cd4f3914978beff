/** True for what JSON gives back exactly as it was: no NaN, no -0, no undefined, no Map, no Date. */
export function isPlainData(value: unknown): boolean {
  switch (typeof value) {
    case 'string':
    case 'boolean':
      return true;
    case 'number':
      return Number.isFinite(value) && !Object.is(value, -0);
    case 'object':
      return value === null || (Array.isArray(value) ? value.every(isPlainData) : isPlainMap(value));
    default:
      return false;
  }
}

/** A map without a prototype comes back with one: for whoever asks for own keys only, that is the same. */
function isPlainMap(value: object): boolean {
  const prototype = Object.getPrototypeOf(value);
  return (prototype === null || prototype === Object.prototype) && Object.values(value).every(isPlainData);
}
