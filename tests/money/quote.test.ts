import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { money } from '../../kernel-helpers/src/money/money.js';
import { quote } from '../../kernel-helpers/src/money/quote.js';

const terms = { margin: 0.25, deposit: 0.5, date: '2026-12-20', validDays: 30 };

describe('a quote', () => {
  it('worked by hand', () => {
    const offer = quote({ ...terms, cost: money(613.2, 'USD') });
    // 613.20 / 0.75 = 817.60, up to 818
    expect(offer.price.minor).toBe(81800);
    expect(offer.net).toEqual(offer.price);
    expect(offer.tax.amount.minor).toBe(0);
    expect(offer.validUntil).toBe('2027-01-19');
  });

  it('of a piece that costs nothing asks nothing, with no margin and no markup', () => {
    expect(quote({ ...terms, cost: money(0, 'USD') })).toMatchObject({ price: { minor: 0 }, margin: 0, markup: 0 });
  });

  it('worked by hand, with tax on top of a round price and inside one', () => {
    const tax = { name: 'Sales tax', rate: 0.0825, how: 'on top' as const };
    // 818.00 x 8.25 % = 67.485, to 67.49
    expect(quote({ ...terms, cost: money(613.2, 'USD'), tax })).toMatchObject({
      net: { minor: 81800 },
      tax: { amount: { minor: 6749 } },
      price: { minor: 88549 },
    });
    // 817.60 x 1.19 = 972.944, up to 973; 973 x 0.19/1.19 = 155.353
    const inside = { name: 'VAT', rate: 0.19, how: 'inside' as const };
    expect(quote({ ...terms, cost: money(613.2, 'EUR'), tax: inside })).toMatchObject({
      price: { minor: 97300 },
      tax: { amount: { minor: 15535 } },
      net: { minor: 81765 },
    });
  });

  it('tells markup from margin, keeps the margin that was wanted, splits the price without a lost penny', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 10_000_000 }),
        fc.integer({ min: 0, max: 90 }),
        fc.integer({ min: 0, max: 100 }),
        fc.integer({ min: 0, max: 50 }),
        fc.constantFrom('on top' as const, 'inside' as const),
        (minor, margin, deposit, rate, how) => {
          const offer = quote({
            cost: { minor, currency: 'EUR' },
            margin: margin / 100,
            deposit: deposit / 100,
            date: '2028-02-28',
            validDays: 2,
            tax: { name: 'Tax', rate: rate / 100, how },
          });
          expect(offer.deposit.minor + offer.balance.minor).toBe(offer.price.minor);
          expect(offer.net.minor + offer.tax.amount.minor).toBe(offer.price.minor);
          // The tax is rounded to a cent; that cent may be missing from the margin.
          expect(offer.margin).toBeGreaterThanOrEqual(margin / 100 - 1 / offer.net.minor);
          expect(offer.markup).toBeCloseTo(offer.margin / (1 - offer.margin), 9);
          expect(offer.validUntil).toBe('2028-03-01');
        },
      ),
    );
  });

  it.each([
    [{ margin: 1 }, 'margin: 1 given; possible: a number from 0 to 0.9'],
    [{ date: '2026-02-30' }, 'date: "2026-02-30" given; possible: a day that exists'],
    [
      { tax: { name: 'Tax', rate: 8.25, how: 'on top' as const } },
      'tax, rate: 8.25 given; possible: a number from 0 to 0.5',
    ],
    [{ tax: { name: '', rate: 0.1, how: 'inside' as const } }, 'tax, name: "" given'],
    [{ roundTo: 0 }, 'roundTo: 0 given'],
  ])('refuses %j in one line', (bad, message) => {
    expect(() => quote({ ...terms, cost: money(100, 'USD'), ...bad })).toThrow(message);
  });
});
