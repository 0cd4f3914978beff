import type { Chapter } from '../src/book/chapter.ts';
import { calendar } from './calendar/chapter.ts';
import { cautions } from './cautions/chapter.ts';
import { colophon } from './colophon/chapter.ts';
import { diary } from './diary/chapter.ts';
import { feed } from './feed/chapter.ts';
import { flowers } from './flowers/chapter.ts';
import { front } from './front/chapter.ts';
import { ground } from './ground/chapter.ts';
import { maturity } from './maturity/chapter.ts';
import { methods } from './methods/chapter.ts';
import { mulch } from './mulch/chapter.ts';
import { next } from './next/chapter.ts';
import { papers } from './papers/chapter.ts';
import { picking } from './picking/chapter.ts';
import { rain } from './rain/chapter.ts';
import { records } from './records/chapter.ts';
import { ripe } from './ripe/chapter.ts';
import { scouting } from './scouting/chapter.ts';
import { seed } from './seed/chapter.ts';
import { sheets } from './sheets/chapter.ts';
import { sowing } from './sowing/chapter.ts';
import { thinning } from './thinning/chapter.ts';
import { variety } from './variety/chapter.ts';
import { water } from './water/chapter.ts';
import { weather } from './weather/chapter.ts';
import { yieldChapter } from './yield/chapter.ts';

/** The table of contents: every chapter, in reading order. */
export const contents: readonly Chapter[] = [
  front,
  calendar,
  variety,
  sowing,
  ground,
  mulch,
  feed,
  water,
  flowers,
  thinning,
  scouting,
  maturity,
  ripe,
  rain,
  picking,
  yieldChapter,
  seed,
  next,
  weather,
  diary,
  sheets,
  papers,
  methods,
  cautions,
  records,
  colophon,
];
