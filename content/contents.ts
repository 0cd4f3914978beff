import type { Chapter } from '../src/book/chapter.ts';
import { calendar } from './calendar/chapter.ts';
import { cautions } from './cautions/chapter.ts';
import { colophon } from './colophon/chapter.ts';
import { diary } from './diary/chapter.ts';
import { front } from './front/chapter.ts';
import { maturity } from './maturity/chapter.ts';
import { methods } from './methods/chapter.ts';
import { papers } from './papers/chapter.ts';
import { picking } from './picking/chapter.ts';
import { rain } from './rain/chapter.ts';
import { records } from './records/chapter.ts';
import { ripe } from './ripe/chapter.ts';
import { scouting } from './scouting/chapter.ts';
import { sheets } from './sheets/chapter.ts';
import { sowing } from './sowing/chapter.ts';
import { variety } from './variety/chapter.ts';
import { weather } from './weather/chapter.ts';
import { yieldChapter } from './yield/chapter.ts';

/** The table of contents: every chapter, in reading order. */
export const contents: readonly Chapter[] = [
  front,
  calendar,
  variety,
  sowing,
  scouting,
  maturity,
  ripe,
  rain,
  picking,
  yieldChapter,
  weather,
  diary,
  sheets,
  papers,
  methods,
  cautions,
  records,
  colophon,
];
