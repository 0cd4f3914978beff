import { z } from 'zod';
import { amount } from './field/amount.ts';
import { choice, yesNo } from './field/choice.ts';
import { count } from './field/count.ts';
import { degrees } from './field/degrees.ts';
import { id, reference } from './field/id.ts';
import { quantity } from './field/quantity.ts';
import { record } from './field/record.ts';
import { note, text } from './field/text.ts';
import { lossesSchema } from './losses.ts';
import { SOILS } from './soil-id.ts';
import { tankSchema } from './tank.ts';
import { weightsSchema } from './weights.ts';

const area = quantity('area')('area', { min: 0.01, max: 100_000 }, { title: 'Area' });

const soil = choice(SOILS, { title: 'Soil', description: 'Texture by feel or from a soil test.' }).optional();

const bedSchema = record({ id: id('Bed'), ...area, soil, note });

const spotSchema = record({
  id: id('Spot', 'A place one planting stands in: its own short name, painted on its label.'),
  kind: choice(['mound', 'row', 'tub', 'bed'], { title: 'Kind' }),
  bed: reference('Bed it lies in').optional(),
  ...area,
  soil,
  ...quantity('area')(
    'canopy',
    { min: 0.01, max: 1000 },
    { title: 'Ground under leaves, full grown', description: 'Vines shade far more than the spot they stand on.' },
  ),
  ...quantity('area')('bowl', { min: 0.01, max: 100 }, { title: 'Bowl or strip that is watered' }),
  ...quantity('length')('soil_depth', { min: 5, max: 300 }, { title: 'Depth of good soil', about: false }),
  note,
});

const placeSchema = record({
  latitude: degrees('Latitude', 90),
  longitude: degrees('Longitude', 180),
  ...quantity('height')('elevation', { min: -430, max: 6000 }, { title: 'Height above the sea' }),
  by_the_sea: yesNo({ title: 'By the sea' }).optional(),
  dry_air: yesNo({ title: 'Dry air, hardly any dew' }).optional(),
});

const weatherSchema = record({
  station: reference('Station', []),
  read: choice(['morning', 'evening', 'midnight'], {
    title: 'Read in the',
    description:
      'When gauge and thermometers are read. A morning reading of rain and of the highest temperature belongs to the day before.',
  }),
  ...quantity('height')('wind', { min: 0.5, max: 50 }, { title: 'Wind gauge above the ground', about: false }),
});

/** What counts as hot, cool, wet, dry and soaking; a blank takes the house's figure. */
const thresholdsSchema = record({
  ...quantity('temperature')('hot_day', { min: 0, max: 60 }, { title: 'Hot day, highest from', about: false }),
  ...quantity('temperature')('cool_night', { min: -20, max: 40 }, { title: 'Cool night, lowest under', about: false }),
  ...quantity('rain')('wet_day', { min: 0.1, max: 100 }, { title: 'Wet day, rain from', about: false }),
  ...quantity('rain')('soaking_day', { min: 1, max: 500 }, { title: 'Soaking day, rain from', about: false }),
  dry_spell_days: count({ title: 'Dry spell, days from', max: 100 }).optional(),
});

/** How the book adds up heat; a blank takes the house's choice. */
const heatUnitsSchema = record({
  method: choice(['average', 'clipped', 'sine', 'triangle'], {
    title: 'Method',
    description: 'How the warmth of a day is reckoned from its highest and lowest temperature.',
  }).optional(),
  ...quantity('temperature')('base', { min: -10, max: 30 }, { title: 'Base', about: false }),
  ...quantity('temperature')('cap', { min: 10, max: 60 }, { title: 'Cap', about: false }),
});

/** How rain is held against sugar; a blank takes the house's choice. */
const sugarSchema = record({
  rain_days: count({ title: 'Days of rain before picking', max: 14, about: false }).optional(),
  tongue_brix: amount({ min: 0.1, max: 5, about: false }).meta({ title: 'What a tongue can tell, °Brix' }).optional(),
});

/** What a can and a barrow hold here; a blank takes the house's figure. Measure the can once. */
const measuresSchema = record({
  ...quantity('volume')('can', { min: 0.5, max: 50 }, { title: 'One can' }),
  ...quantity('volume')('barrow', { min: 20, max: 300 }, { title: 'One barrow' }),
});

/** The garden itself: where it lies, how its book is printed, and the places things grow in. One map. */
export const gardenSchema = record({
  name: text('Name', 80),
  place: placeSchema.optional(),
  edition: choice(['home', 'community'], { title: 'Edition' }),
  units: choice(['metric', 'us'], { title: 'Units in print' }),
  paper: choice(['A4', 'Letter'], { title: 'Paper' }),
  locale: choice(['en-GB', 'en-US', 'en-NZ', 'en-AU'], { title: 'Language of the frame' }),
  weather: weatherSchema.optional(),
  thresholds: thresholdsSchema.optional(),
  heat_units: heatUnitsSchema.optional(),
  sugar: sugarSchema.optional(),
  measures: measuresSchema.optional().meta({ title: 'Measures' }),
  weights: weightsSchema.optional().meta({ title: 'What matters to us' }),
  losses: lossesSchema.optional().meta({ title: 'What a spoilt fruit costs us' }),
  tank: tankSchema.optional().meta({ title: 'Tank' }),
  beds: z.array(bedSchema).optional().meta({ title: 'Beds' }),
  spots: z.array(spotSchema).meta({ title: 'Spots' }),
  note,
});

export type GardenRecord = z.output<typeof gardenSchema>;
export type SpotRecord = z.output<typeof spotSchema>;
export type BedRecord = z.output<typeof bedSchema>;
