import type { Page } from '../book/page.ts';

/** File of a paper to carry out, from the path of its page: `cards/ripe-crop.pdf` of the card `ripe/card/crop/`. */
export function paperName({ path, form }: Page): string {
  const segments = path.split('/').filter((segment) => segment !== '' && segment !== form && segment !== `${form}s`);
  return `${form}s/${segments.join('-')}.pdf`;
}
