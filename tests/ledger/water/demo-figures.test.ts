import { expect, test } from 'vitest';
import { loadGarden } from '../../../src/cli/load-garden.ts';
import { asOf } from '../../../src/garden/as-of.ts';
import { cropsOf } from '../../../src/garden/crops-of.ts';
import { lastDay } from '../../../src/garden/last-day.ts';
import { waterLedger } from '../../../src/ledger/water/water-ledger.ts';
import { cropYear } from '../../../src/ledger/year/crop-year.ts';
import { told } from './watered-garden.ts';

const { garden: whole, reference } = loadGarden('data/garden');
const today = told(lastDay(told(whole)));
const garden = asOf(told(whole), today);
const years = cropsOf(garden.varieties).map((crop) => cropYear(garden, today, crop));

test('how long mulched, fruiting ground lasts in a hot week, beside what growers do', () => {
  const { crops } = waterLedger(garden, today, years, reference);
  const lines = crops.flatMap(({ crop, growing, stages }) => {
    const hot = stages.find(({ stage }) => stage === 'middle')?.needs.find(({ kind }) => kind === 'hot');
    const days = (of: { low: number; middle: number; high: number } | null | undefined): string =>
      of ? `${of.middle.toFixed(1)} days (${of.low.toFixed(1)} to ${of.high.toFixed(1)})` : 'unknown';
    return hot
      ? `${crop.id} under ${growing.mulch.kind}: ${hot.l_per_week.toFixed(0)} litres a hot week; the bowl alone lasts ${days(hot.bowl_days)}, all the ground of its roots ${days(hot.ground_days)}`
      : [];
  });
  console.log(`${lines.join('\n')}\nbeside: every two or three days (common practice, no source)`);
  expect(lines.length).toBeGreaterThan(0);
});

test('what the demo’s four seasons cost to reckon', () => {
  const times = Array.from({ length: 3 }, () => {
    const started = performance.now();
    waterLedger(garden, today, years, reference);
    return performance.now() - started;
  });
  const spots = garden.seasons.reduce((sum, { plantings }) => sum + plantings.length, 0);
  console.log(`the ledger of water, ${spots} plantings: ${times.map((ms) => `${ms.toFixed(0)} ms`).join(', ')}`);
  expect(spots).toBe(97);
});
