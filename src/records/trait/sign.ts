import { z } from 'zod';
import { amount } from '../field/amount.ts';
import { coded, yesNo } from '../field/choice.ts';
import { id, reference } from '../field/id.ts';
import { record } from '../field/record.ts';
import { text } from '../field/text.ts';
import { PARTED, SIGNS } from '../sign.ts';

/** The steps that count as the sign showing, by the field that tells them. */
const shownSchema = record({
  tendril: z.array(coded(SIGNS.tendril)).optional(),
  ground_spot: z.array(coded(SIGNS.ground_spot)).optional(),
  sound: z.array(coded(SIGNS.sound)).optional(),
  rind: z.array(coded(SIGNS.rind)).optional(),
  nail: z.array(coded(SIGNS.nail)).optional(),
  stalk: z.array(coded(SIGNS.stalk)).optional(),
  ground_colour: z.array(coded(SIGNS.ground_colour)).optional(),
  smell: z.array(coded(SIGNS.smell)).optional(),
  slip: z.array(coded(SIGNS.slip)).optional(),
  parted: z.array(coded(PARTED)).optional(),
});

/** Words by language, short enough for a line of the pocket card. */
const words = (title: string, longest: number) => z.record(z.string(), text(title, longest)).meta({ title });

/** An outside sign by which a crop's keepers judge it ready, in the order they look. */
export const cropSignSchema = record({
  id: id('Sign'),
  drawing: id('Drawing'),
  names: words('Sign', 20),
  helps: words('Line of help', 30),
  on_card: yesNo({ title: 'On the pocket card' }),
  shown: shownSchema.optional().meta({ title: 'Steps that count', description: 'Left out where no record tells it.' }),
  sources: z.array(reference('Source')).meta({ title: 'Sources' }),
});

const days = (title: string) => amount({ min: 0, max: 400, about: false }).meta({ title });

/** When to begin looking: days to ripe as sources have them, from set and from planting out. */
export const ripeDaysSchema = record({
  set_days_low: days('Fewest days from set'),
  set_days_high: days('Most days from set'),
  planted_days_low: days('Fewest days from planting out').optional(),
  sources: z.array(reference('Source')).meta({ title: 'Sources' }),
});

export type CropSignRecord = z.output<typeof cropSignSchema>;
