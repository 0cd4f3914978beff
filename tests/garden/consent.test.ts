import { describe, expect, test } from 'vitest';
import { keepersOf, publishedBy } from '../../src/garden/consent.ts';
import { EVENT_KINDS } from '../../src/garden/event.ts';
import { linkTexts, placesOf, textsIn, withChange } from '../reading/garden-texts.ts';

const PEOPLE = 'people.yaml';
const VARIETIES = 'varieties.yaml';
const VISITS = 'seasons/2025/visits.yaml';
const SCOUTING = 'seasons/2025/scouting.yaml';
const starter = textsIn('data/starter');

const agreed = '- {id: JK, code: K4, name: Jossamy Kettlewick, agreed_on: 2024-03-02}\n';
const withdrawn = '- {id: TS, code: F2, name: Tamsel Sallowfield, agreed_on: 2024-03-02, withdrawn_on: 2025-09-01}\n';
const unasked = '- {id: BL, code: H7, name: Brenna Lockmere, note: not asked yet}\n';
const everybody = agreed + withdrawn + unasked;

const withPeople = (people: string, more: Readonly<Record<string, string>> = {}) => ({
  ...starter,
  [PEOPLE]: people,
  ...more,
});

describe('who may be named', () => {
  const people = linkTexts(withPeople(everybody)).garden?.people ?? [];

  test('people stand by their codes', () => expect(people.map(({ code }) => code)).toEqual(['F2', 'H7', 'K4']));

  test('only somebody who agreed and did not take it back; else the code, and nothing for a stranger', () => {
    const by = publishedBy(people);
    expect(['JK', 'TS', 'BL', 'jk', 'Jossamy Kettlewick', 'toString', null].map(by)).toEqual([
      'Jossamy Kettlewick',
      'F2',
      'H7',
      null,
      null,
      null,
      null,
    ]);
    expect(publishedBy([])('JK')).toBeNull();
  });

  test('the others are counted', () => {
    expect(keepersOf(people)).toEqual({ named: ['Jossamy Kettlewick'], unnamed: 2 });
    expect(keepersOf([])).toEqual({ named: [], unnamed: 0 });
  });
});

describe('people that contradict each other', () => {
  const CASES: readonly [string, string, string[]][] = [
    ['everybody as they should be', everybody, []],
    ['an id twice', agreed + unasked.replace('BL', 'jk'), ['2:8 duplicate-id']],
    ['a code twice, capitals aside', agreed + unasked.replace('H7', 'k4'), ['2:18 duplicate-code']],
    ['a code that is the id of somebody else', agreed + unasked.replace('H7', 'jk'), ['2:18 code-is-id']],
    ['a code that is one’s own id', unasked.replace('H7', 'bl'), ['1:18 code-is-id', '1:18 code-tells-name']],
    ['first letters as a code', agreed.replace('JK,', 'D1,').replace('K4', 'jk'), ['1:18 code-tells-name']],
    ['a name as a code', agreed.replace('K4', 'x-kettlewick'), ['1:18 code-tells-name']],
    [
      'taken back first',
      agreed.replace('agreed_on', 'withdrawn_on: 2024-03-01, agreed_on'),
      ['1:62 withdrawn-before-agreed'],
    ],
    ['refused, and never agreed', unasked.replace('note:', 'withdrawn_on: 2024-03-01, note:'), []],
    ['agreed and taken back on one day', withdrawn.replace('2025-09-01', '2024-03-02'), []],
  ];
  for (const [name, people, places] of CASES) {
    test(name, () => expect(placesOf(withPeople(people))).toEqual(places.map((place) => `${PEOPLE}:${place}`)));
  }
});

