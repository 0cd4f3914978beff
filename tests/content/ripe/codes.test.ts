import { describe, expect, test } from 'vitest';
import { cropSchema } from '../../../src/records/crop.ts';
import { fruitSchema } from '../../../src/records/fruit.ts';
import { visitSchema } from '../../../src/records/visit.ts';

/** What the sheets' codes mean, copied off the printed sheets. */
const LOOKS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  tendril: { T0: 'green', T1: 'wilting', T2: 'half-brown', T3: 'dry' },
  ground_spot: { S0: 'none', S1: 'white', S2: 'cream', S3: 'butter', S4: 'deep' },
  sound: { H: 'ringing', L: 'hollow', D: 'dull', X: 'unsure' },
  rind: { G: 'glossy', M: 'matte' },
  nail: { N0: 'marks', N1: 'resists' },
  stalk: { K0: 'green', K1: 'drying', K2: 'corky' },
  ground_colour: { C0: 'green', C1: 'turning', C2: 'buff' },
  smell: { A0: 'none', A1: 'faint', A2: 'strong' },
  slip: { F0: 'none', F1: 'half', F2: 'full' },
  call: { R: 'ripe', N: 'not-yet', U: 'unsure' },
};
const PARTED = { P0: 'held', P1: 'with-a-tug', P2: 'at-a-lift' };
const CUTS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  state: { U: 'unripe', J: 'just-ripe', P: 'prime', O: 'over' },
  sweet: { 1: 'flat', 2: 'faint', 3: 'sweet', 4: 'very-sweet' },
  crisp: { 1: 'mushy', 2: 'soft', 3: 'firm', 4: 'crisp' },
  juicy: { 1: 'dry', 2: 'moist', 3: 'juicy', 4: 'running' },
  liked: { 1: 'no', 2: 'so-so', 3: 'yes', 4: 'very' },
  seeds: { 0: 'none', 1: 'few', 2: 'some', 3: 'in-the-way' },
  than_last: { 1: 'less', 2: 'same', 3: 'sweeter' },
};

const look = (key: string, typed: string) =>
  visitSchema.safeParse({ id: 'V1', visited_on: '2025-08-11', fruits: [{ fruit: 'F1', [key]: typed }] });
const fruit = (part: 'pick' | 'cut', key: string, typed: string) =>
  fruitSchema.safeParse({
    id: 'F1',
    planting: 'P1',
    fate: 'picked',
    [part]: { [part === 'pick' ? 'picked_on' : 'cut_on']: '2025-08-12', [key]: typed },
  });

/** The ways a code or its word may be typed. */
const typings = (code: string, word: string): string[] => [
  code,
  code.toLowerCase(),
  ` ${code} `,
  word,
  word.toUpperCase(),
  word.replaceAll('-', ' '),
];

describe('every code is read as its word, in small letters too', () => {
  test.each(Object.entries(LOOKS))('a look at %s', (key, steps) => {
    for (const [code, word] of Object.entries(steps))
      for (const typed of typings(code, word))
        expect(look(key, typed).data?.fruits[0], typed).toMatchObject({ [key]: word });
  });

  test.each(Object.entries(CUTS))('a cut told %s', (key, steps) => {
    for (const [code, word] of Object.entries(steps))
      for (const typed of typings(code, word))
        expect(fruit('cut', key, typed).data?.cut, typed).toMatchObject({ [key]: word });
  });

  test('how it came off', () => {
    for (const [code, word] of Object.entries(PARTED))
      for (const typed of typings(code, word))
        expect(fruit('pick', 'parted', typed).data?.pick?.parted, typed).toBe(word);
  });
});

test('a code of no step, or of another ladder, is refused', () => {
  const codeOf = ({ error }: ReturnType<typeof look> | ReturnType<typeof fruit>) =>
    error?.issues.map((issue) => issue.code === 'custom' && issue.params?.code);
  for (const [key, typed] of [
    ['tendril', 'T4'],
    ['tendril', 'S3'],
    ['tendril', 'T'],
    ['tendril', '2'],
    ['sound', 'L0'],
    ['sound', 'constructor'],
  ] as const)
    expect(codeOf(look(key, typed)), typed).toEqual(['unknown-word']);
  expect(codeOf(fruit('cut', 'sweet', '5'))).toEqual(['unknown-word']);
  expect(codeOf(fruit('cut', 'sweet', '0'))).toEqual(['unknown-word']);
  expect(codeOf(fruit('pick', 'parted', 'T2'))).toEqual(['unknown-word']);
});

test('a crop’s file may tell the steps that count by code or by word, and by no other', () => {
  const crop = (steps: string[]) =>
    cropSchema.safeParse({
      id: 'globe',
      names: { en: 'globe' },
      plurals: { en: 'globes' },
      slip: 'none',
      fruit_on_ground: 'yes',
      signs: [
        {
          id: 'tendril',
          drawing: 'tendril-dry',
          names: { en: 'Tendril' },
          helps: { en: 'look' },
          on_card: 'yes',
          shown: { tendril: steps },
          sources: [],
        },
      ],
    });
  expect(crop(['T2', 'dry']).data?.signs?.[0]?.shown?.tendril).toEqual(['half-brown', 'dry']);
  expect(crop(['brown']).success).toBe(false);
});
