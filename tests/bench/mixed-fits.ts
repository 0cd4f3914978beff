/** Fits a crossed garden, once to warm up and three times by the clock, and prints a `FitTold`: `node mixed-fits.js <job.json>`. */
import { readFileSync } from 'node:fs';
import { fitMixed } from '../../src/statistics/mixed-model/fit-mixed.ts';
import { posterior } from '../../src/statistics/posterior/posterior.ts';
import type { FitJob, FitTold } from './fit-job.ts';
import type { Mark } from './watched.ts';

const REPEATS = 3;
const SEED = 1;

const { data, draws } = JSON.parse(readFileSync(process.argv[2] ?? '', 'utf8')) as FitJob;
const random = data.random.map(({ name, level }) => ({ name, levels: level }));
const fitOnce = () => fitMixed({ y: data.y, fixed: data.fixed, random });

const fit = fitOnce();
if ('cannot' in fit) throw new Error(`refused: ${JSON.stringify(fit.cannot)}`);
const told: FitTold = {
  took: least(fitOnce),
  components: fit.components.map(({ variance }) => variance),
  residual_variance: fit.residual_variance,
  reml_criterion: -2 * fit.reml_log_likelihood,
  posterior_took: draws > 0 ? least(() => posterior(data, { seed: SEED, draws })) : null,
};
process.stdout.write(JSON.stringify(told));

function least(work: () => unknown): Mark {
  const times = Array.from({ length: REPEATS }, () => {
    const [clock, processor] = [performance.now(), process.cpuUsage()];
    work();
    const { user, system } = process.cpuUsage(processor);
    return { clock: (performance.now() - clock) / 1000, processor: (user + system) / 1e6 };
  });
  return {
    clock: Math.min(...times.map(({ clock }) => clock)),
    processor: Math.min(...times.map(({ processor }) => processor)),
  };
}
