/**
 * Litres a year off 50 m² in Seattle, 2012 to 2015, of which the first millimetres of each wet spell are thrown away:
 * an independent program, R package foreSIGHT, R/demoTankModel.R, function tank_model (read at cran/foreSIGHT, commit
 * 17b0a53), its lines on the first flush run by R 4.2.2 on the rain of seattle-weather/daily.ts. It takes all rain to
 * run off, the day before the first to be dry, and carries what is left of the flush over the wet days of a spell.
 * Days are those on which water reached the tank.
 */
export const FORESIGHT_ROOF_M2 = 50;
export const FORESIGHT: readonly {
  readonly flush_mm: number;
  readonly litres: Readonly<Record<string, number>>;
  readonly days: Readonly<Record<string, number>>;
}[] = [
  {
    flush_mm: 1,
    litres: { '2012': 59_050, '2013': 38_860, '2014': 59_385, '2015': 54_425 },
    days: { '2012': 166, '2013': 131, '2014': 132, '2015': 125 },
  },
  {
    flush_mm: 4,
    litres: { '2012': 53_605, '2013': 33_070, '2014': 53_515, '2015': 48_525 },
    days: { '2012': 143, '2013': 97, '2014': 118, '2015': 107 },
  },
];
