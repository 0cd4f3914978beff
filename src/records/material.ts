import { z } from 'zod';
import { choice, yesNo } from './field/choice.ts';
import { reference } from './field/id.ts';
import { record } from './field/record.ts';
import { MATERIALS } from './material-id.ts';
import { measure, words } from './trait/trait.ts';

const of100 = (title: string) => measure(title, 100).optional();

/** What is put on the ground or fed, with what it holds where a source tells; a label's own numbers go before these. */
export const materialSchema = record({
  id: choice(MATERIALS, { title: 'Material' }),
  names: words('Name', 40),
  kind: choice(['manure', 'compost', 'leaf-mould', 'mulch', 'bought-feed', 'liquid-feed', 'lime-or-ash', 'other'], {
    title: 'Kind',
  }),
  state: choice(['raw', 'dried', 'composted', 'processed', 'none'], {
    title: 'State',
    description: 'What was done to a manure or bone; none for all else.',
  }),
  n_of_100_low: of100('N of 100 parts, least'),
  n_of_100_high: of100('N of 100 parts, most'),
  p2o5_of_100_low: of100('P2O5 of 100 parts, least'),
  p2o5_of_100_high: of100('P2O5 of 100 parts, most'),
  k2o_of_100_low: of100('K2O of 100 parts, least'),
  k2o_of_100_high: of100('K2O of 100 parts, most'),
  first_year_n_of_100_low: of100('Of 100 parts of its N, used in the first year, least'),
  first_year_n_of_100_high: of100('Of 100 parts of its N, used in the first year, most'),
  kg_per_l_low: measure('Weight of a litre, kg, least', 5).optional(),
  kg_per_l_high: measure('Weight of a litre, kg, most', 5).optional(),
  manure_clock: yesNo({
    title: 'Manure clock',
    description: 'The days to the first safe picking run from the day it is given.',
  }),
  sources: z.array(reference('Source')).meta({ title: 'Sources' }),
});

export type MaterialRecord = z.output<typeof materialSchema>;
