import { countWork } from '../../kernel-helpers/src/money/operations.js';
import { benchSteps } from '../../kernel-helpers/src/time/bench-steps.js';
import { schedule } from '../../kernel-helpers/src/time/schedule.js';
import type { Schedule } from '../../kernel-helpers/src/time/scheduled-steps.js';
import { box, dovetails } from '../money/a-box.js';

export const calendar = {
  hours: { monday: 3, tuesday: 3, thursday: 3 },
  closed: ['2026-12-24/2027-01-02'],
};

/** The days of a box, invented, promised for this day. */
export function boxDays(promised: string, joint: Parameters<typeof countWork>[0]['joint'] = dovetails): Schedule {
  const counts = countWork({ piece: box, joint, boards: 2, letters: 3, coats: 3 });
  const waits = { settle: [3, 6, 12], rest: 1, glue: 1, recoat: 0.5, cure: [3, 5, 7] } as const;
  return schedule({
    steps: benchSteps({ counts, waits: { ...waits, settle: [3, 6, 12], cure: [3, 5, 7] } }),
    calendar,
    today: '2026-12-01',
    promised,
    simulations: 2000,
  });
}
