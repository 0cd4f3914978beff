import type { Fact } from '../garden-facts.ts';

/** None of these gardens looked a fruit over before it was cut: no sign has a worth, and no two a worth together. */
const NEVER: NonNullable<Fact['never']> = [/times as often/, /May be worth nothing/, /With every sign/, /Would the signs together/, /by lot/];

const fact = (why: string, says: NonNullable<Fact['says']> = [], never: NonNullable<Fact['never']> = []): Fact => ({
  page: 'ripe/',
  says,
  never: [...NEVER, ...never],
  why,
});

/** In a home book the signs are not put together at all. */
const AT_HOME = [/signs together/];

export const RIPE_FACTS: Readonly<Record<string, readonly Fact[]>> = {
  'day-zero': [fact('nothing is cut, and the book is for a home', [], AT_HOME)],
  'eight-plants': [fact('nine cuts, none unripe and none looked over, in a home book', [], AT_HOME)],
  'notebook-years': [fact('pickings alone, in a home book', [], AT_HOME)],
  'no-instruments': [fact('six cuts of which one was unripe, none looked over, in a home book', [], AT_HOME)],
  'ten-unblocked': [
    fact('pickings alone: no cut', [/And the signs together\? Nothing is cut, so signs cannot be put together yet\./]),
  ],
  southern: [
    fact('four cuts, all ripe, none looked over', [
      'Of no fruit that was cut is it written down what it showed on the vine, so signs cannot be put together yet.',
    ]),
  ],
  'us-letter': [
    fact('four cuts, all ripe, none looked over', [
      'Of no fruit that was cut is it written down what it showed on the vine, so signs cannot be put together yet.',
    ]),
  ],
  'one-crop': [fact('its own crop names no sign', [], [/signs together/, 'each sign worth'])],
};
