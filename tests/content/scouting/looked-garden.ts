/** Texts of a garden of three mounds of an own crop, planted on 20 May 2025, with the looks told. */
export const lookedGarden = (
  scouting: string,
  { edition = 'community', crop = '' }: { readonly edition?: string; readonly crop?: string } = {},
): Record<string, string> => ({
  'garden.yaml': `name: Test plot\nedition: ${edition}\nunits: metric\npaper: A4\nlocale: en-GB\nbeds: [{id: E, area_m2: 8}]\nspots:\n  - {id: S1, kind: mound, bed: E}\n  - {id: S2, kind: mound, bed: E}\n  - {id: S3, kind: mound}\n`,
  'crops/globe.yaml': `id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n${crop}`,
  'varieties.yaml': '- {id: amber, name: Amber, crop: globe, seed: unknown}\n',
  'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-10-31\n',
  'seasons/2025/plantings.yaml': ['S1', 'S2', 'S3']
    .map((spot) => `- {id: P${spot}, spot: ${spot}, variety: amber, planted_on: 2025-05-20, plants_set: 4}\n`)
    .join(''),
  ...(scouting && { 'seasons/2025/scouting.yaml': scouting }),
});

/** A mildew that came after 1 July, first in S1 and S2, and was gone from S3 by 15 September. */
export const MILDEW = `
- {looked_on: 2025-07-01, found: none, checked: 12}
- {looked_on: 2025-08-10, found: mildew, spots: [S1, S2], checked: 5, affected: 1, severity: 1}
- {looked_on: 2025-08-24, found: mildew, spots: [S2, S1], checked: 5, affected: 3, severity: 3}
- {looked_on: 2025-09-05, found: mildew, severity: 5}
- {looked_on: 2025-09-15, found: none, spots: [S3]}
`;
