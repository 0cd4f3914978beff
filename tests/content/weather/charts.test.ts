import { expect, test } from 'vitest';
import { stripChart } from '../../../content/weather/charts.ts';
import type { Facts } from '../../../src/book/chapter.ts';
import { createFormat } from '../../../src/format.ts';
import { aprilRows, weatherOf } from '../../ledger/weather/gate-weather.ts';

const facts = { format: createFormat({ units: 'metric', locale: 'en-GB' }) } as Facts;
const chartOf = (rows: string, today: string, header?: string) => {
  const weather = weatherOf(rows, today, header ? { header } : {});
  return weather && stripChart(facts, weather);
};

test('the strip begins and ends with a day somebody wrote of; its table keeps the whole season', () => {
  const rows = aprilRows(2025, [',,', '3,20,10', ',,', '0,22,11']).split('\n').slice(1).join('\n');
  const chart = chartOf(rows, '2025-04-30');
  const domains = JSON.stringify(chart?.spec).match(/"domain":\[-0\.5,[\d.]+\]/g);
  expect(new Set(domains)).toEqual(new Set(['"domain":[-0.5,2.5]']));
  expect(chart?.table.rows).toHaveLength(30);
});

test('words of rain alone make no strip', () => {
  expect(chartOf('2025-04-01,some', '2025-04-03', 'date,rain')).toBeNull();
});

test('who cannot see the strip is told its ends', () => {
  expect(chartOf(aprilRows(2025, ['3,31,10', '0,22,4']), '2025-04-02')?.description).toBe(
    'Highest 31\u00a0°C, lowest 4\u00a0°C, rain in all 3\u00a0mm, hot days 1, dry spells 0.',
  );
});
