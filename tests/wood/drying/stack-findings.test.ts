import { describe, expect, it } from 'vitest';
import {
  boardReadingFindings,
  newerReadingFindings,
  readingFindings,
  stackAirWords,
  stackFindings,
} from '../../../kernel-helpers/src/wood/drying/stack-findings.js';
import type { StackPlan } from '../../../kernel-helpers/src/wood/drying/stack-plan.js';

const plan = (more: Partial<StackPlan>): StackPlan => ({
  ...{ species: 'cherry-black', thickness: 1, moisture: 9.5, middle: 8, shopSettlesAt: 8, settlesAt: 8 },
  ...{ days: 0, low: 0, high: 0, coreDays: 0, conditioned: false },
  ...{ shop: { temperatureC: 19, relativeHumidity: 0.42 }, air: { temperatureC: 19, relativeHumidity: 0.42 } },
  ...more,
});
const board = { driest: { day: 45, moisture: 5 }, wettest: { day: 220, moisture: 11 } };

describe('a stack before it is milled', () => {
  it.each([
    [0, 'ok'],
    [1, 'watch'],
    [40, 'watch'],
  ])('with %i days to wait: %s', (days, verdict) => {
    const [settled] = stackFindings({ plan: plan({ days }), follows: { board } });
    expect(settled).toMatchObject({
      verdict,
      figures: `9.5 % today, settles at 8.0 %: ${days} days to wait`,
      change: "sticker the stack in the shop's own air and wait; keep these days free in the schedule",
    });
  });

  it('that the shop would never bring there is told where to wait, in which air, and to be wrapped afterwards', () => {
    const damp = plan({
      ...{ shopSettlesAt: 13, conditioned: true, days: 21 },
      air: { temperatureC: 20, relativeHumidity: 0.42 },
    });
    const [settled, near] = stackFindings({ plan: damp, follows: { board } });
    expect(near).toMatchObject({ verdict: 'watch', figures: 'shop 13.0 %, later 5.0 % to 11.0 %' });
    for (const finding of [settled, near])
      expect(finding?.change).toContain('a dehumidifier holds about 42 % at 20 °C (68 °F)');
    expect(near?.change).toContain('wrapped in plastic');
    expect(stackAirWords({ ...damp, shopSettlesAt: 4 })).toContain('a humidifier holds');
  });
});

describe('readings that should agree', () => {
  const stack = { moisture: 10, settlesAt: 8.5 };

  // One meter on two days differs by up to 1 %.
  it.each([
    [8, 'ok'],
    [9.5, 'ok'],
    [9.6, 'watch'],
    [7.4, 'watch'],
  ])('a lid at %f %% from a stack that settles at 8.5 %%: %s', (reading, verdict) => {
    expect(readingFindings({ part: 'lid', reading, stack })).toMatchObject([
      { rule: 'lid: fitted at the moisture of its stack', verdict },
    ]);
  });

  it('a board on its way from the stack to where it settles agrees; another is named', () => {
    const of = (...moistures: (number | undefined)[]) =>
      boardReadingFindings({ boards: moistures.map((moisture, i) => ({ mark: 'ABC'[i] as string, moisture })), stack });
    expect(of(8, undefined, 10.9)).toMatchObject([{ verdict: 'ok' }]);
    expect(of(8, 14, 6)).toMatchObject([{ verdict: 'watch' }]);
    expect(of(8, 14, 6)[0]?.figures).toContain('otherwise: B 14.0 %, C 6.0 %');
  });

  it('a newer reading of the stack may lie on its way, not beyond', () => {
    const verdict = (moisture: number) =>
      newerReadingFindings({ moisture, settlesAt: 8.5, days: 3 }, stack)[0]?.verdict;
    expect([verdict(10), verdict(9), verdict(13)]).toEqual([undefined, 'ok', 'watch']);
  });

  it('an older record says nothing of its stack, and nothing is said', () => {
    expect(readingFindings({ part: 'lid', reading: 8, stack: undefined })).toEqual([]);
    expect(boardReadingFindings({ boards: [{ mark: 'A', moisture: 20 }], stack: undefined })).toEqual([]);
  });
});
