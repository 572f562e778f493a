import type { Finding } from '../measure/finding.js';
import type { Actuals } from './actuals.js';
import { deviationTogether, usualPace } from './pace.js';

const eightInTen = 1.2816;

/**
 * What the actuals say of the estimate: an operation outside its eight-in-ten range wants a reason, since a reason is what
 * next time's estimate can be changed for.
 *
 * @param pace  scatter of the pace that the estimate was made with
 */
export function closingFindings(
  { operations, untimed, why, estimated, actual }: Actuals,
  pace: number = usualPace,
): Finding[] {
  const spread = deviationTogether(
    operations.map((one) => ({ ...one, mean: one.estimated })),
    pace,
  );
  const unexplained = operations.filter(
    (operation) => isOutside(operation.actual, operation.estimated, operation.deviation) && !why[operation.id],
  );
  const explained = operations.filter(({ id }) => why[id]);
  const hours = (h: number) => `${h.toFixed(1)} h`;
  const all = `${hours(actual)} taken, ${hours(estimated)} estimated.`;
  const findings: Finding[] = [
    isOutside(actual, estimated, spread)
      ? {
          rule: 'hours in all',
          verdict: 'watch',
          figures: all,
          reason: 'That is outside the range that the estimate gave eight times in ten.',
          change: 'See below which operations did it.',
        }
      : { rule: 'hours in all', verdict: 'ok', figures: all, reason: 'Within the range that was estimated.' },
    unexplained.length > 0
      ? {
          rule: 'reasons for the hours',
          verdict: 'watch',
          figures: unexplained
            .map(({ name, estimated, actual }) => `${name}: ${hours(estimated)} estimated, ${hours(actual)} taken`)
            .join('; '),
          reason: 'Outside the range and without a reason, nobody can say whether it will come again.',
          change: 'Write the reason beside the operation in `why`.',
        }
      : {
          rule: 'reasons for the hours',
          verdict: 'ok',
          figures: `${explained.length} given.`,
          reason: 'Every operation outside its range has its reason.',
        },
  ];
  if (untimed.length > 0) {
    findings.push({
      rule: 'time taken',
      verdict: 'watch',
      figures: `Not timed: ${untimed.join('; ')}.`,
      reason: 'What is not timed teaches the shop book nothing, and the sums here leave it out.',
      change: 'Time it next time, or give your best guess as hours.',
    });
  }
  return findings;
}

function isOutside(actual: number, estimated: number, deviation: number): boolean {
  return Math.abs(actual - estimated) > eightInTen * deviation + 1e-9;
}
