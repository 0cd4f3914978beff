import { id } from '../field/id.ts';
import { record } from '../field/record.ts';
import { sources, words } from './trait.ts';

/** Something that goes wrong with a crop: how it looks, what it is not, and what can be done without a dose of anything. */
export const troubleSchema = record({
  id: id('Trouble'),
  names: words('Name', 40),
  looks: words('How it looks', 160),
  does: words('What to do', 160),
  sources,
});
