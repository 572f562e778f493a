import type { Finding } from '../../measure/finding.js';
import { fahrenheit } from '../../measure/temperature.js';
import { judge } from '../../measure/verdict.js';
import type { StackPlan } from './stack-plan.js';
import type { SwingFollowed } from './swing-followed.js';

const percent = (value: number) => `${value.toFixed(1)} %`;

/**
 * Where a stack waits, in words: in the shop's own air, or how another air is made for it.
 *
 * @param plan  see `stackPlan`
 */
export function stackAirWords({ air, conditioned, shopSettlesAt, middle }: StackPlan): string {
  if (!conditioned) return "in the shop's own air";
  const degrees = `${air.temperatureC.toFixed(0)} °C (${fahrenheit(air.temperatureC).toFixed(0)} °F)`;
  const by = shopSettlesAt > middle ? 'a dehumidifier' : 'a humidifier';
  return `in a dry room elsewhere, a warm room or a tent of sheeting, where ${by} holds about ${(100 * air.relativeHumidity).toFixed(0)} % at ${degrees}`;
}

/**
 * What must be true of a stack before it is milled for a piece.
 *
 * @param stack.plan  where and how long it waits
 * @param stack.follows  the later year of what will be made of it
 * @see common practice, no source
 */
export function stackFindings(stack: { plan: StackPlan; follows: Pick<SwingFollowed, 'board'> }): Finding[] {
  const { plan, follows } = stack;
  const { driest, wettest } = follows.board;
  const where = stackAirWords(plan);
  return [
    {
      rule: 'stack: settled before milling',
      verdict: judge(plan.days === 0, 'watch'),
      figures: `${percent(plan.moisture)} today, settles at ${percent(plan.settlesAt)}: ${plan.days} days to wait`,
      reason: 'wood planed before it has settled goes on moving, and flat faces do not stay flat',
      change: `sticker the stack ${where} and wait; keep these days free in the schedule`,
    },
    {
      rule: 'stack: near the middle of its later year',
      verdict: judge(!plan.conditioned, 'watch'),
      figures: `shop ${percent(plan.shopSettlesAt)}, later ${percent(driest.moisture)} to ${percent(wettest.moisture)}`,
      reason: 'a piece made far from the middle of its year has to move farther one way than the other',
      change: `the shop's air never brings it there: sticker the stack ${where}, until it reads ${percent(plan.middle)}; then keep boards and parts wrapped in plastic whenever nobody works on them, and fit what must fit the day it is unwrapped`,
    },
  ];
}

/** How far two meters, or one meter on two days, may differ: within 1 % each way, common practice, no source. */
const meterDoubt = 1;

/**
 * Whether the reading that a part was fitted at is what its stack comes to.
 *
 * @param fitted.part  `lid`
 * @param fitted.reading  %, as it was typed
 * @param fitted.stack  of sheet 03; nothing in older records, and then nothing is said
 */
export function readingFindings(fitted: {
  part: string;
  reading: number;
  stack: Pick<StackPlan, 'settlesAt'> | undefined;
}): Finding[] {
  const { part, reading, stack } = fitted;
  if (!stack) return [];
  return [
    {
      rule: `${part}: fitted at the moisture of its stack`,
      verdict: judge(Math.abs(reading - stack.settlesAt) <= meterDoubt + 1e-9, 'watch'),
      figures: `${part} ${percent(reading)}, the stack of sheet 03 settles at ${percent(stack.settlesAt)}`,
      reason: 'the width is right for one moisture only: a part fitted at another than was read does not fit its year',
      change: `read the meter on the part on the day you fit it; before that, take ${percent(stack.settlesAt)}, or correct the stack and the shop in sheet 03`,
    },
  ];
}

/**
 * Whether a newer reading of the boards goes with the one that widths and days were worked out for.
 *
 * @param today  the stack by its newer reading, as `stackToday` gives it
 * @param decided  that of sheet 03
 */
export function newerReadingFindings(
  today: Pick<StackPlan, 'moisture' | 'settlesAt' | 'days'>,
  decided: Pick<StackPlan, 'moisture'> | undefined,
): Finding[] {
  if (!decided || today.moisture === decided.moisture) return [];
  const [least, most] = [decided.moisture, today.settlesAt].sort((a, b) => a - b) as [number, number];
  const onItsWay = today.moisture >= least - meterDoubt && today.moisture <= most + meterDoubt;
  return [
    {
      rule: 'stack: read as in sheet 03',
      verdict: judge(onItsWay, 'watch'),
      figures: `${percent(today.moisture)} now, ${percent(decided.moisture)} in sheet 03, settles at ${percent(today.settlesAt)}: ${today.days} days to wait`,
      reason:
        'between the two it is on its way; else one of the readings, or the air of the shop, is not as it was taken to be',
      change: 'read again, and put what is so into sheet 03: the fit rests on it too',
    },
  ];
}

/**
 * Whether the boards of the cut plan and the stack of sheet 03 can be the same wood: each reading between what the stack had
 * and what it comes to.
 *
 * @param boards.boards  with their marks and readings; a board without one is taken to be as the stack
 * @param boards.stack  of sheet 03; nothing in older records, and then nothing is said
 */
export function boardReadingFindings(boards: {
  boards: readonly { mark: string; moisture?: number | undefined }[];
  stack: Pick<StackPlan, 'moisture' | 'settlesAt'> | undefined;
}): Finding[] {
  const { stack } = boards;
  if (!stack) return [];
  const least = Math.min(stack.moisture, stack.settlesAt) - meterDoubt;
  const most = Math.max(stack.moisture, stack.settlesAt) + meterDoubt;
  const other = boards.boards.filter(({ moisture = stack.moisture }) => moisture < least || moisture > most);
  const read = other.map(({ mark, moisture }) => `${mark} ${percent(moisture as number)}`);
  return [
    {
      rule: 'boards: as moist as the stack of sheet 03',
      verdict: judge(other.length === 0, 'watch'),
      figures: `stack ${percent(stack.moisture)}, settles at ${percent(stack.settlesAt)}; ${read.length > 0 ? `otherwise: ${read.join(', ')}` : 'no board read otherwise'}`,
      reason: 'days and widths were worked out for that stack: a board that is wetter has longer to wait',
      change: 'read these boards again; if it is so, put the wettest into sheet 03 and run it, or leave them out',
    },
  ];
}
