import { TEXT } from '../../src/book/field-holds.ts';
import type { Table } from '../../src/book/table.ts';
import { mayBeNamed } from '../../src/garden/consent.ts';
import type { Person } from '../../src/garden/garden.ts';

/** Whoever keeps the records, by code. Built by hand, so that a new key of people.yaml is never given away unasked. */
export const peopleTable = (people: readonly Person[]): Table => ({
  id: 'people',
  title: 'People',
  primaryKey: ['code'],
  columns: [
    { key: 'code', title: 'Code', unit: null, holds: { ...TEXT, required: true } },
    {
      key: 'name',
      title: 'Name',
      unit: null,
      holds: { ...TEXT, description: 'Only of those who agreed to be named and have not taken that back.' },
    },
  ],
  rows: people.map((person) => [person.code, mayBeNamed(person) ? person.name : null]),
});
