/** The other unit a measure may be written in. */
const TWINS: Readonly<Record<string, string>> = {
  mass_kg: 'mass_lb',
  girth_cm: 'girth_in',
  volume_l: 'volume_gal',
  holds_l: 'holds_gal',
  depth_cm: 'depth_in',
  height_cm: 'height_in',
  diameter_cm: 'diameter_in',
  tap_cm: 'tap_in',
};

/** The key as it was written: a mass in pounds is pointed at where it stands. */
export function writtenKey(record: object | null, key: string): string {
  const written = record as Readonly<Record<string, unknown>> | null;
  const twin = TWINS[key];
  return twin && (written?.[twin] ?? null) !== null ? twin : key;
}

/** Key and number as their keeper wrote them: "depth_in 60". */
export const asWritten = (record: object, key: string): string => {
  const own = writtenKey(record, key);
  return `${own} ${(record as Readonly<Record<string, unknown>>)[own]}`;
};
