/** Hundredths of a kg as a person reads them off a scale of 10 g: 345 is 3.45. */
export const kgText = (hundredths: number): string => (hundredths / 100).toFixed(2);
