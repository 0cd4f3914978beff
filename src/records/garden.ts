import { z } from 'zod';
import { choice } from './field/choice.ts';
import { degrees } from './field/degrees.ts';
import { id, reference } from './field/id.ts';
import { quantity } from './field/quantity.ts';
import { record } from './field/record.ts';
import { note, text } from './field/text.ts';

const area = quantity('area')('area', { min: 0.01, max: 100_000 }, { title: 'Area' });

const soil = choice(
  [
    'sand',
    'loamy-sand',
    'sandy-loam',
    'loam',
    'silt-loam',
    'silt',
    'clay-loam',
    'silty-clay-loam',
    'silty-clay',
    'clay',
    'potting-mix',
    'unknown',
  ],
  { title: 'Soil', description: 'Texture by feel or from a soil test.' },
).optional();

const bedSchema = record({ id: id('Bed'), ...area, soil, note });

const spotSchema = record({
  id: id('Spot', 'A place one planting stands in: its own short name, painted on its label.'),
  kind: choice(['mound', 'row', 'tub', 'bed'], { title: 'Kind' }),
  bed: reference('Bed it lies in').optional(),
  ...area,
  soil,
  note,
});

const placeSchema = record({
  latitude: degrees('Latitude', 90),
  longitude: degrees('Longitude', 180),
  ...quantity('height')('elevation', { min: -430, max: 6000 }, { title: 'Height above the sea' }),
});

const weatherSchema = record({
  station: reference('Station', []),
  read: choice(['morning', 'evening', 'midnight'], {
    title: 'Read in the',
    description:
      'When gauge and thermometers are read. A morning reading of rain and of the highest temperature belongs to the day before.',
  }),
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
  beds: z.array(bedSchema).optional().meta({ title: 'Beds' }),
  spots: z.array(spotSchema).meta({ title: 'Spots' }),
  note,
});

export type GardenRecord = z.output<typeof gardenSchema>;
export type SpotRecord = z.output<typeof spotSchema>;
export type BedRecord = z.output<typeof bedSchema>;
