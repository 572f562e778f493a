import { describe, expect, it } from 'vitest';
import { stackFindings } from '../../../kernel-helpers/src/wood/drying/stack-findings.js';
import type { SwingFollowed } from '../../../kernel-helpers/src/wood/drying/swing-followed.js';

const stack = (days: number, settlesAt: number, [driest, wettest]: [number, number]) => {
  const board = { driest: { day: 45, moisture: driest }, wettest: { day: 220, moisture: wettest } };
  const wait = { days, low: days, high: days, coreDays: days, settlesAt };
  return stackFindings({ moisture: 9.5, wait, follows: { board } as SwingFollowed });
};

describe('a stack before it is milled', () => {
  it.each([
    [0, 'ok'],
    [1, 'watch'],
    [40, 'watch'],
  ])('with %i days to wait: %s', (days, verdict) => {
    const [settled] = stack(days, 8, [6, 10]);
    expect(settled).toMatchObject({
      verdict,
      figures: `9.5 % today, settles at 8.0 %: ${days} days to wait`,
    });
  });

  // The middle of its later year is 8 %; common practice asks for a shop within 2 % of it.
  it.each([
    [8, 'ok'],
    [6, 'ok'],
    [10, 'ok'],
    [5.9, 'watch'],
    [10.1, 'watch'],
  ])('in a shop at %f %% for a year of 5 to 11 %%: %s', (settlesAt, verdict) => {
    const [, near] = stack(0, settlesAt, [5, 11]);
    expect(near).toMatchObject({ verdict, figures: `shop ${settlesAt.toFixed(1)} %, later 5.0 % to 11.0 %` });
  });
});
