/** The worker thread of {@link proveCuts}: its own file in dist/. */
import { parentPort, workerData } from 'node:worker_threads';
import loadHighs from 'highs';
import type { TypedCutJob } from '../../stock/cut-plan/cut-job.js';
import type { CutPlan } from '../../stock/cut-plan/plan.js';
import { planSteps } from '../../stock/cut-plan/plan-cuts.js';

/** What the worker says. */
export type CutWorkerMessage = { plan: CutPlan; finished: boolean } | { error: string; ofTheShop: boolean };

async function work(): Promise<void> {
  const say = (message: CutWorkerMessage) => parentPort?.postMessage(message);
  try {
    const steps = planSteps(workerData as TypedCutJob, await loadHighs());
    for (;;) {
      const { done, value } = steps.next();
      say({ plan: value, finished: done === true });
      if (done) return;
    }
  } catch (error) {
    say({ error: (error as Error).message, ofTheShop: (error as Error).name === 'ShopError' });
  }
}

void work();
