import { expect, test } from 'vitest';
import type { Garden } from '../../src/garden/garden.ts';
import { linkTexts, placeOf, textsIn, withChange } from '../reading/garden-texts.ts';

const starter = textsIn('data/starter');
const TABLE = 'weather/back-step.csv';
const ROWS = 'date,rain_mm,rain_in,tmax_c,tmin_f\n2025-08-12,5,,30,50\n2025-08-13,,0.5,28,\n';

const withStation = (read: string): Garden | null => {
  const texts = withChange(starter, 'garden.yaml', 'read: evening ', `read: ${read} `);
  return linkTexts({ ...texts, [TABLE]: ROWS }).garden;
};
const daysOf = (garden: Garden | null) =>
  garden?.stations[0]?.days.map(({ date, rain_mm, tmax_c, tmin_c }) => [date, rain_mm, tmax_c, tmin_c]);

test('rain and the highest temperature read in the morning belong to the day before', () => {
  // Common practice of observers, no source.
  expect(daysOf(withStation('morning'))).toEqual([
    ['2025-08-11', 5, 30, null],
    ['2025-08-12', 12.7, 28, 10],
    ['2025-08-13', null, null, null],
  ]);
});

test('read in the evening or at midnight they belong to their own', () => {
  const own = [
    ['2025-08-12', 5, 30, 10],
    ['2025-08-13', 12.7, 28, null],
  ];
  expect(daysOf(withStation('evening'))).toEqual(own);
  expect(daysOf(withStation('midnight'))).toEqual(own);
});

test('of air and sun the morning tells its own dampest hour and dew, and the rest of the day before', () => {
  // Common practice of observers, no source: the air is dampest about sunrise, just before the reading, and driest in
  // the afternoon; wind and sun are sums of the day that is over.
  const table =
    'date,dew_c,rh_max_pct,rh_min_pct,wind_m_s,sun_h,solar_mj_m2\n2025-08-12,14,97,41,1.5,9.5,21\n2025-08-13,,,,3.6,,\n';
  const read = (hour: string) => {
    const texts = withChange(starter, 'garden.yaml', 'read: evening ', `read: ${hour} `);
    return linkTexts({ ...texts, [TABLE]: table }).garden?.stations[0]?.days.map(
      ({ date, dew_c, rh_max_pct, rh_min_pct, wind_m_s, sun_h, solar_mj_m2 }) => [
        date,
        dew_c,
        rh_max_pct,
        rh_min_pct,
        wind_m_s,
        sun_h,
        solar_mj_m2,
      ],
    );
  };
  expect(read('morning')).toEqual([
    ['2025-08-11', null, null, 41, 1.5, 9.5, 21],
    ['2025-08-12', 14, 97, null, 3.6, null, null],
    ['2025-08-13', null, null, null, null, null, null],
  ]);
  const own = [
    ['2025-08-12', 14, 97, 41, 1.5, 9.5, 21],
    ['2025-08-13', null, null, null, 3.6, null, null],
  ];
  expect(read('evening')).toEqual(own);
  expect(read('midnight')).toEqual(own);
});

test('dew in °F and wind in km/h or mph are filed with their twins in SI', () => {
  const texts = withChange(starter, 'garden.yaml', 'read: evening ', 'read: morning ');
  const { garden } = linkTexts({
    ...texts,
    [TABLE]: 'date,dew_f,wind_km_h,wind_mph\n2025-08-12,50,18,\n2025-08-13,,,10\n',
  });
  const days = garden?.stations[0]?.days.map(({ date, dew_c, wind_m_s }) => [date, dew_c, wind_m_s]);
  // 50 °F is 10 °C; 18 km/h is 5 m/s; one mile is 1609.344 m exactly (NIST SP 811, from memory), so 10 mph is 4.4704 m/s.
  expect(days).toEqual([
    ['2025-08-11', null, 5],
    ['2025-08-12', 10, expect.closeTo(4.4704, 12)],
    ['2025-08-13', null, null],
  ]);
});

