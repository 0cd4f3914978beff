import type { Facts } from '../book/chapter.ts';
import { keepersOf } from '../garden/consent.ts';
import type { Messages } from './messages.ts';

/** What the records are and how far they go, in plain sentences. */
export function describeData({ garden, today, format }: Facts, messages: Messages): string {
  const { unnamed } = keepersOf(garden.people);
  const labels = garden.seasons.map(({ label }) => label);
  return [
    messages('sharing.what', { garden: garden.about.name }),
    ...(labels.length > 0 ? [messages('sharing.seasons', { n: labels.length, labels: labels.join(', ') })] : []),
    ...(today === null ? [] : [messages('sharing.to', { day: format.dayYear(today) })]),
    messages('sharing.people'),
    ...(unnamed > 0 ? [messages('sharing.unnamed', { n: unnamed })] : []),
    ...(garden.about.place ? [messages('sharing.place')] : []),
  ].join(' ');
}
