import { existsSync } from 'node:fs';
import { Worker } from 'node:worker_threads';
import { amount, readParameters } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { readCutJob, type TypedCutJob } from '../../stock/cut-plan/cut-job.js';
import type { CutPlan } from '../../stock/cut-plan/plan.js';
import type { CutWorkerMessage } from './cut-worker.js';

/**
 * Plans cuts in a thread of its own, so that the kernel goes on: a good plan at once, better ones and the proof after.
 *
 * How much is looked at depends on the job and its effort alone, so that a job has one plan; the time limit only ends the work
 * early, with the best plan so far and what is proven of it.
 *
 * @param job  as for {@link planCuts}
 * @param options.seconds  time limit; 60 unless told otherwise
 * @param options.onPlan  told of each plan that is better, or of which more is proven
 * @throws ShopError  as {@link planCuts}; no plan within the time
 * @example const plan = await proveCuts(job, { onPlan: ({ cost, bound }) => console.log(cost, bound) });
 */
export async function proveCuts(
  job: TypedCutJob,
  options: { seconds?: number; onPlan?: (plan: CutPlan) => void } = {},
): Promise<CutPlan> {
  readCutJob(job);
  const { seconds = 60, onPlan } = options;
  readParameters(amount({ least: 0.01, most: 3600, unit: 's', why: 'seconds to look for' }), seconds);
  const worker = new Worker(workerFile(), { workerData: job });
  let best: CutPlan | undefined;
  let timer: NodeJS.Timeout | undefined;
  try {
    return await new Promise<CutPlan>((resolve, reject) => {
      timer = setTimeout(() => {
        if (best) resolve(best);
        else
          reject(
            new ShopError(`seconds: ${seconds} given; possible: more, or fewer parts (no plan was found in that time)`),
          );
      }, seconds * 1000);
      worker.on('message', (message: CutWorkerMessage) => {
        if ('error' in message) {
          reject(message.ofTheShop ? new ShopError(message.error) : new Error(message.error));
          return;
        }
        const { plan, finished } = message;
        const news = !best || plan.cost < best.cost || plan.bound > best.bound || plan.proven !== best.proven;
        best = plan;
        if (news) onPlan?.(plan);
        if (finished) resolve(plan);
      });
      worker.on('error', reject);
    });
  } finally {
    clearTimeout(timer);
    await worker.terminate();
  }
}

/** Beside us once built; under test we are the source, and it is in dist/. */
function workerFile(): URL {
  const beside = new URL('./cut-worker.js', import.meta.url);
  return existsSync(beside) ? beside : new URL('../../../dist/cut-worker.js', import.meta.url);
}
