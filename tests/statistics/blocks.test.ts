import { expect, it } from 'vitest';
import { fitAdditive } from '../../src/statistics/additive-model.ts';
import { CATALYSTS } from '../published/incomplete-blocks/catalysts.ts';
import { PEAS } from '../published/randomised-blocks/peas.ts';
import { SNAPDRAGONS } from '../published/randomised-blocks/snapdragons.ts';
import { byBlock, expectPrinted, fitted, row } from './agreement.ts';

it('complete blocks: the snapdragon trial as printed', () => {
  const fit = fitted(byBlock(SNAPDRAGONS.soils));
  const { block, treatment, residual } = SNAPDRAGONS.printed;
  expect([row(fit, 'block').df, row(fit, 'treatment').df, fit.df]).toEqual([block.df, treatment.df, residual.df]);
  expectPrinted(row(fit, 'block').f, block.f);
  expectPrinted(row(fit, 'block').p, block.p);
  expectPrinted(row(fit, 'treatment').f, treatment.f);
  expectPrinted(row(fit, 'treatment').p, treatment.p);
  expectPrinted(row(fit, 'residual').ms, residual.ms);
  expect([fit.uses_blocks, fit.complete]).toEqual([true, true]);
});

it('balanced incomplete blocks: the catalyst trial as printed', () => {
  const fit = fitted(byBlock(CATALYSTS.batches));
  const { treatment, block, residual, means, mean_se, difference_se } = CATALYSTS.printed;
  expect([row(fit, 'treatment').df, row(fit, 'block').df, fit.df]).toEqual([treatment.df, block.df, residual.df]);
  expectPrinted(row(fit, 'treatment').ss, treatment.ss);
  expectPrinted(row(fit, 'treatment').ms, treatment.ms);
  expectPrinted(row(fit, 'block').ss, block.ss);
  expectPrinted(row(fit, 'residual').ss, residual.ss);
  expectPrinted(row(fit, 'residual').ms, residual.ms);
  for (const [catalyst, mean] of Object.entries(means)) {
    expectPrinted(fit.mean(catalyst).estimate, mean);
    expectPrinted(fit.mean(catalyst).se, mean_se);
    expect(fit.mean(catalyst).n).toBe(3);
  }
  expectPrinted(fit.difference('1', '4').se, difference_se);
  expect([fit.uses_blocks, fit.complete]).toEqual([true, false]);
});

it('blocks confounded with an interaction: the pea trial has two sets of mixtures that never meet', () => {
  const plots = Object.entries(PEAS.blocks).flatMap(([block, yields]) =>
    Object.entries(yields).map(([treatment, value]) => ({ treatment, block, value })),
  );
  expect(plots).toHaveLength(24);
  expect(fitAdditive(plots)).toEqual({ cannot: { code: 'not-linked', groups: PEAS.never_together } });
});