describe('a record by somebody', () => {
  const visits = starter[VISITS] ?? '';
  const by = (id: string, count = 1) =>
    Array.from(
      { length: count },
      (_, index) => `- {id: X${index}, visited_on: 2025-08-0${index + 1}, by: ${id}, fruits: []}\n`,
    ).join('');
  const found = (people: string | null, id: string, count?: number) => {
    const texts = { ...starter, [VISITS]: visits + by(id, count) };
    return linkTexts(people === null ? texts : { ...texts, [PEOPLE]: people }).problems;
  };

  test('is no problem for anybody listed, nor where nobody is', () => {
    expect(found(everybody, 'TS')).toEqual([]);
    expect(found(null, 'NOBODY')).toEqual([]);
  });

  test('is warned of once for each stranger, with a near id', () => {
    const line = visits.split('\n').length;
    expect(found(everybody, 'NOBODY', 3)).toMatchObject([
      { severity: 'warning', code: 'by-unlisted', file: VISITS, line, record: 'X0', field: 'by' },
    ]);
    expect(found(everybody, 'NOBODY', 3)[0]?.message).toContain('2 more');
    expect(found(everybody, 'ts')[0]?.hint).toContain('TS');
    expect(found('', 'TS')).toMatchObject([{ code: 'by-unlisted' }]);
  });

  test('is warned of in every kind of the diary, a second stranger by themselves', () => {
    const diary = {
      sowings: '- {sown_on: 2025-04-26, seeds: 4, by: XA}\n',
      mulching: '- {laid_on: 2025-06-10, material: straw, by: XB}\n',
      feeding: '- {given_on: 2025-06-10, material: compost, by: XC}\n',
      waterings: '- {watered_on: 2025-07-10, cans_each: 1, by: XD}\n',
      soil: '- {felt_on: 2025-07-10, top: dry, by: XE}\n',
      dips: '- {dipped_on: 2025-07-13, depth_cm: 40, by: XF}\n',
      flowering: '- {seen_on: 2025-07-01, what: first-male, by: XG}\n',
      girths: '- {measured_on: 2025-07-20, fruit: M1-F1, girth_cm: 40, by: XH}\n',
      scouting: '- {looked_on: 2025-07-05, found: none, by: XI}\n',
      keeping: '- {ended_on: 2025-08-30, fruit: M1-F1, ended: eaten-sound, by: XJ}\n',
      shares: '- {shared_on: 2025-08-20, to: home, by: XK}\n',
      tastings: '- {tasted_on: 2025-08-20, fruit: M1-F1, against: M1-F2, by: XL}\n',
    };
    expect(Object.keys(diary)).toEqual(EVENT_KINDS);
    const texts = Object.fromEntries(Object.entries(diary).map(([kind, text]) => [`seasons/2025/${kind}.yaml`, text]));
    const { problems } = linkTexts(withPeople(everybody, texts));
    const strangers = problems.filter(({ code }) => code === 'by-unlisted');
    expect(strangers.map(({ file, line, message }) => `${file}:${line} ${message.slice(0, 4)}`).sort()).toEqual(
      Object.keys(diary)
        .map((kind, index) => `seasons/2025/${kind}.yaml:1 "X${String.fromCharCode(65 + index)}"`)
        .sort(),
    );
    expect(strangers.every(({ severity, field }) => severity === 'warning' && field === 'by')).toBe(true);
  });

  test('is not called a stranger when people.yaml has faults of its own', () => {
    expect(found(everybody.replace('code: F2', 'code: F 2'), 'TS').map(({ code }) => code)).toEqual(['id-form']);
  });
});

