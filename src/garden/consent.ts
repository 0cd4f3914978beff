import type { Person } from './garden.ts';

/** A name may be printed once its owner agreed, and not after they took that back, whatever the day of the book. */
export const mayBeNamed = ({ agreed_on, withdrawn_on }: Person): boolean => agreed_on !== null && withdrawn_on === null;

/** The name of somebody who agreed, else their code; null for nobody and for whoever people.yaml does not list. */
export function publishedBy(people: readonly Person[]): (by: string | null) => string | null {
  const shown = new Map(people.map((person) => [person.id, mayBeNamed(person) ? person.name : person.code]));
  return (by) => (by === null ? null : (shown.get(by) ?? null));
}

/** Who may be thanked by name, in the order of their codes, and how many may not. */
export const keepersOf = (
  people: readonly Person[],
): { readonly named: readonly string[]; readonly unnamed: number } => {
  const named = people.filter(mayBeNamed).map(({ name }) => name);
  return { named, unnamed: people.length - named.length };
};