test('only the station of the garden is read at its hour', () => {
  const texts = withChange(starter, 'garden.yaml', 'read: evening ', 'read: morning ');
  const { garden } = linkTexts({ ...texts, 'weather/far-hill.csv': ROWS });
  expect(garden?.stations.map(({ id, days }) => [id, days[0]?.date])).toEqual([
    ['back-step', '2025-08-07'],
    ['far-hill', '2025-08-12'],
  ]);
});

test('a trace is wet and measures nothing; blank is missing; zero is none', () => {
  const { garden } = linkTexts({ ...starter, [TABLE]: 'date,rain_mm\n2025-08-12,trace\n2025-08-13,\n2025-08-14,0\n' });
  expect(garden?.stations[0]?.days.map(({ rain_mm, entered }) => [rain_mm, entered.rain_mm])).toEqual([
    [0, 'trace'],
    [null, undefined],
    [0, undefined],
  ]);
});

test('a day in the table and in the list of one station is told with the other file', () => {
  const { problems } = linkTexts({
    ...starter,
    [TABLE]: ROWS,
    'weather/back-step.yaml': '# list\n- date: 2025-08-13\n  rain_mm: 1\n',
  });
  expect(problems.map(placeOf)).toEqual(['weather/back-step.yaml:2:9 day-twice']);
  expect(problems[0]?.message).toContain(`line 3 of ${TABLE}`);
});

test('a lowest above the highest is pointed at in the unit it was written in', () => {
  const { problems } = linkTexts({ ...starter, [TABLE]: 'date,tmax_c,tmin_f\n2025-08-12,10,70\n' });
  expect(problems.map(placeOf)).toEqual([`${TABLE}:2:15 min-above-max`]);
});

test('what is watered, what is shaded and how deep the soil is are kept as they were measured', () => {
  const garden = `name: Test
edition: home
units: us
paper: Letter
locale: en-US
spots:
  - {id: M1, kind: mound, area_ft2: 60, canopy_ft2: about 70, bowl_ft2: 9}
  - {id: T1, kind: tub, area_m2: 0.25, soil: potting-mix, soil_depth_in: 14}
`;
  const { spots } = linkTexts({ 'garden.yaml': garden }).garden?.about ?? { spots: [] };
  // 1 ft² = 0.09290304 m² and 1 in = 2.54 cm, exactly (NIST SP 811, from memory).
  expect(spots).toMatchObject([
    {
      canopy_m2: expect.closeTo(6.5032128, 10),
      bowl_m2: expect.closeTo(0.83612736, 10),
      entered: { canopy_m2: 'about' },
    },
    { canopy_m2: null, bowl_m2: null, soil_depth_cm: expect.closeTo(35.56, 10) },
  ]);
  const about = garden.replace('soil_depth_in: 14', 'soil_depth_in: about 14');
  expect(linkTexts({ 'garden.yaml': about }).problems.map(placeOf)).toEqual(['garden.yaml:8:74 about-not-allowed']);
});

test('a spot has its own area, else its part of the bed, else none', () => {
  const garden = `name: Test
edition: home
units: metric
paper: A4
locale: en-GB
beds: [{id: A, area_m2: 12}, {id: B}]
spots:
  - {id: A1, kind: mound, bed: A}
  - {id: A2, kind: mound, bed: A}
  - {id: A3, kind: mound, bed: A, area_ft2: 10}
  - {id: B1, kind: mound, bed: B}
  - {id: T1, kind: tub}
`;
  const spots = linkTexts({ 'garden.yaml': garden }).garden?.spots;
  // 1 ft² = 0.09290304 m² exactly (NIST SP 811, from memory).
  expect(spots?.map(({ id, share_m2 }) => [id, share_m2])).toEqual([
    ['A1', 4],
    ['A2', 4],
    ['A3', 0.9290304],
    ['B1', null],
    ['T1', null],
  ]);
});
