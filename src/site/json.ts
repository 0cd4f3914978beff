/** A value as the text of a JSON file: one key a line, a line break at its end. */
export const json = (value: unknown): string => `${JSON.stringify(value, null, 1)}\n`;