describe('a published text that names somebody', () => {
  const NAME = 'Tamsel Sallowfield';
  /** File, key and what stands there, and what is put in its place. */
  const CASES: readonly [string, string, string, string, string][] = [
    ['the garden’s name', 'garden.yaml', 'name: ', 'Garden behind the house', `${NAME}’s garden`],
    ['a variety’s name', VARIETIES, 'name: ', 'Brindle Penny', NAME],
    ['a variety’s note', VARIETIES, 'note: ', 'Three seeds left in the packet.', `Seed of ${NAME}.`],
    ['a variety’s id', VARIETIES, 'id: ', 'brindle-penny', 'tamsel-sallowfield'],
  ];
  for (const [name, path, key, from, to] of CASES) {
    test(name, () => {
      const texts = withChange(withPeople(everybody), path, key + from, key + to);
      const { problems } = linkTexts(texts);
      const lines = String(texts[path as keyof typeof texts]).split('\n');
      const line = lines.findIndex((one) => one.includes(key + to));
      const column = (lines[line] ?? '').indexOf(to) + 1;
      expect(problems.filter(({ code }) => code === 'name-not-agreed')).toMatchObject([
        { severity: 'error', file: path, line: line + 1, column },
      ]);
      expect(linkTexts({ ...texts, [PEOPLE]: agreed }).problems.map(({ code }) => code)).not.toContain(
        'name-not-agreed',
      );
    });
  }

  test('in what was found on the leaves, at its place; not in a note beside it', () => {
    const look = (rest: string): Readonly<Record<string, string>> =>
      withPeople(everybody, { [SCOUTING]: `- {looked_on: 2025-07-05, found: other, ${rest}}\n` });
    expect(placesOf(look(`what: the goat of ${NAME}`))).toEqual([`${SCOUTING}:1:47 name-not-agreed`]);
    expect(placesOf(look('what: the goat of Jossamy Kettlewick'))).toEqual([]);
    expect(placesOf(look(`what: a goat, note: ${NAME} let it in`))).toEqual([]);
  });

  test('on the tag of a flower, and in the id of a lot', () => {
    const tag = `- {seen_on: 2025-07-01, what: tagged, tag: ${NAME}}\n`;
    expect(codesOf({ 'seasons/2025/flowering.yaml': tag })).toEqual(['name-not-agreed']);
    const lots = `${starter['lots.yaml']}- {id: tamsel-sallowfield-23, variety: brindle-penny, from: gift}\n`;
    expect(codesOf({ 'lots.yaml': lots })).toEqual(['name-not-agreed']);
  });

  test('in the id of a fruit, wherever it is tasted', () => {
    const fruits = `${starter['seasons/2025/fruits.yaml']}- {id: tamsel-sallowfield, planting: M1, fate: growing}\n`;
    const tastings = '- {tasted_on: 2025-08-20, best_first: [M1-F1, tamsel-sallowfield]}\n';
    const { problems } = linkTexts(
      withPeople(everybody, { 'seasons/2025/fruits.yaml': fruits, 'seasons/2025/tastings.yaml': tastings }),
    );
    expect(problems.map(({ code, field }) => `${code} ${field}`)).toEqual([
      'name-not-agreed id',
      'name-not-agreed best_first.1',
    ]);
  });

  const codesOf = (texts: Readonly<Record<string, string>>): string[] =>
    linkTexts(withPeople(everybody, texts)).problems.map(({ code }) => code);
  const noted = (note: string): string[] =>
    codesOf({ [VARIETIES]: (starter[VARIETIES] ?? '').replace('Three seeds left in the packet.', note) });

  test('in a crop of the garden’s own, the name of a station, a plant, a person’s own code', () => {
    const crop =
      'id: globe\nnames: {en: tamsel sallowfield}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n';
    expect(codesOf({ 'crops/globe.yaml': crop })).toEqual(['name-not-agreed']);
    expect(codesOf({ 'weather/tamsel-sallowfield.csv': 'date,rain_mm\n2025-05-01,0\n' })).toEqual(['name-not-agreed']);
    const fruits = `${starter['seasons/2025/fruits.yaml']}- {id: Z9, planting: M1-25, plant: ${NAME}, fate: growing}\n`;
    expect(codesOf({ 'seasons/2025/fruits.yaml': fruits })).toContain('name-not-agreed');
    expect(codesOf({ [PEOPLE]: withdrawn.replace('F2', 'Tamsel-Sallowfield') })).toContain('name-not-agreed');
  });

  test('whatever its case, accents and the signs between its words', () => {
    for (const text of [NAME, 'TAMSEL SALLOWFIELD', 'Támsel-Sallowfield’s', 'tamsel  sallowfield', 'tamselsallowfield'])
      expect(noted(text), text).toEqual(['name-not-agreed']);
  });

  test('but no other word', () => {
    for (const text of ['Tamsel', 'Sallowfield', 'Tamsel Sallowfields', 'Sallowfield Tamsel', 'Jossamy Kettlewick'])
      expect(noted(text), text).toEqual([]);
  });

  test('a name without letters is in no text, and a word of a short list is no name', () => {
    expect(codesOf({ [PEOPLE]: '- {id: Q1, code: R1, name: "!!"}\n' })).toEqual([]);
    expect(codesOf({ [PEOPLE]: '- {id: Q1, code: R1, name: Picked}\n' })).toEqual([]);
  });

  test('one name of two people is printed for neither until both agreed', () => {
    const twin = '- {id: TT, code: G5, name: Tamsel Sallowfield, agreed_on: 2025-10-01}\n';
    expect(codesOf({ [PEOPLE]: everybody + twin })).toEqual(['name-not-agreed']);
  });

  test('is no matter in notes that stay in the garden', () => {
    expect(
      placesOf(withChange(withPeople(everybody), 'garden.yaml', 'The half barrel', `With ${NAME} by the half barrel`)),
    ).toEqual([]);
  });
});
