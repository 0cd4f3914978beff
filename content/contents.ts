import type { Chapter } from '../src/book/chapter.ts';
import { cautions } from './cautions/chapter.ts';
import { colophon } from './colophon/chapter.ts';
import { diary } from './diary/chapter.ts';
import { front } from './front/chapter.ts';
import { maturity } from './maturity/chapter.ts';
import { methods } from './methods/chapter.ts';
import { rain } from './rain/chapter.ts';
import { records } from './records/chapter.ts';
import { ripe } from './ripe/chapter.ts';
import { sheets } from './sheets/chapter.ts';
import { sowing } from './sowing/chapter.ts';
import { variety } from './variety/chapter.ts';
import { weather } from './weather/chapter.ts';
import { yieldChapter } from './yield/chapter.ts';

/** The table of contents: every chapter, in reading order. */
export const contents: readonly Chapter[] = [
  front,
  variety,
  sowing,
  maturity,
  ripe,
  rain,
  yieldChapter,
  weather,
  diary,
  sheets,
  methods,
  cautions,
  records,
  colophon,
];
