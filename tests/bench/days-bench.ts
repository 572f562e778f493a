/**
 * `npm run bench`, third part: how long hours and days take to work out, as medians, and how the time grows.
 */

import { estimateHours } from '../../kernel-helpers/src/money/hours.js';
import { allOperations, type Counts } from '../../kernel-helpers/src/money/operations.js';
import type { BenchStep } from '../../kernel-helpers/src/time/bench-steps.js';
import { schedule } from '../../kernel-helpers/src/time/schedule.js';
import { medianOf, say } from './timing.js';

/** Each step rests on the one five before it, so that five chains run side by side; every tenth has to wait. */
function steps(count: number): BenchStep[] {
  return Array.from({ length: count }, (_, i) => ({
    id: `step-${i}`,
    name: `Step ${i}`,
    count: '',
    minutes: [10 + (i % 7), 20 + (i % 11), 60 + (i % 13)],
    after: i < 5 ? [] : [`step-${i - 5}`],
    ...(i % 10 === 9 ? { wait: { what: 'glue cures', days: [0.4, 1, 2] as [number, number, number] } } : {}),
  }));
}

const calendar = {
  hours: { monday: 6, tuesday: 6, wednesday: 6, thursday: 6, friday: 4 },
  closed: ['2026-12-24/2027-01-02'],
};
const days = { calendar, today: '2026-12-01', promised: '2027-03-01' };
const plan = (count: number, simulations: number) => schedule({ ...days, steps: steps(count), simulations });

plan(20, 1000);
say(
  '200 operations, 10,000 simulations (aim: 200)',
  medianOf(9, () => plan(200, 10_000)),
);
for (const [count, simulations] of [
  [100, 10_000],
  [400, 10_000],
  [200, 20_000],
  [200, 40_000],
] as const)
  say(
    `  ${count} operations, ${simulations.toLocaleString('en')} simulations`,
    medianOf(5, () => plan(count, simulations)),
  );
const counts = Object.fromEntries(allOperations().map(({ per }) => [per, 4])) as Counts;
say(
  'hours of a piece, 10,000 simulations',
  medianOf(9, () => estimateHours({ counts })),
);
