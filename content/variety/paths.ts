import type { Crop, Variety } from '../../src/garden/garden.ts';

/** The page of a variety, below the site. Ids are unique whatever their case. */
export const pathOf = ({ id }: Variety): string => `variety/${id.toLowerCase()}/`;

/** The report on the varieties of a crop. No variety is called so: `all` is reserved. */
export const trialPath = ({ id }: Crop): string => `variety/all/${id.toLowerCase()}/`;
