/** A name for files and addresses: small letters and digits, parts joined by hyphens; the other where nothing is left. */
export function slug(text: string, other: string): string {
  const plain = text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  return plain.replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '') || other;
}
