import { describe, expect, it } from 'vitest';
import { estimateCost } from '../../kernel-helpers/src/money/cost.js';
import { offersSideBySide } from '../../kernel-helpers/src/money/offers.js';
import { countWork } from '../../kernel-helpers/src/money/operations.js';
import { priceSensitivity } from '../../kernel-helpers/src/money/price-sensitivity.js';
import { quote } from '../../kernel-helpers/src/money/quote.js';
import { box, dovetails, fingers } from './a-box.js';

const work = { piece: box, boards: 1, letters: 7, coats: 3 };
const counts = countWork({ ...work, joint: dovetails });
const spending = {
  currency: 'USD',
  boards: [{ mark: 'A', thickness: 1, width: 6, length: 96, price: 14.5 }],
  otherMaterials: [{ what: 'Finish', price: 6 }],
  outsideWork: [],
  hourlyRate: 40,
  overheadPerYear: 12000,
  billableHoursPerYear: 1000,
  contingency: 0.05,
};
const terms = { margin: 0.25, deposit: 0.5, date: '2026-12-20', validDays: 30 };

describe('offers side by side', () => {
  const [asked, fingered, cheaper] = offersSideBySide({
    counts,
    spending,
    terms,
    ways: [
      { name: 'as asked' },
      { name: 'finger joint', counts: countWork({ ...work, joint: fingers }) },
      { name: 'another wood', boardPrice: 6 },
    ],
  });

  it('differ by what was changed and by nothing else', () => {
    expect(fingered?.hours.byOperation.map(({ id }) => id)).toContain('cut-fingers');
    expect(fingered?.hours.mean).toBeLessThan(asked?.hours.mean as number);
    expect(cheaper?.hours).toEqual(asked?.hours);
    // 4 bd ft at 14.50 and at 6: 34.00 less, and 5 % of it
    expect((asked?.cost.total.minor as number) - (cheaper?.cost.total.minor as number)).toBe(3570);
  });

  it('leave the plan as it was', () => {
    expect(spending.boards[0]?.price).toBe(14.5);
  });
});

describe('what moves the price', () => {
  const changes = priceSensitivity({ spending: { ...spending, hours: 15 }, terms, hours: { low: 13, high: 18 } });
  const of = (what: string) => changes.find((change) => change.what === what);

  it('worked by hand: pay for an hour, a tenth less and more', () => {
    // 15 h x 4 less and more = 120 between them, x 1.05 / 0.75 = 168.00
    expect(of('pay for an hour')?.swing).toBe(16800);
  });

  it('worked by hand: hours from 13 to 18', () => {
    // 5 h x (40 + 12) x 1.05 / 0.75 = 364.00
    expect(of('hours')?.swing).toBe(36400);
  });

  it('worked by hand: both ends of boards, other materials and overhead lie as far from the plan', () => {
    const cost = estimateCost({ ...spending, hours: 15 }).total;
    const planned = quote({ ...terms, roundTo: 0.01, cost }).net.minor;
    // A tenth of 4 board feet at 14.50, of 6.00 and of 15 h x 12, each x 1.05 / 0.75 = 8.12, 0.84, 25.20; to a cent or two
    for (const [what, cents] of [
      ['boards', 812],
      ['other materials and packing', 84],
      ['overhead of a year', 2520],
    ] as const) {
      expect(Math.abs(planned - (of(what)?.low.minor ?? 0) - cents), what).toBeLessThanOrEqual(2);
      expect(Math.abs((of(what)?.high.minor ?? 0) - planned - cents), what).toBeLessThanOrEqual(2);
    }
    // 15 h x 12 / 0.9 and / 1.1: 20.00 more, 16.36 less, x 1.05 / 0.75
    const hours = of('hours that clients pay for');
    expect(Math.abs((hours?.low.minor ?? 0) - planned - 2800)).toBeLessThanOrEqual(2);
    expect(Math.abs(planned - (hours?.high.minor ?? 0) - 2291)).toBeLessThanOrEqual(2);
  });

  it('stands largest first, and leaves out what moves nothing', () => {
    expect(changes.map(({ swing }) => swing)).toEqual(changes.map(({ swing }) => swing).sort((a, b) => b - a));
    expect(of('outside work')).toBeUndefined();
  });
});
