/**
 * Pressure of vapour over water at rest with it. International Association for the Properties of Water and Steam, Industrial
 * Formulation 1997, as steam tables print it. From memory.
 */
export const OVER_WATER = [
  { temperature_c: 0.01, pressure_kpa: 0.61165 },
  { temperature_c: 10, pressure_kpa: 1.2282 },
  { temperature_c: 20, pressure_kpa: 2.3393 },
  { temperature_c: 30, pressure_kpa: 4.247 },
  { temperature_c: 40, pressure_kpa: 7.3849 },
];
