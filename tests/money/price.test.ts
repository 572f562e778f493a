import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sizeBox } from '../../kernel-helpers/src/box/size-box.js';
import { type CostInput, estimateCost } from '../../kernel-helpers/src/money/cost.js';
import { boxCounts, estimateHours } from '../../kernel-helpers/src/money/hours.js';
import { addMoney, formatMoney, money } from '../../kernel-helpers/src/money/money.js';
import { quote } from '../../kernel-helpers/src/money/quote.js';

const box = sizeBox({
  insideLength: '9 1/2 in',
  insideWidth: '6 1/4 in',
  insideDepth: '4 in',
  species: 'walnut-black',
});
const counts = boxCounts({ box, tailsPerCorner: 3, letters: 12, coats: 3 });

describe('money', () => {
  it('has no lost pennies', () => {
    expect(addMoney([money(0.1, 'USD'), money(0.2, 'USD')])).toEqual(money(0.3, 'USD'));
    expect(formatMoney(money(1234.5, 'USD'))).toBe('$1,234.50');
    expect(money(1234, 'JPY').minor).toBe(1234);
  });

  it('does not add currencies together, nor knows one that is none', () => {
    expect(() => addMoney([money(1, 'USD'), money(1, 'EUR')])).toThrow('currency: USD and EUR given');
    expect(() => money(1, 'dollars')).toThrow('currency: "dollars" given; possible: a code of ISO 4217');
    expect(() => money(1, 'QQQ')).toThrow('ISO 4217');
  });
});

describe('hours', () => {
  it('worked by hand: the lid, set-up 15-20-30 and one of 25-40-75 minutes', () => {
    const lid = estimateHours({ counts }).byOperation.find(({ id }) => id === 'lid');
    // (15 + 80 + 30)/6 + (25 + 160 + 75)/6 = 20.83 + 43.33 = 64.17 minutes
    expect(lid?.mean).toBeCloseTo(64.1667 / 60, 5);
    // hypot(15/6, 50/6) = 8.70 minutes
    expect(lid?.deviation).toBeCloseTo(8.7003 / 60, 5);
  });

  it('is the sum of its operations, and leaves out what is not there', () => {
    const all = estimateHours({ counts });
    expect(all.byOperation.reduce((sum, { mean }) => sum + mean, 0)).toBeCloseTo(all.mean, 12);
    expect(all.low).toBeLessThan(all.mean);
    const plain = estimateHours({ counts: { ...counts, letter: 0 } });
    expect(plain.byOperation.some(({ id }) => id === 'lettering')).toBe(false);
    expect(plain.mean).toBeLessThan(all.mean);
  });

  it('counts from the design', () => {
    expect(counts).toMatchObject({ part: 6, corner: 4, tail: 12, groove: 7, lid: 1, letter: 12, coat: 3 });
    expect(() => boxCounts({ box, tailsPerCorner: 2.5, letters: 0, coats: 1 })).toThrow('tailsPerCorner: 2.5 given');
  });
});

describe('cost and price', () => {
  const input: CostInput = {
    currency: 'USD',
    boards: [{ mark: 'A', thickness: 1, width: 6, length: 96, price: 14.5 }],
    otherMaterials: [{ what: 'Finish', price: 6 }],
    hours: 10,
    hourlyRate: 40,
    overheadPerYear: 12000,
    billableHoursPerYear: 1000,
    contingency: 0.05,
  };

  it('worked by hand', () => {
    const cost = estimateCost(input);
    // 4 bd ft x 14.50 = 58.00; 6.00; 10 x 40 = 400.00; 10 x 12 = 120.00; 5 % of 584 = 29.20
    expect(cost.lines.map(({ amount }) => amount.minor)).toEqual([5800, 600, 40000, 12000, 2920]);
    expect(cost.total.minor).toBe(61320);
    const offer = quote({ cost: cost.total, margin: 0.25, deposit: 0.5, date: '2026-12-20', validDays: 30 });
    // 613.20 / 0.75 = 817.60, up to 818
    expect(offer.price.minor).toBe(81800);
    expect(offer.validUntil).toBe('2027-01-19');
  });

  it('tells markup from margin, splits the price without a lost penny', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 10_000_000 }),
        fc.integer({ min: 0, max: 90 }),
        fc.integer({ min: 0, max: 100 }),
        (minor, margin, deposit) => {
          const offer = quote({
            cost: { minor, currency: 'EUR' },
            margin: margin / 100,
            deposit: deposit / 100,
            date: '2028-02-28',
            validDays: 2,
          });
          expect(offer.deposit.minor + offer.balance.minor).toBe(offer.price.minor);
          expect(offer.margin).toBeGreaterThanOrEqual(margin / 100 - 1e-12);
          expect(offer.markup).toBeCloseTo(offer.margin / (1 - offer.margin), 9);
          expect(offer.validUntil).toBe('2028-03-01');
        },
      ),
    );
  });

  it.each([
    [{ hours: -1 }, 'hours: -1 given; possible: a number from 0 to 5000 h'],
    [{ billableHoursPerYear: 0 }, 'billableHoursPerYear: 0 given'],
    [{ contingency: 5 }, 'contingency: 5 given; possible: a number from 0 to 1 (a fraction: 5 % is 0.05)'],
    [{ hourlyRate: Number.NaN }, 'hourlyRate: null given'],
    [{ currency: 'bucks' }, 'currency: "bucks" given'],
  ])('refuses %j in one line', (bad, message) => {
    expect(() => estimateCost({ ...input, ...bad })).toThrow(message);
  });

  it('refuses a margin that leaves no price, and a day that does not exist', () => {
    const offer = { cost: money(100, 'USD'), margin: 0.25, deposit: 0.5, date: '2026-12-20', validDays: 30 };
    expect(() => quote({ ...offer, margin: 1 })).toThrow('margin: 1 given; possible: a number from 0 to 0.9');
    expect(() => quote({ ...offer, date: '2026-02-30' })).toThrow(
      'date: "2026-02-30" given; possible: a day that exists',
    );
  });
});
